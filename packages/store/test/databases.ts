import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterEach, inject } from 'vitest';
import { openStore, type Store } from '../src/index.ts';

/** One of the two databases that every test of the store runs on. */
export interface TestDatabase {
  readonly name: 'SQLite' | 'PostgreSQL';
  /** Address of a new, empty place. */
  fresh(): Promise<string>;
}

/** Both of them. */
export const databases: readonly TestDatabase[] = [
  { name: 'SQLite', fresh: () => Promise.resolve(freshFile()) },
  { name: 'PostgreSQL', fresh: freshSchema },
];

const leaving: (() => void | Promise<void>)[] = [];
let made = 0;

afterEach(async () => {
  while (leaving.length > 0) await leaving.pop()?.();
});

/** Does something after the test, the latest first. */
export function afterwards(work: () => void | Promise<void>): void {
  leaving.push(work);
}

/** A folder that is gone after the test. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-store-'));
  afterwards(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Address of a file in a folder of its own. */
export function freshFile(): string {
  return `sqlite:${join(freshFolder(), 'yard.db')}`;
}

/** The address of the PostgreSQL server of the tests. */
export function serverUrl(): string {
  const postgres = inject('postgres');
  if ('missing' in postgres) throw new Error(postgres.missing);
  return postgres.url;
}

/** A schema of its own is as good as a database, and made in a tenth of the time. */
async function freshSchema(): Promise<string> {
  made += 1;
  const name = `t_${process.pid}_${process.hrtime.bigint().toString(36)}_${made}`;
  await onServer(`create schema ${name}`);
  return `${serverUrl()}?options=-c%20search_path%3D${name}`;
}

/** Runs one statement on the server of the tests. */
export async function onServer(statement: string, url = serverUrl()): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(statement)).rows as Record<string, unknown>[];
  } finally {
    await client.end();
  }
}

/** A clock that goes on by a second with every look, and ids that sort as they are given; `mark` tells two stores of one database apart. */
export function timesAndIds(mark = 'a', start = '2026-09-14T08:00:00.000Z') {
  let looks = 0;
  let given = 0;
  return {
    clock: () => new Date(Date.parse(start) + 1000 * (looks += 1)).toISOString(),
    ids: () => `${String((given += 1)).padStart(7, '0')}${mark}`,
  };
}

/** Opens a store that is closed after the test. */
export async function opened(url: string, mark = 'a'): Promise<Store> {
  const store = await openStore({ url, ...timesAndIds(mark) });
  afterwards(() => store.close());
  return store;
}

/** What is thrown; fails where nothing is. */
export async function thrownBy(work: Promise<unknown>): Promise<unknown> {
  return work.then(
    () => {
      throw new Error('Nothing was thrown.');
    },
    (problem: unknown) => problem,
  );
}
