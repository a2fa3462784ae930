import type { InputError } from '@hitchwright/core/records';
import { ErrorWords } from '../check/ErrorList.tsx';
import { counted } from '../history/whenText.ts';

interface RefusedRowsProps {
  readonly errors: readonly InputError[];
  /** Leaves these rows out, as the sheet counts them. */
  readonly onLeave: (rows: readonly number[]) => void;
}

/** How many of them are told one by one. */
const most = 20;

/** Why the whole import was refused when it was to be written: everything of it, or nothing. */
export function RefusedRows({ errors, onLeave }: RefusedRowsProps) {
  if (errors.length === 0) return null;
  const rows = [...new Set(errors.flatMap(({ path }) => rowIn(path) ?? []))];
  return (
    <div className="trouble" role="alert">
      <p>
        <b>Nothing was written, because of these rows:</b>
      </p>
      <ul className="plain-list">
        {errors.slice(0, most).map((error) => (
          <li key={`${error.path} ${error.code} ${error.got}`}>
            <b>{rowIn(error.path) === null ? error.path : `Row ${rowIn(error.path)}`}</b> <ErrorWords error={error} />
          </li>
        ))}
      </ul>
      {errors.length > most ? <p>And {errors.length - most} more.</p> : null}
      {rows.length === 0 ? null : (
        <button type="button" onClick={() => onLeave(rows)}>
          Leave {counted(rows.length, 'row')} out
        </button>
      )}
    </div>
  );
}

/** The row of an error of the whole import, as the sheet counts it. */
function rowIn(path: string): number | null {
  const row = /^rows\.(\d+)/.exec(path)?.[1];
  return row === undefined ? null : Number(row);
}
