import { describe, expect, it } from 'vitest';
import { openStore } from '../../src/index.ts';
import { databases, timesAndIds } from '../databases.ts';
import { killedAt, type Acknowledged } from './victim.ts';
import { expectSound, expectWhole, rowsOf } from './whole.ts';

/** How often a server is killed on each database. */
const kills = 52;
/** Servers that are killed side by side, each in a yard of its own that is a new one now and then. */
const lanes = 2;
const roundsInOneYard = 13;

/** Numbers between 0 and 1 that look random and are the same in every run. */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

/** What killed servers had acknowledged is there, nothing is half there, and of each at most one change more was kept. */
async function check(url: string, said: readonly Acknowledged[]): Promise<void> {
  const store = await openStore({ url, ...timesAndIds('p') });
  const rows = await rowsOf(store);
  await store.close();
  await expectSound(url);
  expectWhole(rows);
  const revisions = new Map((rows.record ?? []).map(({ id, revision }) => [id, revision]));
  const edits = said.flatMap((one) => one.edits);
  for (const { id, revision } of edits) expect(revisions.get(id)).toBeGreaterThanOrEqual(revision);
  const groups = new Map((rows.change_group ?? []).map(({ id, records }) => [id, records]));
  const imports = said.flatMap((one) => one.imports);
  for (const { group, records } of imports) expect(groups.get(group)).toBe(records);
  const unheard = groups.size - edits.length - imports.length;
  expect(unheard).toBeGreaterThanOrEqual(0);
  expect(unheard).toBeLessThanOrEqual(said.length);
}

describe.each(databases)('a server on $name', ({ name, fresh }) => {
  it(`that is killed ${kills} times while it edits or imports loses nothing that it acknowledged and leaves nothing half-written`, async () => {
    const told = { kills: 0, midImport: 0, acknowledged: 0 };
    await Promise.all(
      Array.from({ length: lanes }, async (_, lane) => {
        const random = numbersFrom(20_261_202 + lane);
        let url = '';
        let said: Acknowledged[] = [];
        for (let round = 0; round < kills / lanes; round += 1) {
          if (round % roundsInOneYard === 0) [url, said] = [await fresh(), []];
          const does = (round + lane) % 2 === 0 ? 'edits' : 'imports';
          const isEditing = does === 'edits';
          const acknowledged = Math.floor(random() * (isEditing ? 9 : 2));
          const delay = random() * (isEditing ? 30 : 200);
          const killed = await killedAt(url, does, `${lane}-${round}`, { acknowledged, delay });
          said.push(killed);
          await check(url, said);
          told.kills += 1;
          told.midImport += killed.wasImporting ? 1 : 0;
          told.acknowledged += killed.edits.length + killed.imports.length;
        }
      }),
    );
    console.info(`${name}: ${JSON.stringify(told)}`);
    expect(told.kills).toBe(kills);
    expect(told.midImport).toBeGreaterThan(5);
    expect(told.acknowledged).toBeGreaterThan(kills / 2);
  }, 180_000);
});
