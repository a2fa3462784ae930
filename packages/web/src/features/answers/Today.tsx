import { linkOf } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';
import { useQuery } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { checkOf, setupOf, type SavedAnswer } from './answerTypes.ts';
import { Says, VerdictWord } from './VerdictWord.tsx';

/** What the same question comes to with the values in use today, and the way into it as a check. */
export function Today({ answer }: { readonly answer: SavedAnswer }) {
  const { refs, id, revision } = answer;
  const composed = useQuery({
    queryKey: ['answer', id, 'setup', revision],
    queryFn: ({ signal }) => setupOf(refs, signal),
  });
  const setup = composed.data?.setup;
  const now = useQuery({
    queryKey: ['answer', id, 'today', revision, composed.dataUpdatedAt],
    queryFn: ({ signal }) => checkOf(setup ?? {}, refs, signal),
    enabled: setup !== undefined,
  });
  return (
    <section className="ans-part" aria-labelledby="ans-today">
      <h2 id="ans-today" className="ans-subtitle">
        Asked again today
      </h2>
      <Trouble problem={composed.error ?? now.error} onAgain={() => void composed.refetch()} />
      {composed.isError ? (
        <p>It can’t be asked any more as it was: a record that it rests on is gone or has changed.</p>
      ) : null}
      <div role="status">
        {now.isLoading || composed.isLoading ? <p>It is being worked out…</p> : null}
        {now.data === undefined ? null : (
          <Compared answer={answer} verdict={now.data.verdict} reason={now.data.because ?? now.data.headline} />
        )}
      </div>
      {composed.data === undefined ? null : (
        <>
          {composed.data.removed.length === 0 ? null : (
            <p>
              {composed.data.removed.length === 1 ? 'A record' : `${composed.data.removed.length} records`} that it
              rests on {composed.data.removed.length === 1 ? 'was' : 'were'} removed from the lists.
            </p>
          )}
          <p className="button-row">
            <a className="button button-solid" href={`#${linkOf(composed.data.setup as SetupDocument)}`}>
              Open it as a check
            </a>
          </p>
        </>
      )}
    </section>
  );
}

interface ComparedProps {
  readonly answer: SavedAnswer;
  readonly verdict: string;
  readonly reason: string;
}

/** Whether it differs from what is saved, in its verdict or its first reason. */
function Compared({ answer, verdict, reason }: ComparedProps) {
  if (verdict === answer.verdict && reason === answer.reason)
    return <p>It comes to the same: {<VerdictWord verdict={verdict} />}</p>;
  return (
    <>
      <p className="ans-differs">Today it comes out otherwise than what is saved. It is being checked again.</p>
      <p className="ans-says">
        <Says verdict={verdict} reason={reason} />
      </p>
    </>
  );
}
