import type { Database, DatabaseKind, Queries } from './database/database.ts';

/** What every part of the store works with. */
export interface Desk {
  readonly database: Database;
  /** The time now [ISO 8601]. */
  readonly clock: () => string;
  /** A new id; later ones sort after earlier ones. */
  readonly ids: () => string;
}

/** One transaction that writes: its queries, its moment and its new ids. */
export interface Room {
  readonly queries: Queries;
  readonly kind: DatabaseKind;
  readonly now: string;
  readonly ids: () => string;
}

/** Does some work within one transaction that writes. */
export function writing<T>({ database, clock, ids }: Desk, work: (room: Room) => Promise<T>): Promise<T> {
  return database.write((queries) => work({ queries, kind: database.kind, now: clock(), ids }));
}
