import { randomBytes } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { openSqlite } from '../../src/database/sqlite.ts';
import { migrate } from '../../src/database/migrate.ts';
import { storeOver } from '../../src/store.ts';
import { openStore, StoreTrouble, type Store } from '../../src/index.ts';
import { afterwards, freshFile, onServer, serverUrl, thrownBy, timesAndIds } from '../databases.ts';
import { ida, tiller } from '../yard.ts';
import { expectSound, expectWhole, rowsOf } from './whole.ts';
import { smallDisk } from './smallDisk.ts';

/** A store where there is little room, and how to make more. */
interface Cramped {
  readonly store: Store;
  readonly url: string;
  readonly how: string;
  makeRoom(): void;
}

const megabytes = 8;
/** A picture that no database makes smaller. */
const jpeg = new Uint8Array(randomBytes(150_000));
jpeg.set([0xff, 0xd8, 0xff]);

/** Writes until there is no room left; what was acknowledged, and what was said then. */
async function fillUp(store: Store): Promise<{ ids: string[]; problem: unknown }> {
  const ids: string[] = [];
  for (let i = 0; i < 200; i += 1) {
    try {
      const { id } = await store.records.create(ida, { ...tiller, name: `n ${i}` });
      ids.push(id);
      await store.photos.add(ida, { recordId: id, field: 'mastHeight', jpeg });
    } catch (problem) {
      return { ids, problem };
    }
  }
  return { ids, problem: null };
}

async function expectKept(store: Store, ids: readonly string[]): Promise<void> {
  expectWhole(await rowsOf(store));
  for (const id of ids) expect((await store.records.get(id)).revision).toBe(1);
}

async function expectFullThenRoom({ store, url, how, makeRoom }: Cramped): Promise<void> {
  const { ids, problem } = await fillUp(store);
  expect(problem).toBeInstanceOf(StoreTrouble);
  expect(problem).toMatchObject({ code: 'full', message: expect.stringContaining('make room') as string });
  expect(ids.length).toBeGreaterThan(5);
  await expectKept(store, ids);
  const rows = Array.from({ length: 3000 }, (_, i) => ({
    kind: 'implement' as const,
    name: `row ${i}`,
    fields: { note: 'x'.repeat(1500) },
  }));
  expect(await thrownBy(store.imports.write(ida, { source: 'list', rows }))).toMatchObject({ code: 'full' });
  expect((await store.records.list({ search: 'row' })).items).toEqual([]);
  await expectKept(store, ids);
  makeRoom();
  const more = await store.imports.write(ida, { source: 'list', rows });
  expect(more.created).toBe(rows.length);
  await expectKept(store, ids);
  await store.close();
  await expectSound(url);
  console.info(`${how}: ${ids.length} changes before it was full`);
}

async function crampedFile(): Promise<Cramped> {
  const disk = smallDisk(megabytes);
  if (disk === null) return crampedPages();
  const url = `sqlite:${join(disk.folder, 'yard.db')}`;
  const store = await opened(url);
  return { store, url, how: `SQLite on a disk of ${megabytes} MB`, makeRoom: () => disk.grow(200) };
}

/** Where no disk can be mounted, the database file itself is held small. */
async function crampedPages(): Promise<Cramped> {
  const url = freshFile();
  const database = await openSqlite(url.slice('sqlite:'.length));
  await migrate(database, '2026-09-14T00:00:00Z');
  database.writer.pragma(`max_page_count = ${(megabytes * 1_000_000) / 4096}`);
  const store = storeOver({ database, ...timesAndIds() });
  afterwards(() => store.close());
  const makeRoom = (): void => void database.writer.pragma('max_page_count = 1000000');
  return { store, url, how: 'SQLite held to max_page_count, as no disk could be mounted', makeRoom };
}

async function opened(url: string): Promise<Store> {
  const store = await openStore({ url, ...timesAndIds() });
  afterwards(() => store.close());
  return store;
}

describe('a store without room', () => {
  it('says so, keeps what it had, and works again after room was made, on SQLite', async () => {
    await expectFullThenRoom(await crampedFile());
  });

  it('says so, keeps what it had, and works again after room was made, on PostgreSQL', async ({ skip }) => {
    serverUrl();
    const postgres = inject('postgres');
    const disk = smallDisk(megabytes, 'owner' in postgres ? postgres.owner : null);
    if (disk === null) return skip('This machine lets nobody mount a small disk for a PostgreSQL tablespace.');
    await onServer(`create tablespace small location '${disk.folder}'`);
    await onServer('create schema small');
    afterwards(async () => {
      await onServer('drop schema small cascade');
      await onServer('drop tablespace small');
    });
    const url = `${serverUrl()}?options=-c%20search_path%3Dsmall%20-c%20default_tablespace%3Dsmall`;
    const store = await opened(url);
    await expectFullThenRoom({
      store,
      url,
      how: `PostgreSQL on a disk of ${megabytes} MB`,
      makeRoom: () => disk.grow(200),
    });
  });

  it('leaves no half of a backup on a disk that is full', async ({ skip }) => {
    const disk = smallDisk(1);
    if (disk === null) return skip('This machine lets nobody mount a small disk.');
    const store = await opened(freshFile());
    await fillUp(store).then(({ problem }) => expect(problem).toBeNull());
    expect(await thrownBy(store.backup(join(disk.folder, 'backup')))).toMatchObject({ code: 'full' });
    expect(readdirSync(disk.folder)).toEqual([]);
  });
});
