import { existsSync } from 'node:fs';
import { Kysely, SqliteDialect } from 'kysely';
import type SqliteFile from 'better-sqlite3';
import type { Queries } from '../database/database.ts';
import { isWriterInTheWay, troubleOf } from '../database/driverTrouble.ts';
import { knownVersion } from '../database/migrate.ts';
import { begun, opened, soundness } from '../database/sqlite.ts';
import { tableNames, type Tables } from '../database/tables.ts';
import { StoreTrouble } from '../trouble.ts';
import { contentHash, countsOf, type Counts } from './archive.ts';

/** A database file that was looked at from its first page to its last. */
export interface SoundFile {
  readonly version: number;
  readonly counts: Counts;
}

/**
 * Copies a database that is in use, as it is at one moment, into one file that needs no other beside it. The copy carries the hash of what
 * was to be copied.
 *
 * @param from the file in use [path]
 * @param to the copy; it is not there yet [path]
 * @param now time to note [ISO 8601]
 */
export async function copyInUse(from: string, to: string, now: string): Promise<void> {
  try {
    const hash = await copied(from, to);
    const copy = await opened(to, { fileMustExist: true });
    copy.pragma('journal_mode = delete');
    copy.exec(`create table ${note} (sha256 text not null, at text not null)`);
    copy.prepare(`insert into ${note} values (?, ?)`).run(hash, now);
    copy.close();
  } catch (problem) {
    throw troubleOf(problem, from);
  }
}

/** Table of a copy that says what it should hold. */
const note = 'backup_note';

/** Copies one moment, whatever is written meanwhile, and tells the hash of it. */
async function copied(from: string, to: string): Promise<string> {
  const source = await opened(from, { fileMustExist: true });
  try {
    source.exec('begin');
    const hash = await contentHash(over(source));
    begun(to);
    await source.backup(to);
    source.exec('commit');
    return hash;
  } finally {
    source.close();
  }
}

/** Makes a copy a store again. */
export function forgetCopying(connection: SqliteFile.Database): void {
  connection.exec(`drop table if exists ${note}`);
}

/** Looks at every page, row and reference of a database file. Throws StoreTrouble where one is not sound. */
export async function soundFile(file: string): Promise<SoundFile> {
  try {
    const connection = await opened(file, { fileMustExist: true, readonly: true });
    try {
      return await looked(connection, file);
    } finally {
      connection.close();
    }
  } catch (problem) {
    throw troubleOf(problem, file);
  }
}

async function looked(connection: SqliteFile.Database, file: string): Promise<SoundFile> {
  const integrity = String(connection.pragma('integrity_check(1)', { simple: true }));
  const strays = connection.pragma('foreign_key_check') as unknown[];
  if (integrity !== 'ok' || strays.length > 0)
    throw damaged(file, integrity === 'ok' ? `${strays.length} rows point at nothing` : integrity);
  const names = connection.prepare("select name from sqlite_master where type = 'table'").pluck().all();
  if (!names.includes('schema_version')) throw damaged(file, 'it is no store');
  const version = Number(connection.prepare('select max(version) from schema_version').pluck().get());
  if (version > knownVersion) throw newer(file, version);
  const made = tableNames.filter((name) => names.includes(name));
  const hash = await contentHash(over(connection), made);
  const noted = names.includes(note) ? connection.prepare(`select sha256 from ${note}`).pluck().get() : hash;
  if (hash !== noted) throw damaged(file, 'what it holds is not what was copied');
  return { version, counts: await countsOf(over(connection), made) };
}

function newer(file: string, version: number): StoreTrouble {
  const said = `(version ${version} of its tables; this one knows ${knownVersion})`;
  return new StoreTrouble('newer', `The file ${file} was made by a newer program ${said}: use that program.`);
}

/** Makes sure that nobody has a store’s file open, and that everything of it is in the one file; a damaged one is left as it is. */
export async function alone(file: string): Promise<void> {
  if (!existsSync(file) || (await soundness(file)) !== 'ok') return;
  const connection = await opened(file, { fileMustExist: true });
  try {
    connection.pragma('journal_mode = delete');
  } catch (problem) {
    if (!isWriterInTheWay(problem)) throw troubleOf(problem, file);
    const said = `The store at ${file} is in use: close the program that has it open, then restore again. Nothing was changed.`;
    throw new StoreTrouble('busy', said, problem);
  } finally {
    connection.close();
  }
}

/** Queries over a connection whose transaction somebody else has begun. */
function over(connection: SqliteFile.Database): Queries {
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: connection }) });
}

function damaged(file: string, why: string): StoreTrouble {
  return new StoreTrouble('damaged', `The file ${file} is damaged: ${why}. Nothing was changed; use another one.`);
}
