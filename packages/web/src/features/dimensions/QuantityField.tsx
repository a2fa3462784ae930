import { fieldRules, type InputError } from '@hitchwright/core/records';
import { unitNameIn } from '@hitchwright/core/units';
import { useEffect, useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { ErrorWords } from '../check/ErrorList.tsx';
import { entryOf, modeNames, modesOf, rawOf, type Entry } from './entry.ts';
import { FigureBoxes } from './FigureBoxes.tsx';
import { pointName, pointsQuestion } from './plainChoices.ts';
import { readText } from './readText.ts';

interface QuantityFieldProps {
  readonly path: string;
  /** What the document says now. */
  readonly raw: unknown;
  /** How the last good answer read it. */
  readonly value: unknown;
  readonly errors: readonly InputError[];
  readonly onChange: (raw: unknown) => void;
}

/** One measured field: where the tape goes, its boxes, how it was read, and what can't be read. */
export function QuantityField({ path, raw, value, errors, onChange }: QuantityFieldProps) {
  const { system } = usePreferences();
  const [entry, edit] = useEntry(path, raw, onChange);
  const rule = fieldRules.get(path);
  if (rule === undefined) return null;
  const id = `field-${path}`;
  const reading = errors.length > 0 ? '' : readText(value, rule, system);
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
        {reading === '' ? null : (
          <p>
            <Figures text={reading} />
          </p>
        )}
      </div>
      <p id={`${id}-how`} className="field-how">
        {rule.measure}
      </p>
    </div>
  );
}

/** The boxes keep what was typed, whatever the document makes of it; a change from elsewhere replaces them. */
function useEntry(
  path: string,
  raw: unknown,
  onChange: (raw: unknown) => void,
): [Entry, (change: Partial<Entry>) => void] {
  const [entry, setEntry] = useState(() => entryOf(raw, path));
  const written = useRef(JSON.stringify(raw));
  useEffect(() => {
    if (JSON.stringify(raw) === written.current) return;
    written.current = JSON.stringify(raw);
    setEntry(entryOf(raw, path));
  }, [raw, path]);
  const edit = (change: Partial<Entry>): void => {
    const next = { ...entry, ...change };
    const nextRaw = rawOf(next);
    written.current = JSON.stringify(nextRaw);
    setEntry(next);
    onChange(nextRaw);
  };
  return [entry, edit];
}
