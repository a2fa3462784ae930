import { YardFrame } from '../../app/server/YardFrame.tsx';

export function BackupPage() {
  return (
    <YardFrame at="#backup" title="Backup and restore">
      <p className="pad">Not there yet.</p>
    </YardFrame>
  );
}
