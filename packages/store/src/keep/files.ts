import { copyFileSync, existsSync, linkSync, openSync, closeSync, fsyncSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** Waits until a file, or the names in a folder, are on the disk. */
function settleOnDisk(path: string): void {
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Gives a finished file its name, on the disk. */
export function putInPlace(made: string, place: string): void {
  settleOnDisk(made);
  renameSync(made, place);
  settleOnDisk(dirname(place));
}

/** A name beside a file for one that is not finished. */
export function besideOf(place: string, word: string): string {
  return join(dirname(place), `.${basename(place)}.${word}-${process.pid}`);
}

/**
 * Puts a file in the place of another one, which is kept under a name beside it. Whenever the power fails, the place holds the
 * one or the other.
 *
 * @param made the new file [path]
 * @param place where it is to be [path]
 * @param stamp what tells the old one apart [text]
 * @returns where the old one is kept; null where there was none [path]
 */
export function exchange(made: string, place: string, stamp: string): string | null {
  if (!existsSync(place)) {
    putInPlace(made, place);
    return null;
  }
  const kept = `${place}.before-${stamp.replace(/[^0-9A-Za-z]/g, '')}`;
  keptBeside(place, kept);
  if (existsSync(`${place}-wal`)) renameSync(`${place}-wal`, `${kept}-wal`);
  rmSync(`${place}-shm`, { force: true });
  putInPlace(made, place);
  return kept;
}

/** Takes a database file away with everything that belongs to it. */
export function removeFile(file: string): void {
  for (const end of ['', '-wal', '-shm', '-journal']) rmSync(`${file}${end}`, { force: true });
}

/** The same file under a second name, or a copy of it where the disk knows no second names. */
function keptBeside(place: string, kept: string): void {
  try {
    linkSync(place, kept);
  } catch (problem) {
    if (!['EPERM', 'ENOTSUP', 'EXDEV', 'EMLINK'].includes(String((problem as { code?: unknown }).code))) throw problem;
    copyFileSync(place, kept);
    settleOnDisk(kept);
  }
}
