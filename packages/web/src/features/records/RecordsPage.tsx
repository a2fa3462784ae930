import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { YardFrame } from '../../app/server/YardFrame.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { kindNamed, kinds, kindWords, type Kind } from './kinds.ts';
import { RecordList } from './RecordList.tsx';

/** Every record of the yard, or those of one kind, found as they are typed. */
export function RecordsPage({ kind: word }: { readonly kind: string | null }) {
  return (
    <YardFrame at="#records" title="Records of the yard">
      <Records kind={kindNamed(word)} />
    </YardFrame>
  );
}

/** How many records are fetched at a time. */
const pageSize = 100;

function Records({ kind }: { readonly kind: Kind | null }) {
  const [search, setSearch] = useState('');
  const [isRemoved, setRemoved] = useState(false);
  const found = useInfiniteQuery({
    queryKey: ['records', kind, search, isRemoved],
    queryFn: ({ pageParam, signal }) =>
      said(
        yard.records.$get(
          {
            query: {
              limit: String(pageSize),
              ...(kind === null ? {} : { kind }),
              ...(search.trim() === '' ? {} : { search }),
              ...(isRemoved ? { removed: 'true' } : {}),
              ...(pageParam === null ? {} : { cursor: pageParam }),
            },
          },
          { init: { signal } },
        ),
      ),
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
    placeholderData: keepPreviousData,
  });
  const records = found.data?.pages.flatMap(({ items }) => items) ?? [];
  return (
    <section className="sheet records" aria-label="Records">
      <div className="records-head">
        <label className="records-search">
          <span>Search by name, customer, model or note</span>
          <input
            type="search"
            value={search}
            maxLength={200}
            autoComplete="off"
            spellCheck={false}
            onChange={({ target }) => setSearch(target.value)}
          />
        </label>
        <label className="records-removed">
          <input type="checkbox" checked={isRemoved} onChange={({ target }) => setRemoved(target.checked)} />
          Removed ones
        </label>
        <a className="button button-solid" href={`#new=${kind ?? 'implement'}`}>
          New {kind === null ? 'record' : kindWords[kind].one}
        </a>
      </div>
      <KindTabs kind={kind} />
      <Trouble problem={found.error} onAgain={() => void found.refetch()} />
      {found.data === undefined ? null : records.length === 0 ? (
        <NothingFound search={search} kind={kind} isRemoved={isRemoved} />
      ) : (
        <RecordList
          records={records}
          isOlder={found.isPlaceholderData}
          hasMore={found.hasNextPage}
          onEnd={() => {
            if (found.hasNextPage && !found.isFetchingNextPage && !found.isFetchNextPageError)
              void found.fetchNextPage();
          }}
        />
      )}
    </section>
  );
}

function KindTabs({ kind }: { readonly kind: Kind | null }) {
  return (
    <nav className="kind-tabs" aria-label="Kinds of records">
      <a href="#records" aria-current={kind === null ? 'true' : undefined}>
        All
      </a>
      {kinds.map((one) => (
        <a key={one} href={`#records=${one}`} aria-current={kind === one ? 'true' : undefined}>
          {kindWords[one].many}
        </a>
      ))}
    </nav>
  );
}

interface NothingProps {
  readonly search: string;
  readonly kind: Kind | null;
  readonly isRemoved: boolean;
}

function NothingFound({ search, kind, isRemoved }: NothingProps) {
  const what = kind === null ? 'record' : kindWords[kind].one;
  if (search.trim() !== '' || isRemoved)
    return (
      <p className="pad" role="status">
        No {isRemoved ? 'removed ' : ''}
        {what} {search.trim() === '' ? '' : `has “${search.trim()}” in its name, its notes, its owner or its model`}.
      </p>
    );
  return (
    <div className="pad records-empty" role="status">
      <p className="because">There is no {what} in the yard yet.</p>
      <p>
        Type one in, bring a spreadsheet, or look around with the sample yard, in which everything is invented and which
        leaves with one click.
      </p>
      <p className="button-row">
        <a className="button" href={`#new=${kind ?? 'implement'}`}>
          New {what}
        </a>
        <a className="button" href="#import">
          Import a sheet
        </a>
        <a className="button" href="#backup">
          Sample yard
        </a>
      </p>
    </div>
  );
}
