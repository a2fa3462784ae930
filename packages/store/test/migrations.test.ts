import { readdirSync, readFileSync } from 'node:fs';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { addressOf } from '../src/database/address.ts';
import { insertMany } from '../src/database/chunks.ts';
import type { Database } from '../src/database/database.ts';
import { knownVersion, migrate } from '../src/database/migrate.ts';
import { openPostgres } from '../src/database/postgres.ts';
import { openSqlite } from '../src/database/sqlite.ts';
import { rowKeys, tables, type ColumnType, type TableName } from '../src/database/tables.ts';
import { openStore, StoreTrouble } from '../src/index.ts';
import { unarchive } from '../src/keep/unarchive.ts';
import { afterwards, databases, opened, thrownBy, timesAndIds } from './databases.ts';
import { schemaOf } from './schema.ts';
import { ida, tiller } from './yard.ts';

interface Fixture {
  readonly version: number;
  readonly statements: Readonly<Record<Database['kind'], readonly string[]>>;
  readonly rows: readonly { readonly table: TableName; readonly row: Readonly<Record<string, unknown>> }[];
}

const folder = new URL('fixtures/', import.meta.url);
const described = readFileSync(new URL('schema.txt', folder), 'utf8');
const fixtures = readdirSync(folder)
  .filter((name) => /^tables-\d+\.json$/.test(name))
  .map((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Fixture)
  .sort((a, b) => a.version - b.version);

async function database(url: string): Promise<Database> {
  const address = addressOf(url);
  const made = address.kind === 'sqlite' ? await openSqlite(address.file) : await openPostgres(address.url);
  afterwards(() => made.close());
  return made;
}

/** A database as an older program has left it. */
async function leftBy(url: string, { version, statements, rows }: Fixture): Promise<void> {
  const old = await database(url);
  await old.write(async (queries) => {
    const text = sql.raw(old.kind === 'postgres' ? 'text collate "C"' : 'text');
    await sql`create table schema_version (version integer not null primary key, applied_at ${text} not null)`.execute(
      queries,
    );
    for (const statement of statements[old.kind]) await sql.raw(statement).execute(queries);
    for (let step = 1; step <= version; step += 1)
      await sql`insert into schema_version values (${step}, '2026-09-14')`.execute(queries);
    for (const { table, row } of rows) await insertMany(queries, table, [kept(table, row)]);
  });
  await old.close();
}

function kept(table: TableName, row: Readonly<Record<string, unknown>>): never {
  const columns = Object.entries(tables[table]) as [string, ColumnType][];
  const value = (type: ColumnType, given: unknown): unknown => {
    if (given === null) return null;
    if (type.startsWith('json')) return JSON.stringify(given);
    return type === 'bytes' ? Buffer.from(String(given), 'base64') : given;
  };
  return Object.fromEntries(columns.map(([name, type]) => [name, value(type, row[name])])) as never;
}

describe('the tables', () => {
  it.each(databases)('are those of the committed description on $name', async ({ fresh }) => {
    const made = await database(await fresh());
    await migrate(made, '2026-09-14T00:00:00Z');
    expect(await schemaOf(made)).toBe(described);
  });

  it.each(databases)('are what the queries take them for on $name', async ({ fresh }) => {
    const made = await database(await fresh());
    await migrate(made, '2026-09-14T00:00:00Z');
    const found = await schemaOf(made);
    for (const [table, columns] of Object.entries(tables) as [TableName, Record<string, ColumnType>][]) {
      const lines = Object.entries(columns).map(([name, type]) => {
        const kind = type.startsWith('json') || type.startsWith('text') ? 'text' : type.replace('whole', 'integer');
        return `  ${name} ${kind}${type.endsWith('?') ? '' : ' not null'}`;
      });
      expect(found).toContain(`${table}\n${lines.join('\n')}\n`);
      expect(found).toContain(`  primary key ${rowKeys[table].join(', ')}\n`);
    }
  });
});

describe.each(databases)('a store on $name', ({ fresh }) => {
  it('has a kept fixture of every version', () => {
    expect(fixtures.map(({ version }) => version)).toEqual(Array.from({ length: knownVersion }, (_, i) => i + 1));
  });

  it.each(fixtures)('of version $version moves on with everything in it', async (fixture) => {
    const url = await fresh();
    await leftBy(url, fixture);
    const store = await opened(url);
    const rows: { table: TableName; row: unknown }[] = [];
    const lines: string[] = [];
    await store.exportAll((line) => void lines.push(line));
    await unarchive(lines, (table, some) => {
      rows.push(...some.map((row) => ({ table, row })));
      return Promise.resolve();
    });
    expect(rows).toEqual(fixture.rows.map(({ table, row }) => ({ table, row: kept(table, row) as unknown })));
    const records = (await store.records.list()).items;
    expect(records).toHaveLength(5);
    for (const { id, revision } of records)
      expect(await store.history.at(id, revision)).toEqual(await store.records.get(id));
    await store.records.create(ida, { ...tiller, name: 'a new one' });
    await store.close();
    const made = await database(url);
    expect(await schemaOf(made)).toBe(described);
  });

  it('is opened by several servers at the same time', async () => {
    const url = await fresh();
    const stores = await Promise.all(['a', 'b', 'c', 'd'].map((mark) => opened(url, mark)));
    await Promise.all(stores.map((store, i) => store.records.create(ida, { kind: 'customer', name: `n ${i}` })));
    expect((await stores[0]?.records.list())?.items).toHaveLength(4);
  });

  it('of a newer program is refused in plain words and left as it is', async () => {
    const url = await fresh();
    await (await opened(url)).close();
    const made = await database(url);
    await made.write((queries) => sql`insert into schema_version values (99, '2030-01-01')`.execute(queries));
    const before = await schemaOf(made);
    const problem = (await thrownBy(openStore({ url, ...timesAndIds() }))) as StoreTrouble;
    expect(problem).toBeInstanceOf(StoreTrouble);
    expect(problem).toMatchObject({
      code: 'newer',
      message: expect.stringContaining('newer program (version 99') as string,
    });
    expect(await schemaOf(made)).toBe(before);
  });

  it('does not settle in what somebody else has made', async () => {
    const url = await fresh();
    const made = await database(url);
    await made.write((queries) => sql`create table record (song text)`.execute(queries));
    const problem = await thrownBy(openStore({ url, ...timesAndIds() }));
    expect(problem).toMatchObject({ code: 'notOurs', message: expect.stringContaining('a table record') as string });
  });
});
