import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  equivalentAngle,
  exactEquivalentAngle,
  greatestRatio,
  leastRatio,
  residualAcceleration,
  speedRatio,
} from '../../src/engine/shaft/joints.ts';
import { greatestSlope, spread, turnsOf, type TwoJoints } from './yokes.ts';

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
/** [rad], evenly in thousandths of a degree: doubles would come out tiny most of the time */
const between = (low: number, high: number) =>
  fc.integer({ min: 1000 * low, max: 1000 * high }).map((n) => rad(n / 1000));
const bends = between(0, 40);
const twists = between(-180, 180);
const turns = between(0, 360);

describe('one joint, its cross held square in both yokes', () => {
  test('passes on the ratio of the formula to a millionth', () => {
    let worst = 0;
    fc.assert(
      fc.property(bends, twists, turns, (first, twist, turn) => {
        const { tube } = turnsOf({ first, second: 0, twist });
        const miss = Math.abs(tube.ratio(turn) - speedRatio(first, turn));
        worst = Math.max(worst, miss);
        expect(miss).toBeLessThan(1e-6);
      }),
      { numRuns: 400 },
    );
    console.log(`one joint against its formula: worst ${worst.toExponential(1)}`);
  });
});

describe('two joints, inner yokes in line', () => {
  test('with equal angles in one plane drive the far shaft evenly', () => {
    fc.assert(
      fc.property(bends, turns, fc.boolean(), (bend, turn, turnedBack) => {
        const { far } = turnsOf({ first: bend, second: bend, twist: turnedBack ? Math.PI : 0 });
        expect(Math.abs(far.ratio(turn) - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 200 },
    );
  });

  test('in one plane swing exactly as the exact equivalent joint', () => {
    fc.assert(
      fc.property(bends, bends, (first, second) => {
        const swing = spread(turnsOf({ first, second, twist: 0 }).far);
        const angle = exactEquivalentAngle(first, second);
        expect(Math.abs(swing.greatest - greatestRatio(angle))).toBeLessThan(1e-7);
        expect(Math.abs(swing.least - leastRatio(angle))).toBeLessThan(1e-7);
      }),
      { numRuns: 60 },
    );
  });

  test('in any planes swing as the equivalent joint, to the fourth power of the angles', () => {
    let worst = 0;
    fc.assert(
      fc.property(bends, bends, twists, (first, second, twist) => {
        const swing = spread(turnsOf({ first, second, twist }).far);
        const angle = equivalentAngle(first, second, twist);
        const size = (first ** 2 + second ** 2) ** 2;
        const miss = Math.max(
          Math.abs(swing.greatest - greatestRatio(angle)),
          Math.abs(swing.least - leastRatio(angle)),
        );
        if (size > 1e-4) worst = Math.max(worst, miss / size);
        expect(miss).toBeLessThan(0.12 * size + 1e-7);
      }),
      { numRuns: 150 },
    );
    console.log(`two joints against the equivalent joint: miss up to ${worst.toFixed(3)} of (β1² + β2²)²`);
  });
});

describe('rows that we worked out ourselves, not published', () => {
  const rows: readonly (readonly [TwoJoints, number, number, number, number, number])[] = [
    // both angles and the twist [deg] · equivalent angle [deg] · greatest and least ratio · acceleration at 540 and 1000
    [{ first: 20, second: 20, twist: 90 }, 28.28, 1.1325, 0.883, 810, 2778],
    [{ first: 15, second: 25, twist: 0 }, 20.0, 1.0658, 0.9383, 409, 1404],
    [{ first: 10, second: 10, twist: 90 }, 14.14, 1.0311, 0.9699, 196, 672],
    [{ first: 15, second: 15, twist: 30 }, 15.0, 1.0353, 0.9659, 222, 762],
    [{ first: 20, second: 10, twist: 45 }, 20.3, 1.0662, 0.938, 412, 1412],
    [{ first: 12, second: 18, twist: 20 }, 15.26, 1.0368, 0.9645, 232, 795],
  ];
  test.each(rows)('%o', (degrees, angle, greatest, least, at540, at1000) => {
    const [first, second, twist] = [rad(degrees.first), rad(degrees.second), rad(degrees.twist)];
    const { far } = turnsOf({ first, second, twist });
    const swing = spread(far);
    expect(Math.abs((equivalentAngle(first, second, twist) * 180) / Math.PI - angle)).toBeLessThan(0.02);
    expect(Math.abs(swing.greatest - greatest)).toBeLessThan(1e-4);
    expect(Math.abs(swing.least - least)).toBeLessThan(1e-4);
    for (const [speed, printed] of [
      [540, at540],
      [1000, at1000],
    ] as const) {
      const acceleration = greatestSlope(far) * ((speed * Math.PI) / 30) ** 2;
      expect(Math.abs(acceleration - printed)).toBeLessThan(1.5);
      const ours = residualAcceleration(equivalentAngle(first, second, twist), speed);
      expect(Math.abs(ours / acceleration - 1)).toBeLessThan(0.03);
    }
  });
});
