import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begins } from '../../src/history/entries.ts';
import { flattened } from '../../src/records/paths.ts';
import { Conflict, type FullRecord, type HistoryLine, type Reading, type Store } from '../../src/index.ts';
import { databases, opened } from '../databases.ts';
import { by, commands, lastGroup, run, type Done } from './commands.ts';

const numRuns = 30;

/** What people see: the records that are there, without how often and when they were changed. */
async function seen(store: Store, { records }: Done): Promise<unknown[]> {
  const all = await Promise.all(records.map((id) => store.records.get(id, { removed: true })));
  return all.filter(({ removedAt }) => removedAt === null).map((record) => ({ ...record, revision: 0, updatedAt: '' }));
}

/** A record as its history says, and as it is. */
async function expectReplayed(store: Store, { records }: Done): Promise<void> {
  for (const id of records) {
    const record = await store.records.get(id, { removed: true });
    expect(await store.history.at(id, record.revision)).toEqual(record);
  }
}

describe.each(databases)('any history on $name', ({ fresh }) => {
  it('replays to the present state, and its last change can be taken back and brought back', async () => {
    const store = await opened(await fresh());
    let undone = 0;
    await fc.assert(
      fc.asyncProperty(commands, async (list) => {
        const done: Done = { records: [], groups: [] };
        for (const command of list) {
          const before = await seen(store, done);
          const known = done.records.length;
          if (!(await run(store, done, command))) {
            expect(await seen(store, done)).toEqual(before);
            continue;
          }
          const after = await seen(store, done);
          const { group } = await store.history.undo(by, done.groups.at(-1) ?? '');
          expect(await seen(store, { ...done, records: done.records.slice(0, known) })).toEqual(before);
          await store.history.undo(by, group);
          expect(await seen(store, done)).toEqual(after);
          undone += 1;
        }
        await expectReplayed(store, done);
        await hide(store, done);
      }),
      { numRuns },
    );
    expect(undone).toBeGreaterThan(numRuns * 2);
  });

  it('gives back, where any group of it is taken back, what stood before that group and leaves all else', async () => {
    const store = await opened(await fresh());
    const told = { undone: 0, refused: 0 };
    await fc.assert(
      fc.asyncProperty(commands, fc.nat(10), async (list, which) => {
        const done: Done = { records: [], groups: [] };
        for (const command of list) await run(store, done, command);
        const group = done.groups[which % done.groups.length] ?? '';
        const lines = await store.history.ofGroup(group);
        const before = await Promise.all(done.records.map((id) => store.records.get(id, { removed: true })));
        try {
          await store.history.undo(by, group);
          told.undone += 1;
        } catch (problem) {
          if (!(problem instanceof Conflict)) throw problem;
          told.refused += 1;
          const still = await Promise.all(done.records.map((id) => store.records.get(id, { removed: true })));
          expect(still).toEqual(before);
          await hide(store, done);
          return;
        }
        for (const was of before) expectTakenBack(was, await store.records.get(was.id, { removed: true }), lines);
        await expectReplayed(store, done);
        await hide(store, done);
      }),
      { numRuns },
    );
    expect(told.undone).toBeGreaterThan(5);
    expect(told.refused).toBeGreaterThan(2);
  });
});

/** Each thing that the group changed stands as before it; everything else as it stood. */
function expectTakenBack(was: FullRecord, now: FullRecord, lines: readonly HistoryLine[]): void {
  const own = lines.filter(({ recordId }) => recordId === was.id);
  const [first] = own;
  if (first === undefined) return expect(now).toEqual(was);
  if (first.key === begins) return expect([now.removedAt !== null, now.name]).toEqual([true, was.name]);
  const before = facts(was);
  const firsts = new Map(
    [...own]
      .reverse()
      .map((line) => [line.what === 'field' ? `fields ${line.key}` : `${line.what} ${line.key}`, line.before]),
  );
  for (const [key, value] of firsts) {
    if (value === null || isWithdrawn(value)) before.delete(key);
    else before.set(key, key.startsWith('reading') ? said(value as Reading) : value);
  }
  expect([...facts(now)].sort()).toEqual([...before].sort());
}

function facts({ name, removedAt, fields, readings }: FullRecord): Map<string, unknown> {
  return new Map<string, unknown>([
    ['record name', name],
    ...(removedAt === null ? [] : [['record removedAt', removedAt] as const]),
    ...[...flattened(fields)].map(([path, value]) => [`fields ${path}`, value] as const),
    ...readings.map((reading) => [`reading ${reading.id}`, said(reading)] as const),
  ]);
}

function said({ leaf, grade, pinnedAt }: Reading): unknown {
  return JSON.stringify([leaf, grade, pinnedAt]);
}

function isWithdrawn(value: unknown): boolean {
  return typeof value === 'object' && (value as Partial<Reading>).withdrawnAt != null;
}

/** Out of the way of the next run, which looks at names. */
async function hide(store: Store, { records }: Done): Promise<void> {
  for (const id of records) {
    const { revision, removedAt } = await store.records.get(id, { removed: true });
    if (removedAt === null) await store.records.remove(by, id, revision);
  }
  expect(await lastGroup(store)).not.toBeNull();
}
