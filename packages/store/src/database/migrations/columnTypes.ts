import { sql, type ColumnDataType, type RawBuilder } from 'kysely';
import type { DatabaseKind } from '../database.ts';

/** What a migration calls its columns: the same on both databases. */
export interface ColumnTypes {
  /** Text that sorts and compares by its code points on both. */
  readonly text: ColumnDataType | RawBuilder<unknown>;
  readonly whole: ColumnDataType;
  readonly bytes: ColumnDataType;
}

/** The types of one kind of database. */
export function columnTypes(kind: DatabaseKind): ColumnTypes {
  return kind === 'postgres'
    ? { text: sql`text collate "C"`, whole: 'integer', bytes: 'bytea' }
    : { text: 'text', whole: 'integer', bytes: 'blob' };
}
