import type { Tool } from '@hitchwright/core/advice';
import type { FieldRule } from '@hitchwright/core/records';
import { unitNameIn } from '@hitchwright/core/units';
import { Figures } from '../../marks/Figures.tsx';
import { fractionIn, pressed, type Key } from './entryText.ts';
import { TapeTicks } from './TapeTicks.tsx';

interface KeypadProps {
  readonly rule: FieldRule;
  readonly unit: string;
  readonly tool: Tool;
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
  readonly onUnit: (unit: string) => void;
}

const eighths = [1, 2, 3, 4, 5, 6, 7] as const;
const names: Readonly<Record<number, string>> = {
  1: '1/8',
  2: '1/4',
  3: '3/8',
  4: '1/2',
  5: '5/8',
  6: '3/4',
  7: '7/8',
};
const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3'] as const;

/** Large keys: figures on the left, fractions on the right, each with the tick of the tape that it stands for. */
export function Keypad({ rule, unit, tool, draft, onDraft, onUnit }: KeypadProps) {
  const isInches = unit === 'in';
  const press = (key: Key): void => onDraft(pressed(draft, key));
  const key = (of: Key, words: string, className = 'key') => (
    <button type="button" className={className} onClick={() => press(of)}>
      {words}
    </button>
  );
  return (
    <div className={isInches ? 'keypad keypad-inches' : 'keypad'} role="group" aria-label="Keys">
      {rule.min < 0 ? <Signs draft={draft} onPress={press} /> : null}
      <div className="keypad-digits">
        {digits.map((digit) => (
          <button key={digit} type="button" className="key" onClick={() => press({ kind: 'digit', digit })}>
            {digit}
          </button>
        ))}
        <UnitKey rule={rule} unit={unit} onUnit={onUnit} />
        {key({ kind: 'digit', digit: '0' }, '0')}
        {key({ kind: 'erase' }, 'Erase', 'key key-words')}
      </div>
      {isInches ? (
        <FractionKeys draft={draft} hasPoint={tool === 'caliper'} onPress={press} />
      ) : (
        key({ kind: 'point' }, '.', 'key key-point')
      )}
    </div>
  );
}

interface FractionKeysProps {
  readonly draft: string;
  /** A caliper shows decimals. */
  readonly hasPoint: boolean;
  readonly onPress: (key: Key) => void;
}

function FractionKeys({ draft, hasPoint, onPress }: FractionKeysProps) {
  const { eighths: set, sixteenth } = fractionIn(draft);
  return (
    <div className="keypad-fractions">
      {eighths.map((eighth) => (
        <button
          key={eighth}
          type="button"
          className="key key-fraction"
          aria-pressed={set === eighth}
          onClick={() => onPress({ kind: 'eighths', eighths: eighth })}
        >
          <TapeTicks eighths={eighth} />
          <Figures text={names[eighth] ?? ''} />
        </button>
      ))}
      {hasPoint ? (
        <button type="button" className="key key-fraction" onClick={() => onPress({ kind: 'point' })}>
          .
        </button>
      ) : (
        <button
          type="button"
          className="key key-fraction"
          aria-pressed={sixteenth}
          onClick={() => onPress({ kind: 'sixteenth' })}
        >
          <span aria-hidden="true">+</span>
          <span className="unseen">and </span>
          <Figures text="1/16" />
        </button>
      )}
    </div>
  );
}

function UnitKey({ rule, unit, onUnit }: Pick<KeypadProps, 'rule' | 'unit' | 'onUnit'>) {
  const [us, metric] = [unitNameIn('us', rule.dimension), unitNameIn('metric', rule.dimension)];
  if (us === metric) return <span className="key key-words key-blank">{unit}</span>;
  const other = unit === us ? metric : us;
  return (
    <button
      type="button"
      className="key key-words"
      aria-label={`${other}: type in ${other} instead`}
      onClick={() => onUnit(other)}
    >
      {other}
    </button>
  );
}

/** A figure that may lie to either side of its mark. */
function Signs({ draft, onPress }: { readonly draft: string; readonly onPress: (key: Key) => void }) {
  const isMinus = /^[-−]/.test(draft);
  return (
    <button type="button" className="key key-sign" aria-pressed={isMinus} onClick={() => onPress({ kind: 'minus' })}>
      Minus: to the other side
    </button>
  );
}
