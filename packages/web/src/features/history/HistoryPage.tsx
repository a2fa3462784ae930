import { useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { YardFrame } from '../../app/server/YardFrame.tsx';
import { GroupLine } from './GroupLine.tsx';
import { groupKinds, groupsOf, type GroupKind } from './historyTypes.ts';
import './history.css';

/** What was changed in the yard, the latest first, and how to take it back. */
export function HistoryPage() {
  return (
    <YardFrame at="#history" title="What was changed">
      <section className="his-sheet" aria-label="Changes">
        <Groups />
      </section>
    </YardFrame>
  );
}

function Groups() {
  const [kind, setKind] = useState<GroupKind | null>(null);
  const found = useInfiniteQuery({
    queryKey: ['history', 'groups', kind],
    queryFn: ({ pageParam, signal }) => groupsOf(kind, pageParam, signal),
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
  });
  const groups = found.data?.pages.flatMap(({ items }) => items) ?? [];
  return (
    <>
      <div className="his-filters" role="group" aria-label="Which changes are shown">
        {groupKinds.map(([one, words]) => (
          <button key={words} type="button" aria-pressed={kind === one} onClick={() => setKind(one)}>
            {words}
          </button>
        ))}
      </div>
      <Trouble problem={found.error} onAgain={() => void found.refetch()} />
      {found.isPending ? <p className="his-part">Looking…</p> : null}
      {found.isSuccess && groups.length === 0 ? (
        <p className="his-part">
          Nothing was changed yet. Every change of a record comes to stand here and can be taken back.
        </p>
      ) : null}
      <ol className="his-groups">
        {groups.map((group) => (
          <GroupLine key={group.id} group={group} />
        ))}
      </ol>
      {found.hasNextPage ? (
        <p className="his-part">
          <button type="button" disabled={found.isFetchingNextPage} onClick={() => void found.fetchNextPage()}>
            Earlier ones
          </button>
        </p>
      ) : null}
    </>
  );
}
