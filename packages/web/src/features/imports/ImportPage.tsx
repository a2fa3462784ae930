import { YardFrame } from '../../app/server/YardFrame.tsx';
import { ChooseFile } from './ChooseFile.tsx';
import { OpenImport } from './OpenImport.tsx';
import './imports.css';

/** Brings a spreadsheet in: a file, what its columns mean, what becomes of every row, and then the writing. */
export function ImportPage({ id }: { readonly id: string | null }) {
  return (
    <YardFrame at="#import" title="Import a sheet">
      <div className="imp-sheet">{id === null ? <ChooseFile /> : <OpenImport key={id} id={id} />}</div>
    </YardFrame>
  );
}
