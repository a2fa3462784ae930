import { createHash } from 'node:crypto';
import { sql, type Insertable } from 'kysely';
import { insertMany } from '../database/chunks.ts';
import type { Database, Queries } from '../database/database.ts';
import { knownVersion } from '../database/migrate.ts';
import { tableNames, tables, type ColumnType, type TableName, type Tables } from '../database/tables.ts';
import { StoreTrouble } from '../trouble.ts';
import { countsOf, type ArchiveHead, type Counts } from './archive.ts';

/** Pieces of the text of an archive, cut anywhere. */
export type ArchiveText = AsyncIterable<string> | Iterable<string>;

interface ArchiveRow {
  readonly table: TableName;
  readonly row: Readonly<Record<string, unknown>>;
}

/** A line longer than any that is written is no line of an archive [characters]. */
const longestLine = 50_000_000;
const rowsAtOnce = 500;
const lettersAtOnce = 20_000_000;

/**
 * Reads an archive to its end and checks that it is whole: its hash, the number of its rows, and each row’s columns.
 *
 * @param text the archive
 * @param take takes the rows, some of one table at a time
 * @returns its head; throws StoreTrouble `damaged` where it is not whole, `newer` where a newer program wrote it
 */
export async function unarchive(
  text: ArchiveText,
  take: (table: TableName, rows: readonly Record<string, unknown>[]) => Promise<void>,
): Promise<ArchiveHead> {
  const hash = createHash('sha256');
  const counts = new Map<TableName, number>(tableNames.map((table) => [table, 0]));
  let head: ArchiveHead | null = null;
  let held: { table: TableName; rows: Record<string, unknown>[]; letters: number } | null = null;
  for await (const line of linesOf(text)) {
    const value = parsed(line);
    if (head !== null && value['end'] === true) {
      if (held !== null) await take(held.table, held.rows);
      if (value['sha256'] !== hash.digest('hex')) throw damaged('its hash is another');
      checkCounts(head.counts, counts);
      return head;
    }
    hash.update(`${line}\n`);
    if (head === null) {
      head = headOf(value);
      continue;
    }
    const { table, row } = rowIn(value);
    counts.set(table, (counts.get(table) ?? 0) + 1);
    if (held !== null && (held.table !== table || held.rows.length >= rowsAtOnce || held.letters > lettersAtOnce)) {
      await take(held.table, held.rows);
      held = null;
    }
    held ??= { table, rows: [], letters: 0 };
    held.rows.push(keptAs(table, row));
    held.letters += line.length;
  }
  throw damaged('it ends too early');
}

/** Puts an archive into a store that is empty. The transaction fails where the archive is not whole. */
export async function fill(queries: Queries, text: ArchiveText): Promise<ArchiveHead> {
  const head = await unarchive(text, (table, rows) =>
    insertMany(queries, table, rows as unknown as readonly Insertable<Tables[TableName]>[]),
  );
  const counts = await countsOf(queries);
  checkCounts(head.counts, new Map(Object.entries(counts) as [TableName, number][]));
  return head;
}

/** Puts an archive into a store, wholly or not at all, while nobody else writes. Where it holds something already, that is replaced, or this is thrown. */
export async function filled(
  queries: Queries,
  { kind }: Database,
  text: ArchiveText,
  ifKept: 'replace' | Error,
): Promise<ArchiveHead> {
  if (kind === 'postgres')
    await sql`lock table ${sql.join(tableNames.map((name) => sql.table(name)))} in exclusive mode`.execute(queries);
  if (!(await isEmpty(queries))) {
    if (ifKept !== 'replace') throw ifKept;
    await clear(queries);
  }
  return fill(queries, text);
}

/** Whether nothing is kept yet. */
async function isEmpty(queries: Queries): Promise<boolean> {
  return Object.values(await countsOf(queries)).every((count) => count === 0);
}

/** Takes everything out of a store. */
async function clear(queries: Queries): Promise<void> {
  await queries.updateTable('record').set({ owner_id: null, model_id: null, parent_id: null }).execute();
  for (const table of [...tableNames].reverse()) await queries.deleteFrom(table).execute();
}

async function* linesOf(text: ArchiveText): AsyncGenerator<string> {
  let rest = '';
  for await (const piece of text) {
    const lines = (rest + piece).split('\n');
    rest = lines.pop() ?? '';
    if (rest.length > longestLine) throw damaged('a line of it has no end');
    yield* lines.filter((line) => line !== '');
  }
  if (rest !== '') yield rest;
}

function parsed(line: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(line);
    if (typeof value === 'object' && value !== null) return value as Record<string, unknown>;
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
  }
  throw damaged('a line of it is no JSON');
}

function headOf(value: Readonly<Record<string, unknown>>): ArchiveHead {
  const head = value as unknown as ArchiveHead;
  if (head.hitchwright !== 1 || head.archive !== 1 || !Number.isInteger(head.tables) || typeof head.counts !== 'object')
    throw damaged('it does not begin like one');
  if (head.tables > knownVersion)
    throw new StoreTrouble(
      'newer',
      `The archive was written by a newer program (version ${head.tables} of its tables; this one knows ${knownVersion}): use that program.`,
    );
  return head;
}

function rowIn({ table, row }: Readonly<Record<string, unknown>>): ArchiveRow {
  if (typeof table !== 'string' || !Object.hasOwn(tables, table)) throw damaged('a line of it belongs to no table');
  if (typeof row !== 'object' || row === null) throw damaged('a line of it is no row');
  return { table: table as TableName, row: row as Record<string, unknown> };
}

/** A row as the database takes it. A column that came later is left out: it begins empty. */
function keptAs(table: TableName, row: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const columns = Object.entries(tables[table]) as [string, ColumnType][];
  const strange = Object.keys(row).find((name) => !Object.hasOwn(tables[table], name));
  if (strange !== undefined) throw damaged(`a row of ${table} has a column too many`);
  return Object.fromEntries(columns.map(([name, type]) => [name, columnAs(type, row[name], `${table}.${name}`)]));
}

function columnAs(type: ColumnType, value: unknown, where: string): unknown {
  if (value === null || value === undefined) {
    if (type.endsWith('?')) return null;
    if (type === 'json') return 'null';
    throw damaged(`${where} is empty`);
  }
  if (type === 'json' || type === 'json?') return JSON.stringify(value);
  if (typeof value !== (type === 'whole' ? 'number' : 'string')) throw damaged(`${where} is of another kind`);
  return type === 'bytes' ? Buffer.from(value as string, 'base64') : value;
}

function checkCounts(expected: Counts, got: ReadonlyMap<TableName, number>): void {
  const wrong = tableNames.find((table) => (expected[table] ?? 0) !== got.get(table));
  if (wrong !== undefined)
    throw damaged(`of ${wrong} it has ${got.get(wrong) ?? 0} rows and not ${expected[wrong] ?? 0}`);
}

function damaged(why: string): StoreTrouble {
  return new StoreTrouble('damaged', `The archive is damaged: ${why}. Nothing was changed; use another one.`);
}
