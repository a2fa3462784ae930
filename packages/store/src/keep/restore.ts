import { chmodSync, copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { addressOf } from '../database/address.ts';
import { migrate } from '../database/migrate.ts';
import { openPostgres } from '../database/postgres.ts';
import { begun, openSqlite } from '../database/sqlite.ts';
import { Conflict } from '../trouble.ts';
import type { Counts } from './archive.ts';
import { archiveIn, archiveTo, inspectBackup, type Backup } from './backup.ts';
import { besideOf, exchange, removeFile } from './files.ts';
import { alone, forgetCopying, soundFile } from './sqliteFile.ts';
import { fill, filled } from './unarchive.ts';

/** What is to be restored, and where. */
export interface Restoring {
  /** Address of the store, as `openStore` takes it; nobody has it open. */
  readonly url: string;
  /** The backup: a copy of a database file or an archive, whichever database it goes to [path]. */
  readonly file: string;
  /** What the store holds now may go. A database file is kept beside the restored one. */
  readonly replace?: boolean;
  readonly clock: () => string;
}

/** What a restored store holds. */
export interface Restored {
  readonly counts: Counts;
  /** Where what was there before is kept; null where nothing was, or in PostgreSQL. */
  readonly kept: string | null;
}

/**
 * Puts a backup in the place of a store. The backup is read from end to end first, the restored store is looked at before it takes its place, and
 * what was there stays whole until then: a bad backup never replaces a good store.
 *
 * @param restoring what and where [record]
 * @returns what the store holds then; throws StoreTrouble, or Conflict where something would be replaced that may not be [record]
 */
export async function restoreBackup(restoring: Restoring): Promise<Restored> {
  const address = addressOf(restoring.url);
  const backup = await inspectBackup(restoring.file);
  return address.kind === 'sqlite'
    ? restoredFile(resolve(address.file), backup, restoring)
    : restoredRows(address.url, backup, restoring);
}

async function restoredFile(place: string, backup: Backup, { replace, clock }: Restoring): Promise<Restored> {
  if (existsSync(place) && replace !== true) throw occupied(place);
  mkdirSync(dirname(place), { recursive: true });
  const made = besideOf(place, 'restoring');
  removeFile(made);
  try {
    begun(made);
    if (backup.form === 'database') copyFileSync(backup.file, made);
    chmodSync(made, 0o600);
    const database = await openSqlite(made);
    try {
      forgetCopying(database.writer);
      await migrate(database, clock());
      if (backup.form === 'archive') await database.write((queries) => fill(queries, archiveIn(backup.file)));
    } finally {
      await database.close();
    }
    await alone(made);
    const { counts } = await soundFile(made);
    await alone(place);
    return { counts, kept: exchange(made, place, clock()) };
  } finally {
    removeFile(made);
  }
}

async function restoredRows(url: string, backup: Backup, { replace, clock }: Restoring): Promise<Restored> {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-restore-'));
  const database = await openPostgres(url);
  try {
    await migrate(database, clock());
    const file = await archiveOf(backup, folder, clock());
    const head = await database.write((queries) =>
      filled(queries, database, archiveIn(file), replace === true ? 'replace' : occupied(database.where)),
    );
    return { counts: head.counts, kept: null };
  } finally {
    await database.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The archive of a backup; of a copy of a database file, brought to what this program knows, the one that can be made of it. */
async function archiveOf(backup: Backup, folder: string, now: string): Promise<string> {
  if (backup.form === 'archive') return backup.file;
  const copy = join(folder, 'copy');
  copyFileSync(backup.file, copy);
  const database = await openSqlite(copy);
  try {
    await migrate(database, now);
    const file = join(folder, 'archive');
    await database.readLong((queries) => archiveTo(file, queries, now));
    return file;
  } finally {
    await database.close();
  }
}

function occupied(where: string): Conflict {
  const message = `There is a store at ${where} already. Say that it may be replaced; first make a backup of it. Nothing was changed.`;
  return new Conflict(message, { where });
}
