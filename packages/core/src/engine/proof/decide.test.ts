import { describe, expect, test } from 'vitest';
import { exactly, interval, subtract, type Interval } from '../geometry/index.ts';
import { marginOf, type Check } from './check.ts';
import { decide } from './decide.ts';
import { judge, type Field } from './judge.ts';
import type { Problem } from './problem.ts';

function check(
  id: string,
  quantity: Check['measure'] extends (at: infer At) => unknown ? (at: At) => Interval : never,
  low: number | null,
  high: number | null,
): Check {
  return {
    id,
    unit: 'mm',
    scale: 1,
    measure: (at) => ({
      quantity: quantity(at),
      low: low === null ? null : exactly(low),
      high: high === null ? null : exactly(high),
    }),
  };
}

function problem(checks: readonly Check[], box: readonly Interval[], settings: readonly number[] = []): Problem {
  const uncertain = box.map((_, i) => i).filter((i) => !settings.includes(i));
  return { checks, box, uncertain, settings, choices: [] };
}

describe('margins', () => {
  test('the margin of a band is the distance to the nearer end, exact even across its middle', () => {
    expect(marginOf({ quantity: interval(2, 9), low: exactly(0), high: exactly(10) })).toEqual(interval(1, 5));
    expect(marginOf({ quantity: interval(-3, -1), low: exactly(0), high: exactly(10) })).toEqual(interval(-3, -1));
    expect(marginOf({ quantity: interval(4, 6), low: exactly(0), high: null })).toEqual(interval(4, 6));
  });
});

describe('decide', () => {
  const x = check('x', (at) => at(0), 0, null);
  test('passes where the whole box passes', () => {
    expect(decide(problem([x], [interval(0, 5)])).outcome).toBe('passes');
  });
  test('fails where the whole box fails', () => {
    expect(decide(problem([x], [interval(-5, -0.001)])).outcome).toBe('fails');
  });
  test('is undecided across the edge, with one truth for each side', () => {
    const decision = decide(problem([x], [interval(-1, 100)]));
    expect(decision.outcome).toBe('undecided');
    if (decision.outcome !== 'undecided') return;
    expect(decision.passing[0]?.low).toBeGreaterThanOrEqual(0);
    expect(decision.failing[0]?.high).toBeLessThan(0);
  });
  test('two checks that oppose each other through one uncertain figure fail together', () => {
    const more = check('more', (at) => at(0), 7, null);
    const less = check('less', (at) => at(0), null, 5);
    expect(decide(problem([more], [interval(0, 10)])).outcome).toBe('undecided');
    expect(decide(problem([more, less], [interval(0, 10)])).outcome).toBe('fails');
  });
  test('passes where no fixed setting serves every truth but each truth has one', () => {
    const meets = check('meets', (at) => subtract(at(0), at(1)), -1, 1);
    expect(decide(problem([meets], [interval(400, 440), interval(390, 450)], [1])).outcome).toBe('passes');
    expect(decide(problem([meets], [interval(400, 440), interval(390, 430)], [1])).outcome).toBe('undecided');
    expect(decide(problem([meets], [interval(400, 440), interval(300, 390)], [1])).outcome).toBe('fails');
  });
});

describe('judge', () => {
  test('two checks that need different settings of one adjuster fail together, and say so', () => {
    const high = check('high', (at) => at(0), 7, null);
    const low = check('low', (at) => at(0), null, 5);
    const field: Field = { box: [interval(0, 10)], isSetting: () => true, choices: [], reads: () => new Set([0]) };
    const judged = judge([high, low], field);
    expect(judged.map(({ status }) => status)).toEqual(['fail', 'fail']);
    expect(judged.map(({ conflictsWith }) => conflictsWith)).toEqual([['low'], ['high']]);
  });
  test('a choice of holes passes where one hole does', () => {
    const fits = check('fits', (at) => exactly([440, 457, 470][at(0).low] ?? 0), 455, 459);
    const field: Field = {
      box: [interval(0, 2)],
      isSetting: () => false,
      choices: [{ index: 0, count: 3 }],
      reads: () => new Set([0]),
    };
    const [judged] = judge([fits], field);
    expect(judged?.status).toBe('pass');
    expect(judged?.setting[0]).toEqual(exactly(1));
  });
});
