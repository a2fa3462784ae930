import { useInfiniteQuery } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { kindWords } from '../records/kinds.ts';
import { ChangeLine } from './ChangeLine.tsx';
import { linesOf, madeIn, type Line } from './historyTypes.ts';
import { useRecordName } from './useRecordName.ts';

/** Everything that a group changed, record by record. */
export function GroupLines({ id }: { readonly id: string }) {
  const found = useInfiniteQuery({
    queryKey: ['history', 'lines', id],
    queryFn: ({ pageParam, signal }) => linesOf(id, pageParam, signal),
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
    staleTime: Infinity,
  });
  if (found.isPending) return <p>Looking…</p>;
  const lines = found.data?.pages.flatMap(({ items }) => items) ?? [];
  const records = [...new Set(lines.map(({ recordId }) => recordId))];
  return (
    <>
      <Trouble problem={found.error} onAgain={() => void found.refetch()} />
      {lines.length === 0 && found.isSuccess ? <p>What it changed was deleted since.</p> : null}
      {records.map((recordId) => (
        <RecordChanges key={recordId} recordId={recordId} lines={lines.filter((line) => line.recordId === recordId)} />
      ))}
      {found.hasNextPage ? (
        <button type="button" disabled={found.isFetchingNextPage} onClick={() => void found.fetchNextPage()}>
          More of it
        </button>
      ) : null}
    </>
  );
}

interface RecordChangesProps {
  readonly recordId: string;
  readonly lines: readonly Line[];
}

function RecordChanges({ recordId, lines }: RecordChangesProps) {
  const { name, kind } = useRecordName(recordId, madeIn(lines)) ?? { name: 'a record', kind: null };
  return (
    <section className="his-record" aria-label={name}>
      <h3>
        <a className="in-line" href={`#record=${encodeURIComponent(recordId)}`}>
          {name}
        </a>
        {kind === null ? null : <span className="his-kind"> {kindWords[kind].one}</span>}
      </h3>
      <dl className="his-lines">
        {asOne(lines).map((line) => (
          <ChangeLine key={`${line.what} ${line.key}`} kind={kind ?? ''} line={line} />
        ))}
      </dl>
    </section>
  );
}

/** The same thing that changed twice in a group changed once, from what it was first to what it was last. */
function asOne(lines: readonly Line[]): readonly Line[] {
  const things = new Map<string, Line>();
  for (const line of lines) {
    const thing = `${line.what} ${line.key}`;
    const first = things.get(thing) ?? line;
    things.set(thing, { ...line, before: first.before });
  }
  return [...things.values()];
}
