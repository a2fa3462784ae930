import fc from 'fast-check';
import { readingGrades } from '@hitchwright/core/records';
import { describe, expect, it } from 'vitest';
import type { RecordDraft, Store } from '../../src/index.ts';
import { databases, opened } from '../databases.ts';
import { by } from './commands.ts';

const anything = fc.string({ unit: 'binary', maxLength: 30 });
/** Text that a column can keep: no half of a letter, and no NUL. */
const word = fc.string({ unit: 'grapheme', maxLength: 30 }).filter((text) => !/[\p{Cs}\0]/u.test(text));
const named = word.filter((text) => text.trim() !== '');
const figure = fc.integer({ min: 200, max: 1200 });
const leaf = fc.oneof(
  figure,
  figure.map((mm) => `${mm} mm`),
  fc.record({ value: figure, plusMinus: fc.integer({ min: 0, max: 9 }), method: anything, note: anything }),
  fc.tuple(figure, figure).map(([a, b]) => ({ between: [Math.min(a, b), Math.max(a, b)], default: 'habit' })),
  fc.constant(null),
);
const reading = fc.record({
  field: fc.constantFrom('mastHeight', 'secondRow.mastHeight'),
  leaf,
  grade: fc.constantFrom(...readingGrades),
  who: word,
  pin: fc.boolean(),
});
const draft: fc.Arbitrary<RecordDraft> = fc.record({
  kind: fc.constant('implement' as const),
  name: named,
  fields: fc.record(
    {
      note: word,
      contact: fc.dictionary(fc.constantFrom('phone', 'email'), anything),
      extra: fc.array(fc.record({ label: anything, text: anything }), { maxLength: 3 }),
    },
    { requiredKeys: [] },
  ),
  readings: fc.array(reading, { maxLength: 4 }),
  sample: fc.boolean(),
});

async function rowsOf(store: Store): Promise<{ lines: string[]; rows: string[] }> {
  const lines: string[] = [];
  await store.exportAll((line) => void lines.push(line));
  return { lines, rows: lines.slice(1, -1) };
}

const [sqlite, postgres] = databases;
const ways = [
  { way: 'SQLite to PostgreSQL', from: sqlite, to: postgres },
  { way: 'PostgreSQL to SQLite', from: postgres, to: sqlite },
];

describe.each(ways)('any yard, taken from $way', ({ from, to }) => {
  it('is the same to the last row', async () => {
    const here = await opened((await from?.fresh()) ?? '');
    const there = await opened((await to?.fresh()) ?? '', 'b');
    await fc.assert(
      fc.asyncProperty(fc.array(draft, { minLength: 1, maxLength: 4 }), async (drafts) => {
        for (const one of drafts) {
          const made = await here.records.create(by, one);
          expect(made.readings.map((read) => read.leaf)).toEqual(one.readings?.map((read) => read.leaf));
          expect(made.name).toBe(one.name);
        }
        const { lines, rows } = await rowsOf(here);
        await there.importAll(lines, { replace: true });
        expect((await rowsOf(there)).rows).toEqual(rows);
      }),
      { numRuns: 20 },
    );
    for (const { id } of (await here.records.list({ limit: 1000 })).items)
      expect(await there.records.get(id)).toEqual(await here.records.get(id));
  });
});

describe.each(databases)('the value in use on $name', ({ fresh }) => {
  it('is the same in whatever order the readings were written down', async () => {
    const store = await opened(await fresh());
    const days = fc.uniqueArray(fc.integer({ min: 1, max: 28 }), { minLength: 2, maxLength: 6 });
    const readings = days.chain((list) =>
      fc.tuple(
        ...list.map((day) =>
          fc.record({
            field: fc.constant('mastHeight'),
            leaf: figure,
            grade: fc.constantFrom(...readingGrades),
            readAt: fc.constant(`2026-08-${String(day).padStart(2, '0')}`),
          }),
        ),
      ),
    );
    const orders = readings.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
    );
    await fc.assert(
      fc.asyncProperty(orders, async ([list, shuffled]) => {
        const used = async (all: typeof list): Promise<unknown> => {
          const { id } = await store.records.create(by, { kind: 'implement', name: 'n' });
          for (const one of all) await store.readings.add(by, id, [one]);
          const { inUse, readings: read } = await store.records.get(id);
          const { leaf: value, readAt } = read.find((one) => one.id === inUse['mastHeight']?.id) ?? {};
          return [
            value,
            readAt,
            inUse['mastHeight']?.because,
            inUse['mastHeight']?.conflicts.map(({ apartBy }) => apartBy).sort(),
          ];
        };
        expect(await used(shuffled)).toEqual(await used(list));
      }),
      { numRuns: 15 },
    );
  });
});
