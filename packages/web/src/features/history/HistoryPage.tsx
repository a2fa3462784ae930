import { YardFrame } from '../../app/server/YardFrame.tsx';

export function HistoryPage() {
  return (
    <YardFrame at="#history" title="What was changed">
      <p className="pad">Not there yet.</p>
    </YardFrame>
  );
}
