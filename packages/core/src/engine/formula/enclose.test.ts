import fc from 'fast-check';
import * as reference from 'interval-arithmetic';
import { describe, expect, test } from 'vitest';
import { even } from '../../../test/even.ts';
import { interval, type Interval } from '../geometry/index.ts';
import { enclose, openEnclosure, type Ends } from './enclose.ts';
import { evaluate, openWorkspace, valueAt } from './evaluate.ts';
import { openFormula, stepsFor, type Step, type Writer } from './formula.ts';

type Unary = 'square' | 'squareRoot' | 'sine' | 'cosine' | 'arcTangent' | 'arcSine';
type Binary = 'add' | 'subtract' | 'multiply' | 'divide' | 'lesser' | 'greater';

/** What each operation means on plain numbers, written out again. */
const plainOne: Readonly<Record<Unary, (a: number) => number>> = {
  square: (a) => a * a,
  squareRoot: (a) => (a <= 0 ? 0 : Math.sqrt(a)),
  sine: Math.sin,
  cosine: Math.cos,
  arcTangent: Math.atan,
  arcSine: (a) => Math.asin(a < -1 ? -1 : a > 1 ? 1 : a),
};
const plainTwo: Readonly<Record<Binary, (a: number, b: number) => number>> = {
  add: (a, b) => a + b,
  subtract: (a, b) => a - b,
  multiply: (a, b) => a * b,
  divide: (a, b) => a / b,
  lesser: (a, b) => (a < b ? a : b),
  greater: (a, b) => (a < b ? b : a),
};
const unaries = Object.keys(plainOne) as Unary[];
const binaries = Object.keys(plainTwo) as Binary[];

const ranges = fc
  .tuple(
    fc.oneof(
      fc.double({ min: -900, max: 900, noNaN: true }),
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.constantFrom(0, 1, -1, Math.PI, -Math.PI / 2),
    ),
    fc.oneof(fc.constant(0), fc.double({ min: 0, max: 4, noNaN: true }), even(0, 300)),
  )
  .map(([low, wide]): Interval => interval(low, low + wide));
/** Zero, or so near that a quotient has no digits left to compare. */
const isTiny = (value: number): boolean => Math.abs(value) < 1e-9;
const shares = even(0, 1);

/** A formula of one operation on one or two leaves. */
function formulaOf(write: (w: Writer, a: Step, b: Step) => Step) {
  const writer = openFormula();
  const result = write(writer, writer.leaf('a'), writer.leaf('b'));
  const formula = writer.finish();
  return { formula, result, steps: stepsFor(formula, [result]) };
}

function enclosed(write: (w: Writer, a: Step, b: Step) => Step, leaves: readonly Interval[]): Interval {
  const { formula, result, steps } = formulaOf(write);
  const room = openEnclosure(formula, 1);
  enclose(room, steps, { leaf: (index) => leaves[index] as Interval, lane: () => interval(0, 0) });
  const { low, high } = room.ends[result] as Ends;
  return interval(low[0] as number, high[0] as number);
}

function evaluatedAt(write: (w: Writer, a: Step, b: Step) => Step, leaves: readonly number[]): number {
  const { formula, result, steps } = formulaOf(write);
  const space = openWorkspace(formula, 1);
  evaluate(space, steps, { leaf: (index) => leaves[index] as number, lane: () => 0 });
  return valueAt(space, result, 0);
}

const within = ({ low, high }: Interval, share: number): number => Math.min(high, low + share * (high - low));

/** Rounding of the last digits, in the size of what is compared. */
function expectHeld({ low, high }: Interval, value: number): void {
  const slack = 1e-12 * Math.max(1, Math.abs(value));
  expect(value).toBeGreaterThanOrEqual(low - slack);
  expect(value).toBeLessThanOrEqual(high + slack);
}

describe('every operation, on plain numbers', () => {
  test.each(unaries)('%s is what its name says, where it is clipped too', (name) => {
    fc.assert(
      fc.property(ranges, ({ low }) => {
        expect(evaluatedAt((w, a) => w[name](a), [low])).toBeCloseTo(plainOne[name](low), 12);
      }),
    );
  });
  test.each(binaries)('%s is what its name says', (name) => {
    fc.assert(
      fc.property(ranges, ranges, ({ low: a }, { high: b }) => {
        if (name === 'divide' && isTiny(b)) return;
        expect(evaluatedAt((w, x, y) => w[name](x, y), [a, b])).toBe(plainTwo[name](a, b));
      }),
    );
  });
});

describe('every operation, on ranges, holds what it makes of the numbers in them', () => {
  test.each(unaries)('%s', (name) => {
    fc.assert(
      fc.property(ranges, fc.array(shares, { minLength: 8, maxLength: 8 }), (a, at) => {
        const range = enclosed((w, x) => w[name](x), [a]);
        for (const share of [0, 1, ...at]) expectHeld(range, plainOne[name](within(a, share)));
      }),
      { numRuns: 300 },
    );
  });
  test.each(binaries)('%s', (name) => {
    fc.assert(
      fc.property(ranges, ranges, fc.array(fc.tuple(shares, shares), { minLength: 8, maxLength: 8 }), (a, b, at) => {
        const range = enclosed((w, x, y) => w[name](x, y), [a, b]);
        for (const [p, q] of [[0, 0], [0, 1], [1, 0], [1, 1], ...at] as [number, number][]) {
          const divisor = within(b, q);
          if (name === 'divide' && isTiny(divisor)) continue;
          expectHeld(range, plainTwo[name](within(a, p), divisor));
        }
      }),
      { numRuns: 300 },
    );
  });
  test('a divisor that may be zero leaves the quotient open', () => {
    expect(enclosed((w, a, b) => w.divide(a, b), [interval(1, 2), interval(-1, 3)])).toEqual(
      interval(-Infinity, Infinity),
    );
  });
  test('unbounded ends go through without turning into no number', () => {
    const open = [interval(-Infinity, Infinity), interval(0, 0)];
    const product = enclosed((w, a, b) => w.multiply(a, b), open);
    expect([product.low, product.high].every((end) => end === 0)).toBe(true);
    expect(enclosed((w, a) => w.sine(a), open)).toEqual(interval(-1, 1));
    expect(enclosed((w, a) => w.square(a), open)).toEqual(interval(0, Infinity));
    const half = [interval(3, Infinity), interval(-2, Infinity)];
    expect(enclosed((w, a, b) => w.add(a, b), half)).toEqual(interval(1, Infinity));
    expect(enclosed((w, a, b) => w.subtract(a, b), half)).toEqual(interval(-Infinity, Infinity));
  });
});

const { Interval: Reference } = reference as unknown as {
  Interval: new (low: number, high: number) => { lo: number; hi: number };
};
const operations = reference as unknown as Record<string, (...parts: unknown[]) => { lo: number; hi: number }>;

function theirs(name: string, ...parts: readonly (Interval | number)[]): Interval {
  const operation = operations[name];
  if (operation === undefined) throw new Error(`the library has no ${name}`);
  const given = parts.map((part) => (typeof part === 'number' ? part : new Reference(part.low, part.high)));
  const { lo, hi } = operation(...given);
  return interval(lo, hi);
}

function expectSame(ours: Interval, other: Interval): void {
  for (const [mine, its] of [
    [ours.low, other.low],
    [ours.high, other.high],
  ] as const) {
    expect(Math.abs(mine - its)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(its)));
  }
}

describe('every operation, on ranges, against the general library interval-arithmetic 1.1.3', () => {
  const two = { add: 'add', subtract: 'sub', multiply: 'mul', divide: 'div' } as const;
  test.each(Object.entries(two) as [keyof typeof two, string][])('%s gives the ends of %s', (name, itsName) => {
    let compared = 0;
    fc.assert(
      fc.property(ranges, ranges, (a, b) => {
        if (name === 'divide' && (isTiny(b.low) || isTiny(b.high) || b.low * b.high < 0)) return;
        expectSame(
          enclosed((w, x, y) => w[name](x, y), [a, b]),
          theirs(itsName, a, b),
        );
        compared += 1;
      }),
      { numRuns: 600 },
    );
    expect(compared).toBeGreaterThan(100);
  });
  const one = { sine: 'sin', cosine: 'cos', arcTangent: 'atan' } as const;
  test.each(Object.entries(one) as [keyof typeof one, string][])('%s gives the ends of %s', (name, itsName) => {
    fc.assert(
      fc.property(ranges, (a) => {
        expectSame(
          enclosed((w, x) => w[name](x), [a]),
          theirs(itsName, a),
        );
      }),
      { numRuns: 300 },
    );
  });
  test('square gives the ends of the second power', () => {
    fc.assert(
      fc.property(ranges, (a) => {
        expectSame(
          enclosed((w, x) => w.square(x), [a]),
          theirs('pow', a, 2),
        );
      }),
      { numRuns: 300 },
    );
  });
  test('square root gives the ends of sqrt where nothing lies below zero', () => {
    let compared = 0;
    fc.assert(
      fc.property(ranges, (a) => {
        if (a.low < 0) return;
        expectSame(
          enclosed((w, x) => w.squareRoot(x), [a]),
          theirs('sqrt', a),
        );
        compared += 1;
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(50);
  });
  test('arc sine gives the ends of asin within ±1', () => {
    const small = fc
      .tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -1, max: 1, noNaN: true }))
      .map(([a, b]) => interval(Math.min(a, b), Math.max(a, b)));
    fc.assert(
      fc.property(small, (a) => {
        expectSame(
          enclosed((w, x) => w.arcSine(x), [a]),
          theirs('asin', a),
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('a formula', () => {
  test('writes the same step once, and holds only the steps that a result rests on', () => {
    const w = openFormula();
    const [a, b] = [w.leaf('a'), w.leaf('b')];
    const sum = w.add(a, b);
    expect(w.add(w.leaf('a'), w.leaf('b'))).toBe(sum);
    const other = w.square(b);
    const formula = w.finish();
    expect(formula.leaves).toEqual(['a', 'b']);
    expect([...stepsFor(formula, [other])]).toEqual([b, other]);
    expect([...stepsFor(formula, [sum])]).toEqual([a, b, sum]);
  });
  test('writes no step that changes nothing', () => {
    const w = openFormula();
    const [a, zero, one] = [w.leaf('a'), w.constant(0), w.constant(1)];
    expect([w.add(a, zero), w.add(zero, a), w.subtract(a, zero)]).toEqual([a, a, a]);
    expect([w.multiply(a, one), w.multiply(one, a)]).toEqual([a, a]);
    expect([w.multiply(a, zero), w.multiply(zero, a)]).toEqual([zero, zero]);
    expect(w.subtract(zero, a)).not.toBe(a);
  });
  test('knows which steps change along the lift', () => {
    const w = openFormula();
    const still = w.square(w.leaf('a'));
    const moving = w.multiply(still, w.lane());
    const formula = w.finish();
    expect(formula.laned[still]).toBe(0);
    expect(formula.laned[moving]).toBe(1);
  });
});
