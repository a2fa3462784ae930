import { createHash } from 'node:crypto';
import { ordered } from './records/paths.ts';
import { longestName, textErrors } from './records/text.ts';
import { writing, type Desk, type Room } from './room.ts';
import type { Store } from './store.ts';
import { Conflict, Refused } from './trouble.ts';

/** What a request was answered, and whether it had been done before. */
export interface Done<T> {
  readonly response: T;
  readonly again: boolean;
}

/** Requests that were done, so that one that is sent twice is done once. */
export interface Requests {
  /**
   * Does a request under its key once. The work is given a store that writes in one transaction with the note that it was done: both are kept or
   * neither. Sent again, the first response is returned; another request under the same key throws Conflict.
   */
  once<T>(key: string, request: unknown, work: (store: Store) => Promise<T>): Promise<Done<T>>;
  /** Forgets the requests that were done before a time [ISO 8601]. */
  forget(before: string): Promise<number>;
}

/** The requests of a store; `storeOver` makes the store that the work is given. */
export function requestsPart(desk: Desk, storeOver: (desk: Desk) => Store): Requests {
  return {
    once: (key, request, work) =>
      writing(desk, (room) => done(room, { key, request }, () => work(storeOver(bound(desk, room))))),
    forget: (before) =>
      writing(desk, async ({ queries }) => {
        const gone = await queries.deleteFrom('done_request').where('at', '<', before).executeTakeFirst();
        return Number(gone.numDeletedRows);
      }),
  };
}

/** The same desk within a transaction that has begun. */
function bound(desk: Desk, { queries }: Room): Desk {
  const within = <R>(work: (queries: Room['queries']) => Promise<R>): Promise<R> => work(queries);
  return { ...desk, database: { ...desk.database, read: within, readLong: within, write: within } };
}

async function done<T>(
  { queries, now }: Room,
  { key, request }: { readonly key: string; readonly request: unknown },
  work: () => Promise<T>,
): Promise<Done<T>> {
  const errors = textErrors('key', key, longestName, 1);
  if (errors.length > 0) throw new Refused(errors);
  const hash = createHash('sha256')
    .update(ordered(request ?? null))
    .digest('base64url');
  const taken = await queries
    .insertInto('done_request')
    .values({ key, request: hash, response: null, at: now })
    .onConflict((conflict) => conflict.column('key').doNothing())
    .executeTakeFirst();
  if (Number(taken.numInsertedOrUpdatedRows) === 0) return repeated<T>(queries, key, hash);
  const response = await work();
  const text = JSON.stringify(response ?? null);
  await queries.updateTable('done_request').set({ response: text }).where('key', '=', key).execute();
  return { response, again: false };
}

async function repeated<T>(queries: Room['queries'], key: string, hash: string): Promise<Done<T>> {
  const row = await queries.selectFrom('done_request').selectAll().where('key', '=', key).executeTakeFirstOrThrow();
  if (row.request !== hash) throw new Conflict('Another request was done under this key.', { key, at: row.at });
  return { response: JSON.parse(row.response ?? 'null') as T, again: true };
}
