import { addressOf } from './database/address.ts';
import { migrate } from './database/migrate.ts';
import { openPostgres } from './database/postgres.ts';
import { openSqlite } from './database/sqlite.ts';
import { storeOver, type Store } from './store.ts';

/** Where a store is kept, and where its times and ids come from. */
export interface StoreOptions {
  /** `sqlite:<file>`, or `postgres://…` */
  readonly url: string;
  /** The time now [ISO 8601, UTC]. */
  readonly clock: () => string;
  /** A new id, never given before; later ones sort after earlier ones. */
  readonly ids: () => string;
}

/**
 * Opens a store, makes it where there is none, and brings its tables to what this program knows.
 *
 * @param options where it is, its clock and its ids [record]
 * @returns the store; throws StoreTrouble, in one sentence for whoever runs it, where it is damaged, newer than this program, not
 *   reachable, or nothing is installed to read it [record]
 */
export async function openStore({ url, clock, ids }: StoreOptions): Promise<Store> {
  const address = addressOf(url);
  const database = address.kind === 'sqlite' ? await openSqlite(address.file) : await openPostgres(address.url);
  try {
    await migrate(database, clock());
  } catch (problem) {
    await database.close();
    throw problem;
  }
  return storeOver({ database, clock, ids });
}
