import type { Merged } from '@hitchwright/core/readings';
import { fieldRules, readValue, type MeasuringReply } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { labelOf, sentenceCase } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { readText } from '../dimensions/readText.ts';

interface MergeTableProps {
  readonly merged: readonly Merged[];
  readonly reply: MeasuringReply;
  readonly taken: ReadonlySet<string>;
  readonly onToggle: (path: string) => void;
}

const states: Readonly<Record<Merged['state'], string>> = {
  new: 'nothing was known',
  agrees: 'both can be true; the reading takes its place',
  differs: 'they can’t both be true: decide which holds',
  same: 'the same as here',
};

/** Every reading beside what stands here; what differs is taken only by hand. */
export function MergeTable({ merged, reply, taken, onToggle }: MergeTableProps) {
  const { system } = usePreferences();
  return (
    <>
      <ul className="plain-list merge-list">
        {merged.map(({ path, before, after, state }) => (
          <li key={path} className={`merge-${state}`}>
            <label>
              <input type="checkbox" checked={taken.has(path)} onChange={() => onToggle(path)} />
              <span>
                <b>{sentenceCase(labelOf(path))}</b>
                <br />
                <Figures text={`Read: ${told(path, after, system)}`} />
                <br />
                <Figures text={`Here: ${told(path, before, system)} (${states[state]})`} />
              </span>
            </label>
            <Photo reply={reply} path={path} />
          </li>
        ))}
      </ul>
      {reply.left.length === 0 ? null : (
        <p className="request-part">Could not be reached: {reply.left.map(labelOf).join(', ')}.</p>
      )}
    </>
  );
}

function Photo({ reply, path }: { readonly reply: MeasuringReply; readonly path: string }) {
  const photo = reply.photos?.find((one) => one.path === path);
  return photo === undefined ? null : <img src={photo.jpeg} alt={`Photo of the reading: ${labelOf(path)}`} />;
}

function told(path: string, raw: unknown, system: UnitSystem): string {
  const rule = fieldRules.get(path);
  if (raw === undefined || raw === null) return 'nothing';
  if (rule === undefined)
    return typeof raw === 'object' ? JSON.stringify(raw) : String(raw as string | number | boolean);
  const { value } = readValue(raw, rule, path, system);
  return readText(value ?? undefined, rule, system).replace(/^= /, '');
}
