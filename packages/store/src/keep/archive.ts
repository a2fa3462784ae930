import { createHash } from 'node:crypto';
import { sql, type Kysely } from 'kysely';
import type { Queries } from '../database/database.ts';
import { knownVersion } from '../database/migrate.ts';
import { turn } from '../database/retry.ts';
import { StoreTrouble } from '../trouble.ts';
import { rowKeys, tableNames, tables, type ColumnType, type TableName } from '../database/tables.ts';

/** How many rows each table has. */
export type Counts = Readonly<Record<TableName, number>>;

/** The first line of an archive. */
export interface ArchiveHead {
  readonly hitchwright: 1;
  readonly archive: 1;
  /** Version of the tables. */
  readonly tables: number;
  readonly at: string;
  readonly counts: Counts;
}

/** Takes one line of an archive, its end of line included. */
export type Sink = (line: string) => void | Promise<void>;

type AnyRow = Record<string, unknown>;
type AnyTables = Kysely<Record<string, AnyRow>>;

/** Rows that are in memory at once; photos are large. */
const atOnce = 500;
const photosAtOnce = 4;
/** Kinds of records after those that they stand on. */
const kindOrder = ["kind not in ('machine', 'state')", "kind = 'machine'", "kind = 'state'"];

/**
 * Writes everything that a store keeps as lines of JSON: a head, one line for each row of each table, and an end with the hash of all lines
 * before it. Pictures are base64; JSON stands as JSON.
 *
 * @param queries one moment of the store
 * @param at time to note [ISO 8601]
 * @param sink takes the lines, one after the other
 * @returns the head
 */
export async function archive(queries: Queries, at: string, sink: Sink): Promise<ArchiveHead> {
  const hash = createHash('sha256');
  const line = async (value: unknown): Promise<void> => {
    const text = `${JSON.stringify(value)}\n`;
    hash.update(text);
    await sink(text);
  };
  const head: ArchiveHead = { hitchwright: 1, archive: 1, tables: knownVersion, at, counts: await countsOf(queries) };
  await line(head);
  for (const table of tableNames)
    for await (const row of rowsOf(queries, table)) await line({ table, row: opened(table, row) });
  await sink(`${JSON.stringify({ end: true, sha256: hash.digest('hex') })}\n`);
  return head;
}

/** How many rows each table has; none of a table that an older program did not make. */
export async function countsOf(queries: Queries, made: readonly TableName[] = tableNames): Promise<Counts> {
  const counts = new Map<string, number>(tableNames.map((table) => [table, 0]));
  for (const table of made) {
    const { rows } = await sql<{ n: unknown }>`select count(*) as n from ${sql.table(table)}`.execute(queries);
    counts.set(table, Number(rows[0]?.n));
  }
  return Object.fromEntries(counts) as Counts;
}

/**
 * Hash of everything that a store keeps: two stores with the same rows have the same.
 *
 * @param queries one moment of the store
 * @param made tables that are there; others would be empty
 * @returns the hash [hex]
 */
export async function contentHash(queries: Queries, made: readonly TableName[] = tableNames): Promise<string> {
  const hash = createHash('sha256');
  for (const table of made)
    for await (const row of rowsOf(queries, table)) hash.update(JSON.stringify([table, opened(table, row)]));
  return hash.digest('hex');
}

async function* rowsOf(queries: Queries, table: TableName): AsyncGenerator<AnyRow> {
  const parts = table === 'record' ? kindOrder : ['1 = 1'];
  for (const part of parts) {
    let after: AnyRow | undefined;
    do {
      const rows = await nextRows(queries as unknown as AnyTables, table, part, after);
      yield* rows;
      after = rows.at(-1);
      await turn();
    } while (after !== undefined);
  }
}

/** The rows after one, by what rows are told apart by. */
async function nextRows(
  queries: AnyTables,
  table: TableName,
  part: string,
  after: AnyRow | undefined,
): Promise<AnyRow[]> {
  const keys = rowKeys[table];
  const start = queries
    .selectFrom(table)
    .selectAll()
    .where(sql<boolean>`${sql.raw(part)}`);
  const rest =
    after === undefined
      ? start
      : start.where(
          sql<boolean>`(${sql.join(keys.map((key) => sql.ref(key)))}) > (${sql.join(keys.map((key) => after[key]))})`,
        );
  return keys
    .reduce((query, key) => query.orderBy(key), rest)
    .limit(table === 'photo' ? photosAtOnce : atOnce)
    .execute();
}

function opened(table: TableName, row: AnyRow): AnyRow {
  const columns = Object.entries(tables[table]) as [string, ColumnType][];
  return Object.fromEntries(columns.map(([name, type]) => [name, shownAs(type, row[name], `${table}.${name}`)]));
}

function shownAs(type: ColumnType, value: unknown, where: string): unknown {
  if (value === null || value === undefined) return value;
  if (type === 'json' || type === 'json?') return parsed(String(value), where);
  return type === 'bytes' ? Buffer.from(value as Uint8Array).toString('base64') : value;
}

function parsed(text: string, where: string): unknown {
  try {
    return JSON.parse(text);
  } catch (problem) {
    const said = `The store is damaged: a value of ${where} is not whole. Restore the last backup with restoreBackup.`;
    throw new StoreTrouble('damaged', said, problem);
  }
}
