import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { ErrorWords } from '../check/ErrorList.tsx';
import { fieldName, valueWords } from '../history/valueWords.ts';
import { counted } from '../history/whenText.ts';
import { gradeWords } from '../records/readingWords.ts';
import type { Column, ProposedRow, Row } from './importTypes.ts';
import { RowMark } from './RowMark.tsx';
import { becomesOf, becomesWords, byField, isWritten } from './rowWords.ts';

interface RowLineProps {
  readonly row: Row;
  readonly isLeft: boolean;
  readonly columns: readonly Column[];
  readonly onToggle: () => void;
}

/** One row: what becomes of it, what is wrong with it, and what was taken for something. */
export function RowLine({ row, isLeft, columns, onToggle }: RowLineProps) {
  const becomes = becomesOf(row);
  return (
    <>
      <p className="imp-row-number">
        <span className="unseen">Row </span>
        {row.row}
      </p>
      <p className={`imp-becomes imp-becomes-${becomes}`}>
        <RowMark becomes={isLeft ? 'skipped' : becomes} />
        {isLeft ? 'left out' : becomesWords[becomes]}
      </p>
      <div className="imp-row-what">
        {becomes === 'new' && row.record !== null ? (
          <Proposed record={row.record} isLeft={isLeft} />
        ) : (
          <RowName name={row.record?.name ?? ''} isLeft={isLeft} />
        )}
        <Errors row={row} columns={columns} />
        <Changes row={row} />
        <ul className="plain-list">
          {row.told.map(({ sentence, column }) => (
            <li key={`${column} ${sentence}`} className="imp-told">
              {column === null ? null : <Cell column={column} columns={columns} />}
              <Figures text={sentence} />
            </li>
          ))}
        </ul>
      </div>
      {isWritten(row) ? (
        <label className="imp-leave">
          <input type="checkbox" checked={isLeft} onChange={onToggle} />
          Leave out<span className="unseen"> row {row.row}</span>
        </label>
      ) : null}
    </>
  );
}

function Cell({ column, columns }: { readonly column: string; readonly columns: readonly Column[] }) {
  const heading = columns.find(({ letter }) => letter === column)?.heading ?? '';
  return (
    <b>
      {column}
      {heading === '' ? '' : `, ${heading}`}:{' '}
    </b>
  );
}

function Errors({ row, columns }: Pick<RowLineProps, 'row' | 'columns'>) {
  const { errors } = row;
  if (errors.length === 0) return null;
  return (
    <ul className="plain-list">
      {errors.map((error) => {
        const column = 'column' in error ? error.column : null;
        return (
          <li key={`${column} ${error.path} ${error.code}`} className="imp-error">
            {column === null ? null : <Cell column={column} columns={columns} />}
            <ErrorWords error={error} />
          </li>
        );
      })}
    </ul>
  );
}

/** What becomes another in a record that is there. */
function Changes({ row: { changes, record } }: { readonly row: Row }) {
  const { system } = usePreferences();
  const kind = record?.kind ?? '';
  const told = byField(changes).filter(({ field }) => field !== 'key');
  if (told.length === 0) return null;
  return (
    <dl className="imp-changes">
      {told.map(({ field, before, after }) => (
        <div key={field}>
          <dt>{field === 'removedAt' ? 'was removed' : fieldName(kind, field)}</dt>
          <dd>
            {field === 'removedAt' ? (
              'is brought back'
            ) : (
              <>
                {before === null ? null : (
                  <>
                    <s>
                      <Figures text={valueWords(kind, field, before, system)} />
                    </s>
                    <span aria-hidden="true"> ▸ </span>
                    <span className="unseen"> becomes </span>
                  </>
                )}
                <Figures text={valueWords(kind, field, after, system)} />
                {before === null ? <span className="imp-told"> is added</span> : null}
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}

function RowName({ name, isLeft }: { readonly name: string; readonly isLeft: boolean }) {
  if (name === '') return null;
  return <p className={isLeft ? 'imp-row-name imp-row-left' : 'imp-row-name'}>{name}</p>;
}

/** A new record by its name; opened, everything that it would say. */
function Proposed({ record, isLeft }: { readonly record: ProposedRow; readonly isLeft: boolean }) {
  const { system } = usePreferences();
  const { kind, name, fields, readings } = record;
  const all: readonly (readonly [string, unknown])[] = [
    ...Object.entries(fields),
    ...Object.entries(readings).map(([field, { leaf }]) => [field, leaf] as const),
  ];
  if (all.length === 0) return <RowName name={name} isLeft={isLeft} />;
  return (
    <details className="imp-proposed">
      <summary>
        <span className={isLeft ? 'imp-row-name imp-row-left' : 'imp-row-name'}>{name}</span>
        <span className="imp-count">{counted(all.length, 'field')}</span>
      </summary>
      <dl className="imp-changes">
        {all.map(([field, value]) => (
          <div key={field}>
            <dt>{fieldName(kind, field)}</dt>
            <dd>
              <Figures text={valueWords(kind, field, value, system)} />
              {readings[field] === undefined ? null : (
                <span className="imp-told">, {gradeWords[readings[field].grade]}</span>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
