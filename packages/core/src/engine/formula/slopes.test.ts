import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { even } from '../../../test/even.ts';
import { enclosedTightly, slopeIn } from '../../../test/enclosed.ts';
import { interval, type Interval } from '../geometry/index.ts';
import { openFormula, type Step, type Writer } from './formula.ts';

type Unary = 'square' | 'squareRoot' | 'sine' | 'cosine' | 'arcTangent' | 'arcSine';
type Binary = 'add' | 'subtract' | 'multiply' | 'divide' | 'lesser' | 'greater';

/** The slope of each operation, from a table of derivatives; beyond where it is clipped an operation is flat. */
const slopeOne: Readonly<Record<Unary, (a: number) => number>> = {
  square: (a) => 2 * a,
  squareRoot: (a) => (a < 0 ? 0 : 0.5 / Math.sqrt(a)),
  sine: Math.cos,
  cosine: (a) => -Math.sin(a),
  arcTangent: (a) => 1 / (1 + a * a),
  arcSine: (a) => (Math.abs(a) > 1 ? 0 : 1 / Math.sqrt(1 - a * a)),
};
const slopeTwo: Readonly<Record<Binary, (a: number, b: number) => readonly [number, number]>> = {
  add: () => [1, 1],
  subtract: () => [1, -1],
  multiply: (a, b) => [b, a],
  divide: (a, b) => [1 / b, -a / (b * b)],
  lesser: (a, b) => (a < b ? [1, 0] : [0, 1]),
  greater: (a, b) => (a > b ? [1, 0] : [0, 1]),
};

/** Ranges of the slope of one operation by each of its two leaves. */
function slopesOf(write: (w: Writer, a: Step, b: Step) => Step, leaves: readonly Interval[]): Interval[] {
  const writer = openFormula();
  const result = write(writer, writer.leaf('a'), writer.leaf('b'));
  const formula = writer.finish();
  const { rooms } = enclosedTightly(formula, result, leaves, 1);
  return [0, 1].map((leaf) => slopeIn(rooms, result, leaf, 0));
}

/** What is one number is asked for no slope: every range has some width. */
function rangesFrom(min: number, max: number, wide: number): fc.Arbitrary<Interval> {
  return fc.tuple(fc.double({ min, max, noNaN: true }), even(0.001, wide)).map(([low, by]) => interval(low, low + by));
}

const shares = fc.array(fc.tuple(even(0, 1), even(0, 1)), {
  minLength: 10,
  maxLength: 10,
});

function within({ low, high }: Interval, share: number): number {
  return Math.min(high, low + share * (high - low));
}

function expectHeld(range: Interval, slope: number): void {
  if (!Number.isFinite(slope)) return;
  const slack = 1e-9 * Math.max(1, Math.abs(slope));
  expect(range.low).toBeLessThanOrEqual(slope + slack);
  expect(range.high).toBeGreaterThanOrEqual(slope - slack);
}

/** Where each operation is meant to be used: not clipped anywhere. */
const meant: Readonly<Record<Unary, fc.Arbitrary<Interval>>> = {
  square: rangesFrom(-50, 50, 30),
  squareRoot: rangesFrom(0.001, 100, 80),
  sine: rangesFrom(-8, 8, 5),
  cosine: rangesFrom(-8, 8, 5),
  arcTangent: rangesFrom(-20, 20, 15),
  arcSine: rangesFrom(-0.99, 0.5, 0.49),
};

describe('the slope of every operation lies in the range that is handed back', () => {
  test.each(Object.keys(slopeOne) as Unary[])('%s', (name) => {
    fc.assert(
      fc.property(meant[name], shares, (a, at) => {
        const range = slopesOf((w, x) => w[name](x), [a])[0] as Interval;
        for (const [share] of [[0], [1], ...at] as [number][]) expectHeld(range, slopeOne[name](within(a, share)));
      }),
      { numRuns: 300 },
    );
  });
  test.each(Object.keys(slopeTwo) as Binary[])('%s', (name) => {
    fc.assert(
      fc.property(rangesFrom(-20, 20, 12), rangesFrom(-20, 20, 12), shares, (a, b, at) => {
        const [byA, byB] = slopesOf((w, x, y) => w[name](x, y), [a, b]) as [Interval, Interval];
        for (const [p, q] of [[0, 0], [0, 1], [1, 0], [1, 1], ...at] as [number, number][]) {
          const [x, y] = [within(a, p), within(b, q)];
          if ((name === 'lesser' || name === 'greater') && x === y) continue;
          if (name === 'divide' && Math.abs(y) < 1e-6) continue;
          const [sx, sy] = slopeTwo[name](x, y);
          expectHeld(byA, sx);
          expectHeld(byB, sy);
        }
      }),
      { numRuns: 300 },
    );
  });

  /** Below zero a root counts as zero, beyond ±1 an arc sine as ±a quarter turn: there both are flat. */
  test.each(['squareRoot', 'arcSine'] as const)('%s over a range that reaches where it is clipped', (name) => {
    const reaching = name === 'squareRoot' ? rangesFrom(-4, -0.1, 9) : rangesFrom(-1.6, 0.6, 1.6);
    fc.assert(
      fc.property(reaching, shares, (a, at) => {
        const range = slopesOf((w, x) => w[name](x), [a])[0] as Interval;
        for (const [share] of [[0], [1], ...at] as [number][]) expectHeld(range, slopeOne[name](within(a, share)));
      }),
      { numRuns: 300 },
    );
  });

  test('ranges of slopes are as narrow as the operation allows', () => {
    const close = (range: Interval, low: number, high: number): void => {
      expect(range.low).toBeCloseTo(low, 12);
      expect(range.high).toBeCloseTo(high, 12);
    };
    const one = (name: Unary, low: number, high: number): Interval =>
      slopesOf((w, x) => w[name](x), [interval(low, high)])[0] as Interval;
    close(one('square', -1, 3), -2, 6);
    close(one('squareRoot', 4, 25), 0.1, 0.25);
    close(one('sine', 0, Math.PI / 3), 0.5, 1);
    close(one('cosine', 0, Math.PI / 6), -0.5, 0);
    close(one('arcTangent', -1, 2), 0.2, 1);
    close(one('arcSine', -0.6, 0.8), 1, 1 / 0.6);
    const [byA, byB] = slopesOf((w, x, y) => w.multiply(x, y), [interval(2, 3), interval(-1, 4)]) as [
      Interval,
      Interval,
    ];
    close(byA, -1, 4);
    close(byB, 2, 3);
    const [taken, left] = slopesOf((w, x, y) => w.lesser(x, y), [interval(0, 1), interval(2, 3)]) as [
      Interval,
      Interval,
    ];
    close(taken, 1, 1);
    close(left, 0, 0);
  });

  test('what is one number all over the box is asked for no slope', () => {
    const [byA, byB] = slopesOf((w, x, y) => w.multiply(x, y), [interval(2, 2), interval(0, 1)]) as [
      Interval,
      Interval,
    ];
    expect(byA).toEqual(interval(0, 0));
    expect(byB).toEqual(interval(2, 2));
  });

  test('a step that is read twice gets both slopes', () => {
    const range = slopesOf((w, x) => w.subtract(w.multiply(x, x), x), [interval(1, 2)])[0] as Interval;
    expect(range.low).toBeCloseTo(1, 12);
    expect(range.high).toBeCloseTo(3, 12);
  });
});
