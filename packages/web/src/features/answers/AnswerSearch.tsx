import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { RecordPicker } from '../records/RecordPicker.tsx';
import type { ListedRecord } from '../records/recordTypes.ts';
import { AnswerList } from './AnswerList.tsx';
import { answersOf, type Wanted } from './answerTypes.ts';
import { verdicts } from './verdicts.ts';

/** Every saved answer, found by its words, its customer and its verdict. */
export function AnswerSearch() {
  const [search, setSearch] = useState('');
  const [verdict, setVerdict] = useState('');
  const [customer, setCustomer] = useState<ListedRecord | null>(null);
  const wanted: Wanted = {
    ...(search.trim() === '' ? {} : { search }),
    ...(verdict === '' ? {} : { verdict }),
    ...(customer === null ? {} : { customer: customer.id }),
  };
  const found = useInfiniteQuery({
    queryKey: ['answers', 'all', wanted],
    queryFn: ({ pageParam, signal }) => answersOf(wanted, pageParam, signal),
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
    placeholderData: keepPreviousData,
  });
  const answers = found.data?.pages.flatMap(({ items }) => items) ?? [];
  const isAny = Object.keys(wanted).length === 0;
  return (
    <section aria-labelledby="ans-all">
      <h2 id="ans-all" className="ans-title">
        All of them
      </h2>
      <div className="ans-filters">
        <label>
          <span>Search by title, reason or customer</span>
          <input
            type="search"
            value={search}
            maxLength={200}
            autoComplete="off"
            spellCheck={false}
            onChange={({ target }) => setSearch(target.value)}
          />
        </label>
        <label>
          <span>Verdict</span>
          <select value={verdict} onChange={({ target }) => setVerdict(target.value)}>
            <option value="">any</option>
            {verdicts.map(([one, words]) => (
              <option key={one} value={one}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <RecordPicker words="Customer" kinds={['customer']} picked={customer} onPick={setCustomer} />
      </div>
      <Trouble problem={found.error} onAgain={() => void found.refetch()} />
      {found.isSuccess && answers.length === 0 ? (
        <p className="ans-part" role="status">
          {isAny
            ? 'No answer is saved yet. Choose machines of the yard in a check and save its answer: it is kept up to date here.'
            : 'No saved answer is like that.'}
        </p>
      ) : (
        <AnswerList
          answers={answers}
          isOlder={found.isPlaceholderData}
          hasMore={found.hasNextPage}
          onEnd={() => {
            if (found.hasNextPage && !found.isFetchingNextPage) void found.fetchNextPage();
          }}
        />
      )}
    </section>
  );
}
