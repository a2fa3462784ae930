import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { whenText } from '../history/whenText.ts';
import { answerOf, answersOf, dealtWith, type AnswerNote } from './answerTypes.ts';
import { useSettle } from './useSettle.ts';
import { Says } from './VerdictWord.tsx';

/** Answers that a check changed and nobody has dealt with: whom to tell, what it said and what it says. */
export function ChangedAnswers() {
  const found = useInfiniteQuery({
    queryKey: ['answers', 'changed'],
    queryFn: ({ pageParam, signal }) => answersOf({ changed: 'true' }, pageParam, signal),
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
  });
  const answers = found.data?.pages.flatMap(({ items }) => items) ?? [];
  if (answers.length === 0 && found.error === null) return null;
  return (
    <section className="ans-changed" aria-labelledby="ans-changed">
      <h2 id="ans-changed" className="ans-title">
        {answers.length === 1
          ? 'One answer came'
          : `${answers.length}${found.hasNextPage ? ' or more' : ''} answers came`}{' '}
        out otherwise since
      </h2>
      <Trouble problem={found.error} onAgain={() => void found.refetch()} />
      <ol className="ans-list">
        {answers.map((answer) => (
          <ChangedAnswer key={answer.id} answer={answer} />
        ))}
      </ol>
      {found.hasNextPage ? (
        <p className="ans-part">
          <button type="button" disabled={found.isFetchingNextPage} onClick={() => void found.fetchNextPage()}>
            More of them
          </button>
        </p>
      ) : null}
    </section>
  );
}

function ChangedAnswer({ answer }: { readonly answer: AnswerNote }) {
  const { id, title, customer, verdict, reason, changedAt, revision } = answer;
  const whole = useQuery({
    queryKey: ['answer', id, revision],
    queryFn: ({ signal }) => answerOf(id, signal),
    staleTime: Infinity,
  });
  const before = whole.data === undefined ? undefined : dealtWith(whole.data.checks);
  const settle = useSettle(answer);
  return (
    <li className="ans-turned">
      <div className="ans-who">
        <h3>
          <a className="ans-link" href={`#answer=${encodeURIComponent(id)}`}>
            {title}
          </a>
        </h3>
        <p className="ans-customer">{customer === null ? 'no customer' : customer.name}</p>
        {changedAt === null ? null : <p className="ans-when">{whenText(changedAt)}</p>}
      </div>
      <dl className="ans-turn">
        <div>
          <dt>It said</dt>
          <dd>{before === undefined ? '…' : <Says verdict={before.verdict} reason={before.reason} />}</dd>
        </div>
        <div className="ans-now">
          <dt>Now it says</dt>
          <dd>
            <Says verdict={verdict} reason={reason} />
          </dd>
        </div>
      </dl>
      <div>
        <button type="button" disabled={settle.isPending} onClick={() => settle.mutate()}>
          Dealt with<span className="unseen">: {title}</span>
        </button>
      </div>
      <div className="ans-trouble">
        <Trouble problem={settle.error} />
      </div>
    </li>
  );
}
