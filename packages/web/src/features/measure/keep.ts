import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { MeasuringRequest } from '@hitchwright/core/records';
import type { Entry, Session } from './session.ts';

interface Kept extends DBSchema {
  sessions: { key: string; value: Session };
  entries: { key: [string, string]; value: Entry & { readonly session: string } };
  photos: { key: [string, string]; value: { readonly session: string; readonly path: string; readonly jpeg: Blob } };
  /** What was asked of somebody from here, so that the reply finds its setup. */
  requests: { key: string; value: MeasuringRequest };
}

/** A session with everything that was read in it. */
export interface KeptSession {
  readonly session: Session;
  readonly entries: readonly Entry[];
}

let opened: Promise<IDBPDatabase<Kept>> | null = null;

function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>('hitchwright', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('sessions', { keyPath: 'id' });
      fresh.createObjectStore('entries', { keyPath: ['session', 'path'] });
      fresh.createObjectStore('photos', { keyPath: ['session', 'path'] });
      fresh.createObjectStore('requests', { keyPath: 'id' });
    },
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  });
  return opened;
}

/** Written through to the disk before it counts as kept: a phone may lose its power in a barn. */
const strict = { durability: 'strict' } as const;

/** Keys of everything that belongs to a session. */
function within(session: string): IDBKeyRange {
  return IDBKeyRange.bound([session], [session, []]);
}

export async function keepSession(session: Session): Promise<void> {
  const transaction = (await database()).transaction('sessions', 'readwrite', strict);
  await Promise.all([transaction.store.put(session), transaction.done]);
}

/** Each figure is written by itself: two pages that are open side by side lose nothing of each other. */
export async function keepEntry(session: string, entry: Entry): Promise<void> {
  const transaction = (await database()).transaction('entries', 'readwrite', strict);
  await Promise.all([transaction.store.put({ ...entry, session }), transaction.done]);
}

export async function keepPhoto(session: string, path: string, jpeg: Blob): Promise<void> {
  const transaction = (await database()).transaction('photos', 'readwrite', strict);
  await Promise.all([transaction.store.put({ session, path, jpeg }), transaction.done]);
}

export async function dropPhoto(session: string, path: string): Promise<void> {
  await (await database()).delete('photos', [session, path]);
}

/** The photos of a session by path. */
export async function photosOf(session: string): Promise<ReadonlyMap<string, Blob>> {
  const kept = await (await database()).getAll('photos', within(session));
  return new Map(kept.map(({ path, jpeg }) => [path, jpeg]));
}

export async function keptSession(id: string): Promise<KeptSession | null> {
  const db = await database();
  const session = await db.get('sessions', id);
  return session === undefined ? null : { session, entries: await db.getAll('entries', within(id)) };
}

/** Every session on this device, the newest first. */
export async function keptSessions(): Promise<readonly KeptSession[]> {
  const db = await database();
  const sessions = (await db.getAll('sessions')).sort((a, b) => b.begun.localeCompare(a.begun));
  return Promise.all(
    sessions.map(async (session) => ({ session, entries: await db.getAll('entries', within(session.id)) })),
  );
}

export async function dropSession(id: string): Promise<void> {
  const transaction = (await database()).transaction(['sessions', 'entries', 'photos'], 'readwrite', strict);
  await Promise.all([
    transaction.objectStore('sessions').delete(id),
    transaction.objectStore('entries').delete(within(id)),
    transaction.objectStore('photos').delete(within(id)),
    transaction.done,
  ]);
}

export async function keepRequest(request: MeasuringRequest): Promise<void> {
  const transaction = (await database()).transaction('requests', 'readwrite', strict);
  await Promise.all([transaction.store.put(request), transaction.done]);
}

/** A request that was made on this device. */
export async function keptRequest(id: string): Promise<MeasuringRequest | null> {
  return (await (await database()).get('requests', id)) ?? null;
}
