import type { FieldRule } from '@hitchwright/core/records';
import { printQuantity, unitNameIn } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';

interface ReadingProps {
  readonly draft: string;
  readonly unit: string;
  /** What is read so far [canonical unit]. */
  readonly told: number | null;
  readonly rule: FieldRule;
  readonly isSettled: boolean;
  readonly onType: (text: string) => void;
  readonly onEnter: () => void;
}

/** The reading in large figures, in both units. The box takes a keyboard or a voice as well; no keyboard of the phone comes up. */
export function Reading({ draft, unit, told, rule, isSettled, onType, onEnter }: ReadingProps) {
  const { system } = usePreferences();
  const other = unit === unitNameIn('us', rule.dimension) ? 'metric' : 'us';
  const own =
    isSettled && told !== null
      ? printQuantity(told, rule.dimension, { system })
      : `${draft === '' ? '–' : draft} ${unit}`;
  return (
    <div className="reading">
      <p className="reading-own" aria-hidden={!isSettled}>
        <Figures text={own} />
      </p>
      {isSettled ? null : (
        <input
          className="reading-box"
          aria-labelledby="figure-title"
          aria-describedby="figure-how"
          inputMode="none"
          autoComplete="off"
          value={draft}
          onChange={({ target }) => onType(target.value)}
          onKeyDown={({ key }) => {
            if (key === 'Enter' && draft.trim() !== '') onEnter();
          }}
        />
      )}
      <p className="reading-other">
        {told === null || (draft === '' && !isSettled) ? (
          ''
        ) : (
          <Figures text={printQuantity(told, rule.dimension, { system: other })} />
        )}
      </p>
    </div>
  );
}
