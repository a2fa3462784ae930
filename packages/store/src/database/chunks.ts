import type { Insertable } from 'kysely';
import type { Queries } from './database.ts';
import { tables, type TableName, type Tables } from './tables.ts';

/** Both drivers take at least so many values in one statement. */
const mostValues = 10_000;

/** Inserts many rows with few statements. */
export async function insertMany<T extends TableName>(
  queries: Queries,
  table: T,
  rows: readonly Insertable<Tables[T]>[],
): Promise<void> {
  for (const chunk of chunksOf(rows, Math.floor(mostValues / Object.keys(tables[table]).length))) {
    await queries.insertInto(table).values(chunk).execute();
  }
}

/** A list in pieces of at most so many. */
export function chunksOf<T>(list: readonly T[], most = 500): T[][] {
  const starts = Array.from({ length: Math.ceil(list.length / most) }, (_, i) => i * most);
  return starts.map((start) => list.slice(start, start + most));
}
