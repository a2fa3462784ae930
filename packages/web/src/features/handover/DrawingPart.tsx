import { useState } from 'react';
import { download } from '../../app/download.ts';
import { formats, views, type Format, type View } from './made.ts';
import type { MakerDesk } from './useMaker.ts';

const viewNames = Object.keys(views) as readonly View[];
const formatNames: Readonly<Record<Format, string>> = { pdf: 'PDF', svg: 'SVG', dxf: 'DXF, in millimetres' };

/** One drawing at true scale, as a file. */
export function DrawingPart({ desk }: { readonly desk: MakerDesk }) {
  const [view, setView] = useState<View>('rear');
  const make = async (format: Format): Promise<void> => {
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
            onChange={({ target }) => setView(viewNames.find((one) => one === target.value) ?? view)}
          >
            {viewNames.map((one) => (
              <option key={one} value={one}>
                {views[one]}
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
  readonly onMake: (format: Format) => void;
}

/** A press for each format. */
export function FormatButtons({ of, isBusy, onMake }: FormatButtonsProps) {
  return (
    <div className="hand-over-actions">
      {formats.map((format) => (
        <button key={format} type="button" disabled={isBusy} onClick={() => onMake(format)}>
          {formatNames[format]}
          <span className="unseen"> of the {of}</span>
        </button>
      ))}
    </div>
  );
}
