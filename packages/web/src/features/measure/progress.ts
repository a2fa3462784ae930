import { readingOf } from '@hitchwright/core/advice';
import { fieldOfPart } from '@hitchwright/core/readings';
import type { Entries, Entry, Session } from './session.ts';
import type { Step } from './steps.ts';

/** How many figures are asked for, and how long reading them takes: the same words for whoever asks and whoever reads. */
export function askedWords(fields: readonly string[]): string {
  const minutes = Math.ceil(fields.reduce((sum, field) => sum + readingOf(field, 0).minutes, 0));
  return `${fields.length === 1 ? 'one figure' : `${fields.length} figures`}, about ${minutes} min`;
}

/** Which figure it is of how many: one with several ends or holes counts once. */
export function countOf(
  { session, entries }: { readonly session: Session; readonly entries: Entries },
  steps: readonly Step[],
  opened: string | null,
): { readonly nth: number; readonly total: number } {
  const left = new Set(steps.map(({ path }) => fieldOfPart(path)));
  const read = fieldsRead(session, entries).filter((field) => !left.has(field));
  const before = opened === null ? -1 : read.indexOf(fieldOfPart(opened));
  const nth = before === -1 ? read.length + 1 : before + 1;
  const total = Math.max(nth, read.length + left.size);
  return { nth, total };
}

/** How many fields were read. */
export function readCount(entries: Entries): number {
  return new Set(finished(entries, ['done']).map(({ path }) => fieldOfPart(path))).size;
}

/** What was finished just before: before the figure that is opened, or last of all. */
export function lastBefore(entries: Entries, current: string | null): string | null {
  const paths = finished(entries, ['done', 'skipped']).map(({ path }) => path);
  const at = current === null ? -1 : paths.indexOf(current);
  return (at === -1 ? paths.at(-1) : paths[at - 1]) ?? null;
}

/** What somebody asked for is finished as well where it could not be reached; of one’s own only what was read counts. */
function fieldsRead({ request }: Session, entries: Entries): string[] {
  const fields = finished(entries, request === null ? ['done'] : ['done', 'skipped']).map(({ path }) =>
    fieldOfPart(path),
  );
  return [...new Set(fields)].filter((field) => request === null || request.fields.includes(field));
}

function finished(entries: Entries, states: readonly Entry['state'][]): Entry[] {
  return [...entries.values()]
    .filter(({ state }) => states.includes(state))
    .sort((a, b) => a.touched.localeCompare(b.touched));
}
