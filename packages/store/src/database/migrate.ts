import { sql } from 'kysely';
import { StoreTrouble } from '../trouble.ts';
import type { Database, DatabaseKind, Queries } from './database.ts';
import { columnTypes, migrations } from './migrations/index.ts';
import { tables } from './tables.ts';

/** Version of the schema that this program knows. */
export const knownVersion = migrations.length;
/** One of our servers changes the schema at a time; any number that no other program uses. */
const migrationLock = 4_819_217_703;

interface Step {
  readonly version: number;
  readonly applied_at: string;
}

/**
 * Brings a database to a version of the schema. Nothing is changed where it is there already.
 *
 * @param database the database [record]
 * @param now time to note beside each step [ISO 8601]
 * @param upTo version to stop at; the newest, but for tests [whole]
 */
export async function migrate(database: Database, now: string, upTo: number = knownVersion): Promise<void> {
  await database.write(async (queries) => {
    if (database.kind === 'postgres') await sql`select pg_advisory_xact_lock(${migrationLock})`.execute(queries);
    const version = await versionOf(queries, database);
    const types = columnTypes(database.kind);
    for (const migration of migrations.filter((one) => one.version > version && one.version <= upTo)) {
      await migration.up(queries.schema, types);
      const step = { version: migration.version, applied_at: now };
      await versions(queries).insertInto('schema_version').values(step).execute();
    }
  });
}

/** Version of a database, made ready to note versions; refuses what a newer program or another one made. */
async function versionOf(queries: Queries, { kind, where }: Database): Promise<number> {
  const names = await tableNames(queries, kind);
  if (!names.includes('schema_version')) {
    const ours = Object.keys(tables).find((name) => names.includes(name));
    if (ours !== undefined) throw new StoreTrouble('notOurs', notOurs(where, ours));
    await queries.schema
      .createTable('schema_version')
      .addColumn('version', 'integer', (c) => c.primaryKey().notNull())
      .addColumn('applied_at', columnTypes(kind).text, (c) => c.notNull())
      .execute();
    return 0;
  }
  const rows = await versions(queries).selectFrom('schema_version').select('version').execute();
  const version = Math.max(0, ...rows.map((row) => row.version));
  if (version > knownVersion) throw new StoreTrouble('newer', newer(where, version));
  return version;
}

async function tableNames(queries: Queries, kind: DatabaseKind): Promise<string[]> {
  const names =
    kind === 'postgres'
      ? sql<{ name: string }>`select tablename as name from pg_tables where schemaname = current_schema()`
      : sql<{ name: string }>`select name from sqlite_master where type = 'table'`;
  return (await names.execute(queries)).rows.map(({ name }) => name);
}

function versions(queries: Queries) {
  return queries.withTables<{ schema_version: Step }>();
}

function notOurs(where: string, table: string): string {
  return `The database at ${where} has a table ${table} that this program did not make: name an empty database as the store.`;
}

function newer(where: string, version: number): string {
  return `The store at ${where} was made by a newer program (version ${version} of its tables; this one knows ${knownVersion}): use that program. Nothing was changed.`;
}
