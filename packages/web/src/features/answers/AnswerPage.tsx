import { useQuery } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { YardFrame } from '../../app/server/YardFrame.tsx';
import { whenText } from '../history/whenText.ts';
import './answers.css';
import { answerOf, dealtWith, type SavedAnswer } from './answerTypes.ts';
import { RestsOn } from './RestsOn.tsx';
import { Today } from './Today.tsx';
import { useSettle } from './useSettle.ts';
import { Says } from './VerdictWord.tsx';

/** One saved answer: what was asked, what it said over time, and what it rests on. */
export function AnswerPage({ id }: { readonly id: string }) {
  return (
    <YardFrame at="#answers" title="A saved answer">
      <div className="ans-sheet">
        <Answer id={id} />
      </div>
    </YardFrame>
  );
}

function Answer({ id }: { readonly id: string }) {
  const asked = useQuery({ queryKey: ['answer', id], queryFn: ({ signal }) => answerOf(id, signal) });
  if (asked.data === undefined)
    return asked.error === null ? (
      <p className="waiting">Looking the answer up…</p>
    ) : (
      <div className="pad">
        <Trouble problem={asked.error} onAgain={() => void asked.refetch()} />
        <a className="button" href="#answers">
          Saved answers
        </a>
      </div>
    );
  const answer = asked.data;
  return (
    <>
      <Head answer={answer} />
      <Today answer={answer} />
      <OverTime answer={answer} />
      <RestsOn id={id} revision={answer.revision} />
    </>
  );
}

function Head({ answer }: { readonly answer: SavedAnswer }) {
  const { title, customer, askedAt, askedBy, verdict, reason, changedAt, checks, sample } = answer;
  const before = changedAt === null ? undefined : dealtWith(checks);
  const settle = useSettle(answer);
  return (
    <section className="ans-part ans-head" aria-label="The answer">
      <h2 className="ans-name">
        {title} {sample ? <span className="stamp">sample</span> : null}
      </h2>
      <p>
        {customer === null ? (
          'For no customer'
        ) : (
          <>
            For{' '}
            <a className="ans-link" href={`#record=${encodeURIComponent(customer.id)}`}>
              {customer.name}
            </a>
          </>
        )}
      </p>
      <p className="ans-when">
        Asked on {whenText(askedAt)} by {askedBy}
      </p>
      <p className="ans-says">
        <Says verdict={verdict} reason={reason} />
      </p>
      {before === undefined ? null : (
        <div className="ans-note">
          <p>
            A check changed it, and nobody has dealt with that. Before, it said:{' '}
            <Says verdict={before.verdict} reason={before.reason} />
          </p>
          <button type="button" disabled={settle.isPending} onClick={() => settle.mutate()}>
            Dealt with
          </button>
        </div>
      )}
      <Trouble problem={settle.error} />
    </section>
  );
}

function OverTime({ answer: { checks } }: { readonly answer: SavedAnswer }) {
  return (
    <section aria-labelledby="ans-over-time">
      <h2 id="ans-over-time" className="ans-title">
        What it said over time
      </h2>
      <ol className="ans-checks">
        {[...checks].reverse().map(({ revision, verdict, reason, checkedAt, checkedBy }, i) => (
          <li key={revision}>
            <p className="ans-when">
              {whenText(checkedAt)}
              <br />
              {i === checks.length - 1 ? `asked by ${checkedBy}` : checkedBy}
            </p>
            <p className="ans-says">
              <Says verdict={verdict} reason={reason} />
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}
