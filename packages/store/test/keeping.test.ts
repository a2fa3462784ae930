import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Conflict, inspectBackup, restoreBackup, StoreTrouble, type Store } from '../src/index.ts';
import { databases, freshFile, freshFolder, opened, thrownBy, timesAndIds } from './databases.ts';
import { fillYard } from './fixtures/fill.ts';
import { bo, ida, tiller, withSampleYard } from './yard.ts';

const { clock } = timesAndIds();

async function linesOf(store: Store): Promise<string[]> {
  const lines: string[] = [];
  await store.exportAll((line) => void lines.push(line));
  return lines;
}

/** Everything but the head, which has a time in it, and the hash over it. */
async function rowsOf(store: Store): Promise<string[]> {
  return (await linesOf(store)).slice(1, -1);
}

/** A backup of a yard with something in every table, and what it holds. */
async function backedUp(url: string) {
  const store = await opened(url);
  await fillYard(store);
  await withSampleYard(store);
  const rows = await rowsOf(store);
  const file = join(freshFolder(), 'backup');
  const backup = await store.backup(file);
  await store.close();
  return { file, backup, rows };
}

const ways = databases.flatMap((from) => databases.map((to) => ({ from, to, way: `${from.name} to ${to.name}` })));

describe.each(ways)('a yard taken from $way', ({ from, to }) => {
  it('is the same to the last row, and back', async () => {
    const here = await opened(await from.fresh());
    await fillYard(here);
    await withSampleYard(here);
    const there = await opened(await to.fresh(), 'b');
    await there.importAll(await linesOf(here));
    expect(await rowsOf(there)).toEqual(await rowsOf(here));
    const back = await opened(await from.fresh(), 'c');
    await back.importAll(await linesOf(there));
    expect(await rowsOf(back)).toEqual(await rowsOf(here));
    await there.records.create(bo, { ...tiller, name: 'a new one' });
  });

  it('comes back from a backup', async () => {
    const { file, backup, rows } = await backedUp(await from.fresh());
    expect(backup).toMatchObject({ file, form: from.name === 'SQLite' ? 'database' : 'archive', version: 3 });
    const url = await to.fresh();
    const restored = await restoreBackup({ url, file, clock });
    expect(restored).toEqual({ counts: backup.counts, kept: null });
    expect(await rowsOf(await opened(url))).toEqual(rows);
  });

  it('replaces another store only where that is said, and nothing bad replaces a good one', async () => {
    const { file, rows } = await backedUp(await from.fresh());
    const url = await to.fresh();
    const store = await opened(url);
    await store.records.create(ida, { kind: 'customer', name: 'somebody else' });
    const before = await rowsOf(store);
    await store.close();
    expect(await thrownBy(restoreBackup({ url, file, clock }))).toBeInstanceOf(Conflict);
    for (const bad of spoilt(file)) {
      expect(await thrownBy(restoreBackup({ url, file: bad, replace: true, clock }))).toMatchObject({
        code: 'damaged',
      });
      const still = await opened(url);
      expect(await rowsOf(still)).toEqual(before);
      await still.close();
    }
    const { kept } = await restoreBackup({ url, file, replace: true, clock });
    expect(await rowsOf(await opened(url))).toEqual(rows);
    if (to.name === 'PostgreSQL') expect(kept).toBeNull();
    else expect(await rowsOf(await opened(`sqlite:${kept ?? ''}`))).toEqual(before);
  });
});

/** The backup cut short, with a byte turned in its middle, with its last line gone, and something else altogether. */
function spoilt(file: string): string[] {
  const good = readFileSync(file);
  const folder = freshFolder();
  const put = (name: string, bytes: Buffer): string => {
    writeFileSync(join(folder, name), bytes);
    return join(folder, name);
  };
  const turned = Buffer.from(good);
  for (let i = Math.floor(turned.length / 2); i < turned.length / 2 + 600; i += 1) turned[i] = (turned[i] ?? 0) ^ 0x15;
  return [
    put('short', good.subarray(0, Math.floor(good.length * 0.6))),
    put('turned', turned),
    put('ending', good.subarray(0, good.length - 60)),
    put('other', Buffer.from('Dear Ida,\nplease find attached\n')),
    put('empty', Buffer.alloc(0)),
  ];
}

describe.each(databases)('keeping on $name', ({ fresh }) => {
  it('takes a backup while others write, as it is at one moment', async () => {
    const store = await opened(await fresh());
    const { size } = await withSampleYard(store);
    const file = join(freshFolder(), 'backup');
    let goesOn = true;
    const writer = (async () => {
      while (goesOn) await store.records.create(bo, { ...tiller, name: 'meanwhile' });
    })();
    const backup = await store.backup(file);
    goesOn = false;
    await writer;
    expect(await inspectBackup(file)).toEqual(backup);
    const { record, history, change_group: groups } = backup.counts;
    expect(record).toBeGreaterThanOrEqual(size);
    expect(history).toBe(
      (await store.exportAll(() => undefined)).counts.history -
        3 * ((await store.history.groups({ limit: 1000 })).items.length - groups),
    );
    expect(readdirSync(join(file, '..'))).toEqual(['backup']);
  });

  it('overwrites no file', async () => {
    const store = await opened(await fresh());
    const file = join(freshFolder(), 'backup');
    writeFileSync(file, 'a letter');
    expect(await thrownBy(store.backup(file))).toBeInstanceOf(Conflict);
    expect(readFileSync(file, 'utf8')).toBe('a letter');
  });

  it('imports a yard only into an empty store unless it may replace, wholly or not at all', async () => {
    const here = await opened(await fresh());
    await fillYard(here);
    const lines = await linesOf(here);
    const there = await opened(await fresh(), 'b');
    await there.records.create(ida, { kind: 'customer', name: 'somebody' });
    const before = await rowsOf(there);
    expect(await thrownBy(there.importAll(lines))).toBeInstanceOf(Conflict);
    const spoiltLines = [...lines.slice(0, 20), ...lines.slice(21)];
    expect(await thrownBy(there.importAll(spoiltLines, { replace: true }))).toMatchObject({ code: 'damaged' });
    expect(await rowsOf(there)).toEqual(before);
    await there.importAll(lines.join(''), { replace: true });
    expect(await rowsOf(there)).toEqual(await rowsOf(here));
  });

  it('refuses what a newer program wrote', async () => {
    const store = await opened(await fresh());
    const [head = '', ...rest] = await linesOf(store);
    const newer = head.replace(/"tables":\d+/, '"tables":99');
    expect(await thrownBy(store.importAll([newer, ...rest]))).toMatchObject({ code: 'newer' });
    const file = join(freshFolder(), 'backup');
    writeFileSync(file, [newer, ...rest].join(''));
    expect(await thrownBy(inspectBackup(file))).toBeInstanceOf(StoreTrouble);
  });
});

describe('keeping on SQLite alone', () => {
  it('lets nobody but their owner read its files', async () => {
    const { file } = await backedUp(freshFile());
    const url = freshFile();
    await restoreBackup({ url, file, clock });
    const store = await opened(url, 'b');
    await store.records.create(ida, { kind: 'customer', name: 'somebody' });
    const place = url.slice('sqlite:'.length);
    for (const one of [file, place, `${place}-wal`]) expect(statSync(one).mode & 0o077).toBe(0);
  });

  it('restores no file that somebody has open', async () => {
    const { file } = await backedUp(await freshFile());
    const url = await freshFile();
    const store = await opened(url);
    await store.records.create(ida, { kind: 'customer', name: 'somebody' });
    expect(await thrownBy(restoreBackup({ url, file, replace: true, clock }))).toMatchObject({ code: 'busy' });
    await store.records.create(ida, { kind: 'customer', name: 'somebody else' });
    expect((await store.records.list()).items).toHaveLength(2);
    const place = url.slice('sqlite:'.length);
    expect(existsSync(place)).toBe(true);
    expect(readdirSync(join(place, '..')).filter((one) => one.includes('restoring') || one.includes('before'))).toEqual(
      [],
    );
  });
});
