import type { Answer } from '@hitchwright/core/assess';
import type { Edit } from '@hitchwright/core/records';
import { asksWhetherDriven, topicWords, topicAnswer } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { DrivenQuestion } from './DrivenQuestion.tsx';

type Topic = keyof typeof topicWords;

interface AnswerGridProps {
  readonly answer: Answer;
  /** Left out where nothing can be changed. */
  readonly onEdit?: (edits: readonly Edit[]) => void;
}

/** The four answers; what is not worked out yet says so. */
export function AnswerGrid({ answer, onEdit }: AnswerGridProps) {
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
            {topic === 'runs' && asksWhetherDriven(answer) && onEdit !== undefined ? (
              <DrivenQuestion onEdit={onEdit} />
            ) : null}
          </dd>
        </div>
      ))}
    </dl>
  );
}
