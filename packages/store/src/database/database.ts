import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './tables.ts';

/** The two databases that a store can stand on. */
export type DatabaseKind = 'sqlite' | 'postgres';

/** What queries are asked of, within one transaction. */
export type Queries = Kysely<Tables> | Transaction<Tables>;

/** A database as the rest of the store sees it: work is done within one transaction, wholly or not at all. */
export interface Database {
  readonly kind: DatabaseKind;
  /** Where it is, without a password. */
  readonly where: string;
  /** Reads one moment of it; others may write meanwhile. */
  read<T>(work: (queries: Queries) => Promise<T>): Promise<T>;
  /** Reads one moment of it for a long time, such as all of it. */
  readLong<T>(work: (queries: Queries) => Promise<T>): Promise<T>;
  /** Writes; the work may be run again where another writer was in the way, so it has no effect but on the database. */
  write<T>(work: (queries: Queries) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}
