import {
  closeSync,
  existsSync,
  ftruncateSync,
  openSync,
  readFileSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { openStore, restoreBackup, StoreTrouble } from '../../src/index.ts';
import { freshFile, freshFolder, opened, thrownBy, timesAndIds } from '../databases.ts';
import { withSampleYard } from '../yard.ts';
import { expectWhole, rowsOf } from './whole.ts';

const { clock } = timesAndIds();

/** A yard with a backup of it. */
async function yard() {
  const url = freshFile();
  const store = await opened(url);
  await withSampleYard(store);
  const backup = join(freshFolder(), 'backup');
  await store.backup(backup);
  const rows = await rowsOf(store);
  await store.close();
  return { url, file: url.slice('sqlite:'.length), backup, rows };
}

function overwrite(file: string, at: number, bytes: Uint8Array): void {
  const open = openSync(file, 'r+');
  writeSync(open, bytes, 0, bytes.length, at);
  closeSync(open);
}

const damages: Readonly<Record<string, (file: string) => void>> = {
  'is something else altogether': (file) =>
    writeFileSync(file, 'Dear Ida,\nplease find attached the list.\n'.repeat(100)),
  'was cut short': (file) => {
    const open = openSync(file, 'r+');
    ftruncateSync(open, Math.floor(statSync(file).size / 2));
    closeSync(open);
  },
  'lost its first page': (file) => overwrite(file, 0, new Uint8Array(4096)),
  'has pages of noise in its middle': (file) => {
    const noise = Uint8Array.from({ length: 3 * 4096 }, (_, i) => (i * 7919) % 251);
    overwrite(file, Math.floor(statSync(file).size / 8192) * 4096, noise);
  },
};

describe.each(Object.entries(damages))('a file that %s', (_, damage) => {
  let place: Awaited<ReturnType<typeof yard>>;
  beforeEach(async () => {
    place = await yard();
    damage(place.file);
  });

  it('is refused in plain words that name the way back, and is left as it is', async () => {
    const before = readFileSync(place.file);
    const problem = (await thrownBy(openStore({ url: place.url, ...timesAndIds() }))) as StoreTrouble;
    expect(problem).toBeInstanceOf(StoreTrouble);
    expect(problem.code).toBe('damaged');
    expect(problem.message).toContain(place.file);
    expect(problem.message).toContain('restoreBackup');
    expect(readFileSync(place.file).equals(before)).toBe(true);
  });

  it('gives way to the last backup and is kept beside it', async () => {
    const before = readFileSync(place.file);
    const { kept } = await restoreBackup({ url: place.url, file: place.backup, replace: true, clock });
    expect(readFileSync(kept ?? '').equals(before)).toBe(true);
    const store = await opened(place.url);
    const rows = await rowsOf(store);
    expect(rows).toEqual(place.rows);
    expectWhole(rows);
  });
});

describe('a file that is damaged while it is in use', () => {
  it('is told in plain words, and nothing more is written', async () => {
    const place = await yard();
    const store = await opened(place.url);
    await store.records.list();
    damages['has pages of noise in its middle']?.(place.file);
    const problem = await thrownBy(
      (async () => {
        for (let i = 0; i < 50; i += 1) await rowsOf(store);
      })(),
    );
    expect(problem).toMatchObject({ name: 'StoreTrouble', code: 'damaged' });
    expect(existsSync(place.file)).toBe(true);
  });
});
