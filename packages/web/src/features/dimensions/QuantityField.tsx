import { fieldRules, readValue, type FieldRule, type InputError } from '@hitchwright/core/records';
import { unitNameIn, type UnitSystem } from '@hitchwright/core/units';
import { useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { ErrorWords } from '../check/ErrorList.tsx';
import { entryOf, modeNames, modesOf, rawOf, type Entry } from './entry.ts';
import { FigureBoxes } from './FigureBoxes.tsx';
import { pointName, pointsQuestion } from './plainChoices.ts';
import { readText } from './readText.ts';

interface QuantityFieldProps {
  readonly path: string;
  /** What the document says now, in the chosen units where it says none. */
  readonly raw: unknown;
  /** What the last reply can't read here, this field beside others included. */
  readonly errors: readonly InputError[];
  readonly onChange: (raw: unknown) => void;
}

/** One measured field: where the tape goes, its boxes, how it was read, and what can't be read. */
export function QuantityField({ path, raw, errors: told, onChange }: QuantityFieldProps) {
  const { system } = usePreferences();
  const [entry, edit] = useEntry(path, raw, onChange);
  const rule = fieldRules.get(path);
  if (rule === undefined) return null;
  const id = `field-${path}`;
  const { text, errors } = readingOf(raw, rule, system, told);
  const choose = (key: 'mode' | 'from', words: string, options: readonly (readonly [string, string])[]) => (
    <select
      className={`field-${key}`}
      aria-label={`${rule.label}: ${words}`}
      value={entry[key]}
      onChange={({ target }) => edit({ [key]: target.value })}
    >
      {options.map(([option, name]) => (
        <option key={option} value={option}>
          {name}
        </option>
      ))}
    </select>
  );
  return (
    <div
      role="group"
      className={errors.length > 0 ? 'field field-wrong' : 'field'}
      aria-labelledby={`${id}-label`}
      aria-describedby={`${id}-how`}
    >
      <div className="field-head">
        <span id={`${id}-label`} className="field-label">
          {rule.label} <span className="field-unit">({unitNameIn(system, rule.dimension)})</span>
        </span>
        {choose(
          'mode',
          'how it is given',
          modesOf(path).map((mode) => [mode, modeNames[mode]] as const),
        )}
      </div>
      <FigureBoxes id={id} path={path} entry={entry} rule={rule} isWrong={errors.length > 0} onEdit={edit} />
      {rule.from === undefined || entry.mode === 'unknown' ? null : (
        <div className="field-points">
          <span aria-hidden="true">{pointsQuestion(path)}</span>
          {choose('from', pointsQuestion(path), [
            ['', `not said, taken as ${pointName(path, rule.from[0] ?? '')}`],
            ...rule.from.map((point) => [point, pointName(path, point)] as const),
          ])}
        </div>
      )}
      <div id={`${id}-read`} className="field-read">
        {errors.map((error) => (
          <p key={`${error.path} ${error.code}`} className="field-error">
            <ErrorWords error={error} />
          </p>
        ))}
        {text === '' ? null : (
          <p>
            <Figures text={text} />
          </p>
        )}
      </div>
      <p id={`${id}-how`} className="field-how">
        {rule.measure}
      </p>
    </div>
  );
}

/** Told of a figure that reads well by itself: it can't be true beside another one. */
const besideOthers: readonly InputError['code'][] = ['contradiction', 'swapped'];

/** How the field reads by itself, whatever else of the setup can't be read, with what is wrong with it. */
function readingOf(raw: unknown, rule: FieldRule, system: UnitSystem, told: readonly InputError[]) {
  const { value, errors } = raw === undefined ? { value: null, errors: [] } : readValue(raw, rule, '', system);
  return {
    text: readText(value ?? undefined, rule, system),
    errors: [...errors, ...told.filter(({ code }) => besideOthers.includes(code))],
  };
}

interface Kept {
  readonly entry: Entry;
  /** What the document says for it, as JSON. */
  readonly written: string | undefined;
}

/** The boxes keep what was typed, whatever the document makes of it; a change from elsewhere replaces them. */
function useEntry(
  path: string,
  raw: unknown,
  onChange: (raw: unknown) => void,
): [Entry, (change: Partial<Entry>) => void] {
  const said = JSON.stringify(raw) as string | undefined;
  const [kept, keep] = useState<Kept>(() => ({ entry: entryOf(raw, path), written: said }));
  const isTyped = said === kept.written;
  const entry = isTyped ? kept.entry : entryOf(raw, path);
  if (!isTyped) keep({ entry, written: said });
  const edit = (change: Partial<Entry>): void => {
    const next = { ...entry, ...change };
    const nextRaw = rawOf(next);
    keep({ entry: next, written: JSON.stringify(nextRaw) });
    onChange(nextRaw);
  };
  return [entry, edit];
}
