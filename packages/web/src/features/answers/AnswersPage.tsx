import { YardFrame } from '../../app/server/YardFrame.tsx';

export function AnswersPage() {
  return (
    <YardFrame at="#answers" title="Saved answers">
      <p className="pad">Not there yet.</p>
    </YardFrame>
  );
}
