import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldRules } from './fields.ts';
import { inUse, inUseRule, readingGrades, type GradedReading } from './inUse.ts';
import type { FieldRule } from './value.ts';

const mast = fieldRules.get('implement.mastHeight') as FieldRule;
const span = fieldRules.get('implement.shoulderSpan') as FieldRule;

function reading(id: string, leaf: unknown, more: Partial<GradedReading> = {}): GradedReading {
  return { id, leaf, grade: 'measured', readAt: null, enteredAt: '2026-09-14T08:00:00Z', isPinned: false, ...more };
}

describe('value in use', () => {
  it('is none where nobody read anything', () => {
    expect(inUse([], mast)).toBeNull();
  });

  it('is the only reading there is', () => {
    expect(inUse([reading('a', 457)], mast)).toEqual({ id: 'a', because: 'only', conflicts: [] });
  });

  it('is a pinned guess before a measured reading', () => {
    const readings = [reading('a', 457), reading('b', 460, { grade: 'guessed', isPinned: true })];
    expect(inUse(readings, mast)).toMatchObject({ id: 'b', because: 'pinned' });
  });

  it('is the reading of the best grade, however old', () => {
    const readings = [
      reading('a', 457, { readAt: '2020-01-01' }),
      ...readingGrades.slice(1).map((grade) => reading(grade, 460, { grade, readAt: '2026-01-01' })),
    ];
    expect(inUse(readings, mast)).toMatchObject({ id: 'a', because: 'grade' });
    expect(inUse(readings.slice(1), mast)).toMatchObject({ id: 'maker', because: 'grade' });
  });

  it('is the latest of one grade, by when it was read and not by when it was written down', () => {
    const readings = [
      reading('a', 457, { readAt: '2026-05-02', enteredAt: '2026-05-02T09:00:00Z' }),
      reading('b', 458, { readAt: '2026-05-01', enteredAt: '2026-06-01T09:00:00Z' }),
    ];
    expect(inUse(readings, mast)).toMatchObject({ id: 'a', because: 'latest' });
  });

  it('takes a day without its time for the latest moment it can have been: when it was written down', () => {
    const before = reading('a', 457, { enteredAt: '2026-05-04T08:00:00Z' });
    const sameDay = reading('b', 457, { readAt: '2026-05-04', enteredAt: '2026-05-04T09:00:00Z' });
    expect(inUse([before, sameDay], mast)).toMatchObject({ id: 'b' });
    const dayBefore = reading('c', 457, { readAt: '2026-05-03', enteredAt: '2026-05-04T09:00:00Z' });
    expect(inUse([before, dayBefore], mast)).toMatchObject({ id: 'a' });
    const atNoon = reading('d', 457, { readAt: '2026-05-04T12:00:00Z', enteredAt: '2026-05-04T12:00:00Z' });
    expect(inUse([sameDay, atNoon], mast)).toMatchObject({ id: 'd' });
  });

  it('takes the time of day and the zone into account', () => {
    const readings = [
      reading('a', 457, { readAt: '2026-05-02T09:00:00+05:00' }),
      reading('b', 458, { readAt: '2026-05-02T05:00:00Z' }),
    ];
    expect(inUse(readings, mast)).toMatchObject({ id: 'b' });
  });

  it('goes by when it was written down where the time of reading is no time', () => {
    const readings = [
      reading('a', 457, { readAt: 'last autumn', enteredAt: '2026-06-01T09:00:00Z' }),
      reading('b', 458, { enteredAt: '2026-05-01T09:00:00Z' }),
    ];
    expect(inUse(readings, mast)).toMatchObject({ id: 'a', because: 'latest' });
  });

  it('is a listed figure before a measured "not known"', () => {
    const readings = [reading('a', null), reading('b', 460, { grade: 'listed' })];
    expect(inUse(readings, mast)).toMatchObject({ id: 'b', because: 'figure' });
  });

  it('says its rule in words that name every grade in order', () => {
    const places = ['pinned', 'measured', 'maker', 'listed', 'guessed', 'class', 'last'].map((word) =>
      inUseRule.indexOf(word),
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(-1);
  });
});

describe('a conflict', () => {
  const conflictsOf = (a: unknown, b: unknown, rule = mast) =>
    inUse([reading('a', a), reading('b', b)], rule)?.conflicts;

  it('is two ranges that are apart, told by how much', () => {
    expect(conflictsOf({ value: 457, plusMinus: 1.5 }, { value: 470, plusMinus: 3 })).toEqual([
      { readings: ['a', 'b'], apartBy: 8.5 },
    ]);
  });

  it('is none where the ranges meet', () => {
    expect(conflictsOf({ value: 457, plusMinus: 1.5 }, { value: 460, plusMinus: 1.5 })).toEqual([]);
    expect(conflictsOf('18 in', 457.2)).toEqual([]);
  });

  it('is not resolved by choosing one of the two', () => {
    const readings = [reading('a', 457), reading('b', 470, { grade: 'listed' })];
    expect(inUse(readings, mast)).toMatchObject({ id: 'a', conflicts: [{ readings: ['a', 'b'], apartBy: 13 }] });
  });

  it('compares the ends of what can be set with their like', () => {
    const slot = (low: number, high: number): unknown => ({ adjustable: { between: [low, high] } });
    expect(conflictsOf(slot(356, 470), slot(356, 480))).toMatchObject([{ apartBy: 10 }]);
    expect(conflictsOf(slot(356, 470), 400)).toEqual([]);
    expect(conflictsOf(slot(356, 470), 500)).toMatchObject([{ apartBy: 30 }]);
    expect(conflictsOf({ adjustable: { at: [400, 450] } }, { adjustable: { at: [400, 455] } })).toMatchObject([
      { apartBy: 5 },
    ]);
  });

  it('is not seen between readings of different points', () => {
    expect(conflictsOf(683, { value: 716, from: 'ballCentre' }, span)).toEqual([]);
    expect(conflictsOf({ value: 683, from: 'shoulder' }, 716, span)).toMatchObject([{ apartBy: 33 }]);
  });

  it('never comes from a reading without a figure', () => {
    expect(conflictsOf(457, null)).toEqual([]);
    expect(conflictsOf(457, 'a bit')).toEqual([]);
  });
});

describe('the rule', () => {
  const day = fc.integer({ min: 1, max: 4 }).map((n) => `2026-05-0${n}`);
  const some = fc.record({
    id: fc.string({ minLength: 1, maxLength: 3 }),
    leaf: fc.constantFrom<unknown>(457, 470, '18 in', null, 'a bit', { between: [450, 460] }),
    grade: fc.constantFrom(...readingGrades),
    readAt: fc.option(day),
    enteredAt: day,
    isPinned: fc.boolean(),
  });
  const set = fc.uniqueArray(some, { selector: ({ id }) => id, maxLength: 6 });

  it('gives the same answer in whatever order the readings come', () => {
    fc.assert(
      fc.property(
        set.chain((readings) =>
          fc.tuple(
            fc.constant(readings),
            fc.shuffledSubarray(readings, { minLength: readings.length, maxLength: readings.length }),
          ),
        ),
        ([readings, shuffled]) => {
          expect(inUse(shuffled, mast)).toEqual(inUse(readings, mast));
        },
      ),
      { seed: 20261125 },
    );
  });

  it('never prefers a worse grade of two figures that nobody pinned', () => {
    fc.assert(
      fc.property(set, (readings) => {
        const figures = readings.filter(({ leaf, isPinned }) => !isPinned && leaf !== null && leaf !== 'a bit');
        const chosen = inUse(figures, mast)?.id;
        const best = Math.min(...figures.map(({ grade }) => readingGrades.indexOf(grade)));
        const grade = figures.find(({ id }) => id === chosen)?.grade;
        expect(grade === undefined ? Infinity : readingGrades.indexOf(grade)).toBe(best);
      }),
      { seed: 20261125 },
    );
  });
});
