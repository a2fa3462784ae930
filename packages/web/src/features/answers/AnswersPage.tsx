import { YardFrame } from '../../app/server/YardFrame.tsx';
import './answers.css';
import { AnswerSearch } from './AnswerSearch.tsx';
import { ChangedAnswers } from './ChangedAnswers.tsx';
import { RecheckState } from './RecheckState.tsx';

/** Answers that were saved: first those that came out otherwise since, and who has to hear of it. */
export function AnswersPage() {
  return (
    <YardFrame at="#answers" title="Saved answers">
      <div className="ans-sheet">
        <RecheckState />
        <ChangedAnswers />
        <AnswerSearch />
      </div>
    </YardFrame>
  );
}
