import { YardFrame } from '../../app/server/YardFrame.tsx';

export function AnswerPage({ id }: { readonly id: string }) {
  return (
    <YardFrame at="#answers" title="A saved answer">
      <p className="pad">Not there yet.</p>
    </YardFrame>
  );
}
