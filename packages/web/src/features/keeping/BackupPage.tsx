import { YardFrame } from '../../app/server/YardFrame.tsx';
import { CustomerPart } from './CustomerPart.tsx';
import { Downloads } from './Downloads.tsx';
import { RestorePart } from './RestorePart.tsx';
import { SamplePart } from './SamplePart.tsx';
import './keeping.css';

/** Takes the yard’s records elsewhere and brings them back; and what is taken out for good. */
export function BackupPage() {
  return (
    <YardFrame at="#backup" title="Backup and restore">
      <div className="keep-sheet">
        <Downloads />
        <RestorePart />
        <SamplePart />
        <CustomerPart />
      </div>
    </YardFrame>
  );
}
