import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openStore } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { freshFolder } from './served.ts';

const keep = fileURLToPath(new URL('../src/keep.ts', import.meta.url));

/** Runs it as `npm run backup` and `npm run restore` do. */
function run(folder: string, ...words: readonly string[]) {
  const env: NodeJS.ProcessEnv = { ...process.env, HITCHWRIGHT_DATA: folder };
  delete env['HITCHWRIGHT_DB'];
  return spawnSync(process.execPath, ['--import', 'tsx', keep, ...words], {
    env,
    encoding: 'utf8',
  });
}

async function yardIn(folder: string, names: readonly string[]): Promise<void> {
  let given = 0;
  const store = await openStore({
    url: `sqlite:${join(folder, 'yard.db')}`,
    clock: () => '2026-09-14T08:00:00.000Z',
    ids: () => `${folder.length}.${(given += 1)}.${names.length}`,
  });
  for (const name of names) await store.records.create({ who: 'Ida' }, { kind: 'customer', name });
  await store.close();
}

async function namesIn(folder: string): Promise<string[]> {
  const store = await openStore({
    url: `sqlite:${join(folder, 'yard.db')}`,
    clock: () => '2026-09-14T08:00:00.000Z',
    ids: () => 'none',
  });
  const { items } = await store.records.list();
  await store.close();
  return items.map(({ name }) => name);
}

describe('backup and restore from a terminal', () => {
  it('bring a yard to another machine, and never over one that is there without being told', async () => {
    const [here, there] = [freshFolder(), freshFolder()];
    await yardIn(here, ['Ada', 'Bela']);
    const backup = run(here, 'backup', join(here, 'copy'));
    expect([backup.status, backup.stderr]).toEqual([0, '']);
    expect(backup.stdout).toContain('2 records');
    const restored = run(there, 'restore', join(here, 'copy'));
    expect([restored.status, restored.stderr]).toEqual([0, '']);
    expect(await namesIn(there)).toEqual(['Ada', 'Bela']);
    await yardIn(there, ['Cato']);
    const refused = run(there, 'restore', join(here, 'copy'));
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain('--replace');
    expect(await namesIn(there)).toEqual(['Ada', 'Bela', 'Cato']);
    expect(run(there, 'restore', join(here, 'copy'), '--replace').status).toBe(0);
    expect(await namesIn(there)).toEqual(['Ada', 'Bela']);
    expect(readdirSync(there).some((name) => name.includes('before'))).toBe(true);
  });

  it('say what was asked wrongly', () => {
    const folder = freshFolder();
    const none = run(folder, 'restore');
    expect([none.status, none.stderr]).toEqual([2, expect.stringContaining('npm run restore -- FILE')]);
    const missing = run(folder, 'restore', join(folder, 'nowhere'));
    expect([missing.status, missing.stderr]).toEqual([1, expect.stringContaining('There is no backup')]);
  });
});
