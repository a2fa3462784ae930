import type { SetupDocument } from '@hitchwright/core/records';
import { download } from '../../app/download.ts';

/** The setup itself, as the file that a sheet without a code refers to and that every other part is made from. */
export function SetupFilePart({ document }: { readonly document: SetupDocument }) {
  const save = (): void => download('setup.json', `${JSON.stringify(document, null, 2)}\n`, 'application/json');
  return (
    <section className="hand-over-part" aria-labelledby="setup-file-title">
      <h3 id="setup-file-title">The setup as a file</h3>
      <p>Every figure with who read it, and the cures that are counted on. A sheet without a code refers to it.</p>
      <div className="hand-over-actions">
        <button type="button" onClick={save}>
          Save the setup file
        </button>
      </div>
    </section>
  );
}
