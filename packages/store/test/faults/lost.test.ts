import { describe, expect, it, vi } from 'vitest';
import { openStore, type Store } from '../../src/index.ts';
import { afterwards, serverUrl, timesAndIds } from '../databases.ts';
import { startServer } from '../server.ts';
import { ida, tiller } from '../yard.ts';
import { expectWhole, rowsOf } from './whole.ts';

const crashes = 3;

/** Writes until something is thrown. */
async function writeOn(store: Store, kept: string[]): Promise<unknown> {
  for (;;) {
    try {
      const { id } = await store.records.create(ida, tiller);
      kept.push(id);
    } catch (problem) {
      return problem;
    }
  }
}

describe('a PostgreSQL server that is killed while it is written to', () => {
  it(`loses nothing that was acknowledged, ${crashes} times over, and the same store goes on when it is back`, async () => {
    serverUrl();
    const server = await startServer();
    afterwards(() => server.leave());
    const store = await openStore({ url: server.url, ...timesAndIds() });
    afterwards(() => store.close());
    const kept: string[] = [];
    for (let crash = 0; crash < crashes; crash += 1) {
      const before = kept.length;
      const writing = writeOn(store, kept);
      await vi.waitUntil(() => kept.length > before + 3 * crash, { timeout: 20_000, interval: 1 });
      await server.crash();
      expect(await writing).toMatchObject({ name: 'StoreTrouble', code: 'unreachable' });
      await server.start();
      const rows = await rowsOf(store);
      expectWhole(rows);
      const there = new Set((rows.record ?? []).map(({ id }) => id));
      expect(kept.filter((id) => !there.has(id))).toEqual([]);
      expect(there.size - kept.length).toBeLessThanOrEqual(crash + 1);
    }
  }, 120_000);
});
