import { closeSync, createReadStream, existsSync, mkdirSync, openSync, readSync, writeSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileTroubleOf } from '../database/driverTrouble.ts';
import type { Queries } from '../database/database.ts';
import type { Desk } from '../room.ts';
import { Conflict, StoreTrouble } from '../trouble.ts';
import { archive, type ArchiveHead, type Counts } from './archive.ts';
import { besideOf, putInPlace, removeFile } from './files.ts';
import { copyInUse, soundFile } from './sqliteFile.ts';
import { unarchive } from './unarchive.ts';

/** A backup that was read again from its first byte to its last. */
export interface Backup {
  readonly file: string;
  /** A copy of the database file, or an archive of JSON lines. */
  readonly form: 'database' | 'archive';
  /** Version of its tables. */
  readonly version: number;
  readonly counts: Counts;
}

/** Writes a backup while the store is in use, and reads it again before it is given its name. */
export async function backedUp({ database, clock }: Desk, place: string): Promise<Backup> {
  const file = resolve(place);
  if (existsSync(file)) throw new Conflict(`There is a file ${file} already.`, { file });
  mkdirSync(dirname(file), { recursive: true });
  const made = besideOf(file, 'unfinished');
  removeFile(made);
  try {
    if (database.kind === 'sqlite') await copyInUse(database.where, made, clock());
    else await database.readLong((queries) => archiveTo(made, queries, clock()));
    const backup = await inspectBackup(made);
    putInPlace(made, file);
    return { ...backup, file };
  } catch (problem) {
    throw fileTroubleOf(problem, file);
  } finally {
    removeFile(made);
  }
}

/**
 * Reads a backup from its first byte to its last: a copy of the database file with every page, row and reference, or an archive with its hash and
 * its number of rows.
 *
 * @param file the backup [path]
 * @returns what it holds; throws StoreTrouble where it is damaged or a newer program made it [record]
 */
export async function inspectBackup(file: string): Promise<Backup> {
  if (!existsSync(file)) throw new StoreTrouble('unreachable', `There is no backup ${file}.`);
  if (isDatabase(file)) return { file, form: 'database', ...(await soundFile(file)) };
  const head = await unarchive(archiveIn(file), () => Promise.resolve());
  return { file, form: 'archive', version: head.tables, counts: head.counts };
}

/** Writes an archive into a file. */
export async function archiveTo(file: string, queries: Queries, now: string): Promise<ArchiveHead> {
  const output = openSync(file, 'w', 0o600);
  try {
    return await archive(queries, now, (line) => {
      writeSync(output, line);
    });
  } finally {
    closeSync(output);
  }
}

/** The text of an archive. */
export function archiveIn(file: string): AsyncIterable<string> {
  return createReadStream(file, { encoding: 'utf8', highWaterMark: 1_000_000 }) as AsyncIterable<string>;
}

function isDatabase(file: string): boolean {
  const start = Buffer.alloc(16);
  const input = openSync(file, 'r');
  try {
    readSync(input, start, 0, start.length, 0);
  } finally {
    closeSync(input);
  }
  return start.toString('latin1').startsWith('SQLite format 3');
}
