import { useMemo, useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { counted } from '../history/whenText.ts';
import { RefusedRows } from './RefusedRows.tsx';
import { RowList } from './RowList.tsx';
import { becomesOf, filters, isIn, isWritten, type Filter } from './rowWords.ts';
import { StepTitle } from './StepStrip.tsx';
import type { Row } from './importTypes.ts';
import { useRows, type ImportDesk } from './useImport.ts';

interface RowsStepProps {
  readonly desk: ImportDesk;
  /** Rows that somebody leaves out, as the sheet counts them. */
  readonly left: ReadonlySet<number>;
  readonly onLeave: (left: ReadonlySet<number>) => void;
  readonly onBack: () => void;
}

/** The third step: what becomes of every row, before anything is written. */
export function RowsStep({ desk, left, onLeave, onBack }: RowsStepProps) {
  const { state, version } = desk;
  const { rows, isAll, problem, again } = useRows(state.id, version);
  const [filter, setFilter] = useState<Filter>('all');
  const [remember, setRemember] = useState(true);
  const shown = useMemo(() => rows.filter((row) => isIn(filter, row, left)), [rows, filter, left]);
  const sums = useMemo(() => sumsOf(rows, left), [rows, left]);
  const toggle = (row: number): void => {
    const next = new Set(left);
    if (!next.delete(row)) next.add(row);
    onLeave(next);
  };
  const write = (more: readonly number[]): void => desk.write({ leaveOut: [...left, ...more], remember });
  return (
    <>
      <section className="imp-part" aria-label="All rows">
        <StepTitle>What becomes of every row</StepTitle>
        <p className="imp-name">
          {state.name}, {state.sheets[state.sheet]?.name}
        </p>
        <p role="status">{statusText(rows.length, state, isAll)}</p>
        <Trouble problem={problem} onAgain={again} />
        <label className="imp-remember">
          <input type="checkbox" checked={remember} onChange={({ target }) => setRemember(target.checked)} />
          Remember what the columns mean
        </label>
        <RefusedRows errors={state.errors} onLeave={(refused) => onLeave(new Set([...left, ...refused]))} />
        <Trouble problem={desk.problem} />
      </section>
      <div className="imp-filters" role="group" aria-label="Which rows are shown">
        {filters.map(([name, words]) => (
          <button key={name} type="button" aria-pressed={filter === name} onClick={() => setFilter(name)}>
            {words} <span className="imp-count">{sums[name].toLocaleString()}</span>
          </button>
        ))}
      </div>
      {shown.length === 0 && isAll ? <p className="imp-part">No such row.</p> : null}
      <RowList rows={shown} left={left} columns={state.mapping.mapping?.columns ?? []} onToggle={toggle} />
      <div className="imp-bar">
        <p>{sums.refused.length === 0 ? null : asideText(sums.refused.length)}</p>
        <button type="button" onClick={onBack}>
          Back to the columns
        </button>
        <button
          type="button"
          className="button-solid"
          disabled={!isAll || sums.write === 0 || desk.isBeginning}
          onClick={() => write(sums.refused)}
        >
          Write {counted(sums.write, 'row')}
        </button>
      </div>
    </>
  );
}

function statusText(read: number, state: ImportDesk['state'], isAll: boolean): string {
  if (isAll) return `All ${counted(read, 'row')} are looked at. Nothing is written yet.`;
  const all = (state.sheets[state.sheet]?.rows ?? 0) - (state.mapping.mapping?.firstRow ?? 0);
  return `${read.toLocaleString()} of ${counted(Math.max(all, read), 'row')} looked at…`;
}

function asideText(refused: number): string {
  return refused === 0
    ? ''
    : `${counted(refused, 'refused row')} can’t be written and ${refused === 1 ? 'is' : 'are'} left out.`;
}

/** How many rows each filter shows, how many would be written, and which the server refuses as a whole. */
function sumsOf(rows: readonly Row[], left: ReadonlySet<number>) {
  const counts = Object.fromEntries(filters.map(([name]) => [name, 0])) as Record<Filter, number>;
  const refused: number[] = [];
  let write = 0;
  for (const row of rows) {
    for (const [name] of filters) if (isIn(name, row, left)) counts[name] += 1;
    if (becomesOf(row) === 'refused') refused.push(row.row);
    if (isWritten(row) && !left.has(row.row)) write += 1;
  }
  return { ...counts, refused, write };
}
