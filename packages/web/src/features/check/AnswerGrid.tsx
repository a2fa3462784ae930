import type { Answer } from '@hitchwright/core/assess';
import { topicLine, topicWords } from '@hitchwright/core/words';
import { VerdictMark } from '../../marks/VerdictMark.tsx';

type Topic = keyof typeof topicWords;

/** The four answers; what is not worked out yet says so. */
export function AnswerGrid({ answer }: { readonly answer: Answer }) {
  return (
    <dl className="answers">
      {(Object.keys(topicWords) as Topic[]).map((topic) => (
        <div key={topic} className={`answer answer-${answer.outcomes[topic]}`}>
          <dt>
            <VerdictMark outcome={answer.outcomes[topic]} />
            {topicWords[topic]}
          </dt>
          <dd>{topicLine(answer, topic)}</dd>
        </div>
      ))}
    </dl>
  );
}
