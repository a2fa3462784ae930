import type { FieldRule } from '@hitchwright/core/records';
import { usePreferences } from '../../app/preferences.ts';
import { shown, type Entry } from './entry.ts';
import { toleranceText } from './readText.ts';

interface FigureBoxesProps {
  readonly id: string;
  readonly path: string;
  readonly entry: Entry;
  readonly rule: FieldRule;
  readonly isWrong: boolean;
  readonly onEdit: (change: Partial<Entry>) => void;
}

type BoxKey = 'figure' | 'plusMinus' | 'low' | 'high' | 'stops';

const ends: Readonly<Record<string, readonly [string, string]>> = {
  'tractor.ballSpan': ['narrowest', 'widest'],
  'tractor.topLinkLength': ['shortest', 'longest'],
  'coupler.topHookHeight': ['lowest', 'highest'],
};

/** The boxes of one field, by how it is given. */
export function FigureBoxes({ id, path, entry, rule, isWrong, onEdit }: FigureBoxesProps) {
  const { system } = usePreferences();
  const textIn = (key: BoxKey): string => {
    const figure = entry[key];
    const isTolerance = key === 'plusMinus' && typeof figure === 'number';
    return isTolerance ? toleranceText(figure, rule, system) : shown(figure, rule, system);
  };
  const box = (key: BoxKey, words: string, isFirst: boolean, placeholder = '') => (
    <input
      id={isFirst ? id : undefined}
      className={`box box-${key}`}
      inputMode="text"
      autoComplete="off"
      spellCheck={false}
      maxLength={200}
      aria-label={words === '' ? rule.label : `${rule.label}, ${words}`}
      aria-invalid={isWrong}
      aria-describedby={`${id}-read`}
      placeholder={placeholder}
      value={textIn(key)}
      onChange={({ target }) => onEdit({ [key]: target.value })}
    />
  );
  if (entry.mode === 'unknown')
    return <input id={id} className="box" disabled aria-label={rule.label} value="not known" />;
  if (entry.mode === 'stops')
    return <div className="boxes">{box('stops', 'each hole, apart by semicolons', true, '18; 16; 14')}</div>;
  if (entry.mode === 'figure') {
    return (
      <div className="boxes">
        {box('figure', '', true)}
        <span aria-hidden="true">±</span>
        {box('plusMinus', 'plus or minus', false, rule.dimension === 'length' && system === 'us' ? '1/16' : '1')}
      </div>
    );
  }
  const [low, high] = ends[path] ?? ['least', 'most'];
  return (
    <div className="boxes">
      {box('low', low, true, low)}
      <span>to</span>
      {box('high', high, false, high)}
    </div>
  );
}
