import type { Answer } from '@hitchwright/core/assess';
import { topicWords } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { topicAnswer } from './topicAnswer.ts';

type Topic = keyof typeof topicWords;

/** The four answers; what is not worked out yet says so. */
export function AnswerGrid({ answer }: { readonly answer: Answer }) {
  const { system } = usePreferences();
  return (
    <dl className="answers">
      {(Object.keys(topicWords) as Topic[]).map((topic) => (
        <div key={topic} className={`answer answer-${answer.outcomes[topic]}`}>
          <dt>
            <VerdictMark outcome={answer.outcomes[topic]} />
            {topicWords[topic]}
          </dt>
          <dd>
            <Figures text={topicAnswer(answer, topic, system)} />
          </dd>
        </div>
      ))}
    </dl>
  );
}
