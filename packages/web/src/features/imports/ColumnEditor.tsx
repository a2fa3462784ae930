import type { MappingChange } from '@hitchwright/core/exchange';
import { pointName } from '../dimensions/plainChoices.ts';
import type { Column } from './importTypes.ts';
import { partsFor, partsOfTarget, ruleOfSubject, subjectsFor, targetFor, targetWords, unitsFor } from './targets.ts';

interface ColumnEditorProps {
  readonly kind: string;
  readonly column: Column;
  readonly isBusy: boolean;
  readonly onChange: (change: MappingChange) => void;
}

/** What a column holds, chosen by hand: the subject, the part of it, the unit of bare figures and where they were measured. */
export function ColumnEditor({ kind, column, isBusy, onChange }: ColumnEditorProps) {
  const { letter, target, unit, from } = column;
  const { subject, part } = partsOfTarget(target);
  const rule = ruleOfSubject(kind, subject);
  const isFigure = part === 'field' || part === 'low' || part === 'high';
  const units = isFigure ? unitsFor(kind, subject) : [];
  const points = isFigure ? (rule?.from ?? []) : [];
  const parts = partsFor(kind, subject);
  return (
    <fieldset className="imp-editor" disabled={isBusy}>
      <legend className="unseen">What column {letter} holds</legend>
      <label>
        <span>It holds</span>
        <select
          value={subject}
          onChange={({ target: { value } }) => onChange({ column: letter, target: targetFor(value, '') })}
        >
          <SubjectOptions kind={kind} column={column} />
        </select>
      </label>
      {parts.length === 0 ? null : (
        <label>
          <span>Of it</span>
          <select
            value={part}
            onChange={({ target: { value } }) => onChange({ column: letter, target: targetFor(subject, value) })}
          >
            <Options options={parts} />
          </select>
        </label>
      )}
      {units.length === 0 ? null : (
        <label>
          <span>
            {subject === 'field price' ? 'Prices without a currency are in' : 'Figures without a unit are in'}
          </span>
          <select
            value={unit ?? ''}
            onChange={({ target: { value } }) => onChange({ column: letter, unit: value === '' ? null : value })}
          >
            <option value="">
              {subject === 'field price' ? 'not said: those are refused' : 'whatever fits, each by itself'}
            </option>
            <Options options={units} />
          </select>
        </label>
      )}
      {points.length === 0 ? null : (
        <label>
          <span>Measured at</span>
          <select
            value={from ?? ''}
            onChange={({ target: { value } }) => onChange({ column: letter, from: value === '' ? null : value })}
          >
            <option value="">not said</option>
            <Options options={points.map((point) => [point, pointName(pathOf(kind, subject), point)] as const)} />
          </select>
        </label>
      )}
    </fieldset>
  );
}

function pathOf(kind: string, subject: string): string {
  return `${kind}.${subject.slice('field '.length)}`;
}

function Options({ options }: { readonly options: readonly (readonly [string, string])[] }) {
  return options.map(([value, words]) => (
    <option key={value} value={value}>
      {words}
    </option>
  ));
}

/** Every subject by topic; what the column holds already is among them, whatever the kind. */
function SubjectOptions({ kind, column: { target } }: { readonly kind: string; readonly column: Column }) {
  const groups = subjectsFor(kind);
  const { subject } = partsOfTarget(target);
  const isListed = groups.some(({ subjects }) => subjects.some(([value]) => value === subject));
  return (
    <>
      {isListed ? null : <option value={subject}>{targetWords(kind, target)}</option>}
      {groups.map(({ title, subjects }) => (
        <optgroup key={title} label={title}>
          <Options options={subjects} />
        </optgroup>
      ))}
    </>
  );
}
