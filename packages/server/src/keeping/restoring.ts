import { once as happened } from 'node:events';
import { createReadStream, createWriteStream } from 'node:fs';
import { basename, join } from 'node:path';
import { inspectBackup, openStore, StoreTrouble, type Backup, type Counts } from '@hitchwright/store';
import type { Desk } from '../desk.ts';
import { inputRefusal } from '../http/refusal.ts';
import { inFolder, spooled } from './spool.ts';

/** What a restored store holds, and the backup of what was there before. */
export interface RestoredHere {
  readonly form: Backup['form'];
  readonly counts: Counts;
  readonly kept: string | null;
}

/**
 * Puts a backup that somebody sends in the place of everything that the store holds. It is read from end to end first, and a backup of what is
 * there is kept in the data folder; then it takes its place in one transaction, wholly or not at all.
 *
 * @param desk the store and its data folder
 * @param body the backup [bytes]
 * @param replace whether what is there may go [flag]
 */
export async function restoredFrom(
  { store, folder, clock }: Desk,
  body: ReadableStream<Uint8Array> | null,
  replace: boolean,
): Promise<RestoredHere> {
  return inFolder(async (place) => {
    const sent = join(place, 'sent');
    await spooled(body, sent);
    const { form } = await inspected(sent);
    const archive = form === 'archive' ? sent : await archiveOf(sent, join(place, 'archive'), clock);
    const kept = replace ? await backedUpBefore({ store, folder, clock }) : null;
    const { counts } = await store.importAll(textOf(archive), { replace });
    return { form, counts, kept };
  });
}

/** What a backup that somebody sends holds, once it was read from end to end; nothing is changed. */
export async function lookedAt(body: ReadableStream<Uint8Array> | null): Promise<RestoredHere> {
  return inFolder(async (place) => {
    const sent = join(place, 'sent');
    await spooled(body, sent);
    const { form, counts } = await inspected(sent);
    return { form, counts, kept: null };
  });
}

/** The text of a file, which is opened when it is read and not before: it may never be. */
async function* textOf(file: string): AsyncGenerator<string> {
  yield* createReadStream(file, { encoding: 'utf8', highWaterMark: 1_000_000 }) as AsyncIterable<string>;
}

/** What was sent, read from end to end; whatever is wrong with it is wrong with the input. */
async function inspected(file: string): Promise<Backup> {
  try {
    return await inspectBackup(file);
  } catch (problem) {
    if (!(problem instanceof StoreTrouble)) throw problem;
    const isNewer = problem.code === 'newer';
    throw inputRefusal({
      code: isNewer ? 'version' : 'wrong-type',
      path: '',
      expected: 'a whole backup or archive of this program',
      got: isNewer ? 'one of a newer program' : 'something else, or a damaged one',
      hint: isNewer ? 'Use the newer program.' : 'Nothing was changed; send another one.',
    });
  }
}

/** The archive of a copy of a database file. */
async function archiveOf(file: string, archive: string, clock: () => string): Promise<string> {
  const store = await openStore({ url: `sqlite:${file}`, clock, ids: () => 'none' });
  const output = createWriteStream(archive);
  try {
    await store.exportAll(async (line) => {
      if (!output.write(line)) await happened(output, 'drain');
    });
  } finally {
    output.end();
    await Promise.all([store.close(), happened(output, 'close')]);
  }
  return archive;
}

async function backedUpBefore({ store, folder, clock }: Pick<Desk, 'store' | 'folder' | 'clock'>): Promise<string> {
  const stamp = clock().replace(/[^0-9A-Za-z]/g, '');
  const { file } = await store.backup(join(folder, `before-restore-${stamp}.backup`));
  return basename(file);
}
