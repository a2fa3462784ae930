import { closeSync, existsSync, mkdirSync, openSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type SqliteFile from 'better-sqlite3';
import { CompiledQuery, Kysely, SqliteAdapter, SqliteDriver, SqliteIntrospector, SqliteQueryCompiler } from 'kysely';
import type { DatabaseConnection, Dialect } from 'kysely';
import { StoreTrouble } from '../trouble.ts';
import type { Database } from './database.ts';
import { codeOf, fileTroubleOf, isWriterInTheWay, troubleOf } from './driverTrouble.ts';
import { patiently, turn } from './retry.ts';
import type { Tables } from './tables.ts';

/** A store’s file, opened to write and, beside it, to read: readers never wait for a long import. */
export interface SqliteDatabase extends Database {
  readonly kind: 'sqlite';
  readonly writer: SqliteFile.Database;
}

/**
 * Opens a file, and makes it where there is none.
 *
 * @param file path of the file [text]
 * @returns the database; throws StoreTrouble where the file is damaged, can’t be written, or nothing is installed to read it [record]
 */
export async function openSqlite(file: string): Promise<SqliteDatabase> {
  const where = resolve(file);
  try {
    mkdirSync(dirname(where), { recursive: true });
    return await patiently(() => openedTwice(where), isWriterInTheWay);
  } catch (problem) {
    throw fileTroubleOf(problem, where);
  }
}

async function openedTwice(where: string): Promise<SqliteDatabase> {
  if (existsSync(where)) await refuseDamaged(where);
  else begun(where);
  const writer = await opened(where);
  try {
    prepared(writer);
    const reader = await opened(where);
    reader.pragma('query_only = on');
    return over(writer, reader, where);
  } catch (problem) {
    writer.close();
    throw problem;
  }
}

/** A new file that only its owner can read: customers are in it. */
export function begun(file: string): void {
  closeSync(openSync(file, 'a', 0o600));
}

function over(writer: SqliteFile.Database, reader: SqliteFile.Database, where: string): SqliteDatabase {
  const write = new Kysely<Tables>({ dialect: dialect(writer, 'begin immediate') });
  const read = new Kysely<Tables>({ dialect: dialect(reader, 'begin') });
  return {
    kind: 'sqlite',
    where,
    writer,
    read: (work) => inTransaction(read, work, where),
    readLong: (work) => onItsOwn(where, work),
    write: (work) => inTransaction(write, work, where),
    async close() {
      await read.destroy();
      await write.destroy();
    },
  };
}

/** On a connection of its own, so that nobody else waits for it. */
async function onItsOwn<T>(where: string, work: (queries: Kysely<Tables>) => Promise<T>): Promise<T> {
  const connection = await opened(where);
  connection.pragma('query_only = on');
  const kysely = new Kysely<Tables>({ dialect: dialect(connection, 'begin') });
  try {
    return await inTransaction(kysely, work, where);
  } finally {
    await kysely.destroy();
  }
}

async function inTransaction<T>(
  kysely: Kysely<Tables>,
  work: (queries: Kysely<Tables>) => Promise<T>,
  where: string,
): Promise<T> {
  try {
    await turn();
    return await patiently(() => kysely.transaction().execute(work), isWriterInTheWay);
  } catch (problem) {
    throw troubleOf(problem, where);
  }
}

/**
 * One connection to a file. The driver never waits for another writer, and the whole process with it: who uses the connection tries again.
 *
 * @param file path of the file [text]
 * @param options as the driver takes them [record]
 * @returns the connection; throws StoreTrouble `noDriver` where the driver can’t be loaded [object]
 */
export async function opened(file: string, options: SqliteFile.Options = {}): Promise<SqliteFile.Database> {
  try {
    const { default: Driver } = await import('better-sqlite3');
    return new Driver(file, { timeout: 0, ...options });
  } catch (problem) {
    if (problem instanceof Error && problem.name === 'SqliteError') throw problem;
    const cause = problem instanceof Error ? (problem.message.split('\n')[0] ?? '') : String(problem);
    throw new StoreTrouble('noDriver', `${noDriver} (${cause})`, problem);
  }
}

const noDriver =
  'SQLite needs the package better-sqlite3, which could not be loaded: install a C++ compiler, make and Python 3 and run npm install again, or name a PostgreSQL server (postgres://…) as the store.';

/** Every commit is on the disk before it is acknowledged; what is erased is overwritten. */
function prepared(connection: SqliteFile.Database): void {
  connection.pragma('journal_mode = wal');
  connection.pragma('synchronous = full');
  connection.pragma('foreign_keys = on');
  connection.pragma('secure_delete = on');
}

async function refuseDamaged(where: string): Promise<void> {
  const found = await soundness(where);
  if (found === 'ok') return;
  const way =
    'Nothing was changed. Restore the last backup with restoreBackup; the damaged file is kept beside the restored one.';
  throw new StoreTrouble('damaged', `The store at ${where} is damaged (${found}). ${way}`);
}

/** `ok`, or the first thing that is wrong with the pages and rows of a file. Whoever only reads it changes nothing of it when they leave. */
export async function soundness(file: string): Promise<string> {
  const connection = await opened(file, { readonly: true, fileMustExist: true });
  try {
    return String(connection.pragma('quick_check(1)', { simple: true }));
  } catch (problem) {
    if (codeOf(problem) === 'damaged' && problem instanceof Error) return problem.message;
    throw problem;
  } finally {
    connection.close();
  }
}

/** A transaction that writes takes the write lock at once, so that what it has read stays true until it is done. */
function dialect(connection: SqliteFile.Database, begin: string): Dialect {
  return {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new OneConnection(connection, begin),
    createIntrospector: (kysely) => new SqliteIntrospector(kysely),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  };
}

class OneConnection extends SqliteDriver {
  readonly #raw: SqliteFile.Database;
  readonly #begin: string;

  constructor(raw: SqliteFile.Database, begin: string) {
    super({ database: raw });
    this.#raw = raw;
    this.#begin = begin;
  }

  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw(this.#begin));
  }

  /** A full disk ends the transaction by itself: rolling back again would hide what was wrong. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#raw.inTransaction) await connection.executeQuery(CompiledQuery.raw('rollback'));
  }
}
