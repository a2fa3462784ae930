import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FullRecord } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { freshFolder, said, until } from './served.ts';

const start = fileURLToPath(new URL('../src/start.ts', import.meta.url));

/** Starts the server as `npm start` does; its address comes with the line that it prints. */
function started(env: Record<string, string>) {
  const child = spawn(process.execPath, ['--import', 'tsx', start], { env: { ...process.env, ...env } });
  const printed = { out: '', err: '' };
  child.stdout.on('data', (piece: Buffer) => (printed.out += piece.toString()));
  child.stderr.on('data', (piece: Buffer) => (printed.err += piece.toString()));
  const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
  const address = async (): Promise<string> => {
    const out = await until(
      () => Promise.resolve(printed.out),
      (text) => /http:\S+/.test(text),
    );
    return /http:\S+/.exec(out)?.[0] ?? '';
  };
  return { child, printed, ended, address };
}

const json = { 'content-type': 'application/json' };

describe('the program', () => {
  it('keeps the yard in its data folder, ends cleanly when asked to, and finds everything again', async () => {
    const folder = freshFolder();
    const first = started({ HITCHWRIGHT_DATA: folder });
    const body = JSON.stringify({ kind: 'customer', name: 'Ada' });
    const { id } = await said<FullRecord>(
      fetch(`${await first.address()}api/records`, { method: 'POST', body, headers: json }),
      201,
    );
    first.child.kill('SIGTERM');
    expect([await first.ended, first.printed.err]).toEqual([0, '']);
    expect(existsSync(join(folder, 'yard.db'))).toBe(true);
    const second = started({ HITCHWRIGHT_DATA: folder });
    expect(await said(fetch(`${await second.address()}api/records/${id}`))).toMatchObject({ name: 'Ada' });
    second.child.kill('SIGINT');
    expect(await second.ended).toBe(0);
  });

  it('finishes what is being written before it ends', async () => {
    const folder = freshFolder();
    const first = started({ HITCHWRIGHT_DATA: folder });
    const address = await first.address();
    const rows = Array.from({ length: 2000 }, (_, i) => `Rake ${i},1,18`);
    const csv = `Implement,Category,Mast height (in)\n${rows.join('\n')}\n`;
    const sent = { method: 'POST', body: csv, headers: { 'content-type': 'text/csv' } };
    const { id } = await said<{ id: string }>(fetch(`${address}api/imports?name=x.csv`, sent), 201);
    await said(fetch(`${address}api/imports/${id}/commit`, { method: 'POST', body: '{}', headers: json }), 202);
    first.child.kill('SIGTERM');
    expect(await first.ended).toBe(0);
    const second = started({ HITCHWRIGHT_DATA: folder });
    const found = await said<{ items: unknown[] }>(fetch(`${await second.address()}api/records?search=rake+1999`));
    expect(found.items).toHaveLength(1);
    second.child.kill('SIGTERM');
    await second.ended;
  });

  it('says in one sentence what is wrong with its port or its database', async () => {
    const port = started({ HITCHWRIGHT_DATA: freshFolder(), HITCHWRIGHT_PORT: '99999' });
    expect(await port.ended).toBe(1);
    expect(port.printed.err).toBe('HITCHWRIGHT_PORT is 99999: give a number from 0 to 65535.\n');
    const database = started({ HITCHWRIGHT_DATA: freshFolder(), HITCHWRIGHT_DB: 'oracle:thing' });
    expect(await database.ended).toBe(1);
    expect(database.printed.err.trim().split('\n')).toHaveLength(1);
    expect(database.printed.err).not.toContain('    at ');
  });
});
