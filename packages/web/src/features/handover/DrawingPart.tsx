import { useState } from 'react';
import { download } from '../../app/download.ts';
import type { DrawingFormat } from '@hitchwright/print/pure';
import { formats, views } from './made.ts';
import type { MakerDesk } from './useMaker.ts';

/** One drawing at true scale, as a file. */
export function DrawingPart({ desk }: { readonly desk: MakerDesk }) {
  const [view, setView] = useState<(typeof views)[number][0]>('rear');
  const make = async (format: DrawingFormat): Promise<void> => {
    const made = await desk.make({ kind: 'drawing', view, format });
    if (made?.kind === 'file') download(made.name, made.bytes, made.type);
  };
  return (
    <section className="hand-over-part" aria-labelledby="drawing-title">
      <h3 id="drawing-title">A drawing</h3>
      <div className="hand-over-fields">
        <label>
          <span>View</span>
          <select
            value={view}
            onChange={({ target }) => setView(views.find(([one]) => one === target.value)?.[0] ?? view)}
          >
            {views.map(([one, words]) => (
              <option key={one} value={one}>
                {words}
              </option>
            ))}
          </select>
        </label>
      </div>
      <FormatButtons of="drawing" isBusy={desk.making !== null} onMake={(format) => void make(format)} />
    </section>
  );
}

interface FormatButtonsProps {
  /** What is made, for those who hear it. */
  readonly of: string;
  readonly isBusy: boolean;
  readonly onMake: (format: DrawingFormat) => void;
}

/** A press for each format. */
export function FormatButtons({ of, isBusy, onMake }: FormatButtonsProps) {
  return (
    <div className="hand-over-actions">
      {formats.map(([format, words]) => (
        <button key={format} type="button" disabled={isBusy} onClick={() => onMake(format)}>
          {words}
          <span className="unseen"> of the {of}</span>
        </button>
      ))}
    </div>
  );
}
