import { fieldOfPart } from '@hitchwright/core/readings';
import type { MeasuringReply } from '@hitchwright/core/records';
import { editsOf, type Entries, type Session } from './session.ts';

/** What goes back to whoever asked: every figure that was read, and what could not be reached. */
export function replyOf(session: Session, entries: Entries, when: string): MeasuringReply {
  const skipped = [...entries.values()].filter(({ state }) => state === 'skipped').map(({ path }) => fieldOfPart(path));
  return {
    hitchwrightReply: 1,
    request: session.request?.id ?? session.id,
    ...(session.who === '' ? {} : { who: session.who }),
    when,
    readings: editsOf(session, entries),
    left: [...new Set(skipped)],
  };
}

/** The same with its photos, as the text of a file. */
export async function replyFile(reply: MeasuringReply, photos: ReadonlyMap<string, Blob>): Promise<string> {
  const taken = await Promise.all(
    [...photos].map(async ([path, blob]) => ({ path: fieldOfPart(path), jpeg: await dataUrlOf(blob) })),
  );
  return JSON.stringify(taken.length === 0 ? reply : { ...reply, photos: taken }, null, 2);
}

function dataUrlOf(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(reader.result as string));
    reader.addEventListener('error', () => reject(new Error('the photo could not be read')));
    reader.readAsDataURL(blob);
  });
}
