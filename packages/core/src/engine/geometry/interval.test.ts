import fc from 'fast-check';
import * as reference from 'interval-arithmetic';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  add,
  angleOf,
  cosine,
  hypotenuse,
  multiply,
  sine,
  square,
  squareRoot,
  subtract,
  type Interval,
} from './interval.ts';

const { Interval: Reference } = reference as unknown as {
  Interval: new (low: number, high: number) => { lo: number; hi: number };
};
const operations = reference as unknown as Record<string, (...parts: unknown[]) => { lo: number; hi: number }>;

const intervals = fc
  .tuple(fc.double({ min: -900, max: 900, noNaN: true }), fc.double({ min: 0, max: 300, noNaN: true }))
  .map(([low, wide]): Interval => ({ low, high: low + wide }));

function toReference({ low, high }: Interval) {
  return new Reference(low, high);
}

function expectSame(ours: Interval, theirs: { lo: number; hi: number }): void {
  expect(ours.low).toBeCloseTo(theirs.lo, 6);
  expect(ours.high).toBeCloseTo(theirs.hi, 6);
}

describe('interval arithmetic against the general library interval-arithmetic 1.1.3', () => {
  const two = { add, sub: subtract, mul: multiply } as const;
  for (const [name, ours] of Object.entries(two)) {
    test(`${name} gives the same ends`, () => {
      fc.assert(
        fc.property(intervals, intervals, (a, b) =>
          expectSame(ours(a, b), operations[name]?.(toReference(a), toReference(b)) as never),
        ),
      );
    });
  }
  const one = { abs: absolute, sqrt: squareRoot } as const;
  for (const [name, ours] of Object.entries(one)) {
    test(`${name} gives the same ends`, () => {
      fc.assert(
        fc.property(intervals, (a) => {
          if (name === 'sqrt' && a.low < 0) return;
          expectSame(ours(a), operations[name]?.(toReference(a)) as never);
        }),
      );
    });
  }
  test('square is the even power', () => {
    fc.assert(fc.property(intervals, (a) => expectSame(square(a), operations['pow']?.(toReference(a), 2) as never)));
  });
});

describe('angles and lengths hold every point of their box', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const within = (value: number, range: Interval) => value >= range.low - 1e-9 && value <= range.high + 1e-9;
  test('angleOf, hypotenuse, sine and cosine', () => {
    fc.assert(
      fc.property(intervals, intervals, share, share, (x, raw, s, t) => {
        const z = absolute(raw);
        const [px, pz] = [x.low + s * (x.high - x.low), z.low + t * (z.high - z.low)];
        expect(within(Math.atan2(pz, px), angleOf(x, z))).toBe(true);
        expect(within(Math.hypot(px, pz), hypotenuse(x, z))).toBe(true);
        const angle = { low: x.low / 600, high: Math.min(1.5, x.high / 600) };
        if (angle.low < -1.5 || angle.high < angle.low) return;
        const a = angle.low + s * (angle.high - angle.low);
        expect(within(Math.sin(a), sine(angle))).toBe(true);
        expect(within(Math.cos(a), cosine(angle))).toBe(true);
      }),
    );
  });
});
