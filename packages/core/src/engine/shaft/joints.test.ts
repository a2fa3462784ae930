import { describe, expect, test } from 'vitest';
import {
  angleForFluctuation,
  angleInSpace,
  bearingLife,
  equivalentAngle,
  equalSpeedTurn,
  exactEquivalentAngle,
  greatestAcceleration,
  greatestRatio,
  leastRatio,
  nonUniformity,
  phaseError,
  residualAcceleration,
  speedRatio,
  torqueOf,
  wrapSpeed,
} from './joints.ts';

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const deg = (radians: number): number => (radians * 180) / Math.PI;
const angles = [0, 1, 5, 15, 25, 35, 45, 60].map(rad);

describe('a single joint', () => {
  test('is fastest at the start, slowest a quarter turn on, and even at tan θ = √cos β', () => {
    for (const angle of angles) {
      expect(speedRatio(angle, 0)).toBeCloseTo(greatestRatio(angle), 12);
      expect(speedRatio(angle, Math.PI / 2)).toBeCloseTo(leastRatio(angle), 12);
      expect(speedRatio(angle, equalSpeedTurn(angle))).toBeCloseTo(1, 12);
      expect(nonUniformity(angle)).toBeCloseTo(greatestRatio(angle) - leastRatio(angle), 12);
    }
  });

  test('the angle for a swing is the inverse of the swing', () => {
    for (const angle of angles) expect(angleForFluctuation(nonUniformity(angle))).toBeCloseTo(angle, 7);
  });

  test('accelerates most where a fine search finds it, and not at all when straight', () => {
    for (const angle of angles.slice(1)) {
      const slopeAt = (turn: number): number =>
        Math.abs((speedRatio(angle, turn + 1e-5) - speedRatio(angle, turn - 1e-5)) / 2e-5);
      const turns = Array.from({ length: 20001 }, (_, i) => (i * Math.PI) / 40000);
      const found = turns.reduce((best, turn) => (slopeAt(turn) > slopeAt(best) ? turn : best), 0);
      const peak = greatestAcceleration(angle, 10);
      expect(peak.acceleration / 100).toBeCloseTo(slopeAt(found), 6);
      expect(Math.abs(peak.turn - found)).toBeLessThan(1e-3);
    }
    expect(greatestAcceleration(0, 100).acceleration).toBe(0);
  });

  test('runs ahead by at most what the turns of both shafts differ', () => {
    for (const angle of angles) {
      const ahead = Array.from({ length: 9000 }, (_, i) => (i * Math.PI) / 18000).map(
        (turn) => Math.atan(Math.tan(turn) / Math.cos(angle)) - turn,
      );
      expect(Math.max(...ahead)).toBeCloseTo(phaseError(angle), 6);
    }
  });
});

describe('two joints', () => {
  test('cancel when equal in one plane, and double up a quarter turn out of step', () => {
    expect(equivalentAngle(rad(20), rad(20), 0)).toBe(0);
    expect(equivalentAngle(rad(20), rad(20), Math.PI)).toBeLessThan(1e-7);
    expect(deg(equivalentAngle(rad(20), rad(20), Math.PI / 2))).toBeCloseTo(20 * Math.SQRT2, 9);
    expect(residualAcceleration(0, 540)).toBe(0);
  });

  test('in one plane are near their exact joint, which does not care for the order', () => {
    expect(deg(equivalentAngle(rad(15), rad(25), 0))).toBeCloseTo(20, 9);
    expect(deg(exactEquivalentAngle(rad(15), rad(25)))).toBeCloseTo(20.24, 2);
    expect(exactEquivalentAngle(rad(25), rad(15))).toBe(exactEquivalentAngle(rad(15), rad(25)));
    expect(exactEquivalentAngle(rad(25), rad(25))).toBe(0);
  });

  test('one straight joint leaves the other as it is', () => {
    expect(equivalentAngle(0, rad(17), 1)).toBeCloseTo(rad(17), 12);
    expect(residualAcceleration(rad(17), 1000)).toBeCloseTo(
      greatestAcceleration(rad(17), (1000 / 30) * Math.PI).acceleration,
      9,
    );
  });
});

test('an angle seen from the side and from above is the angle between the lines', () => {
  for (const [side, plan] of [
    [10, 10],
    [20, 15],
    [-25, 20],
    [0, 12],
  ] as const) {
    const line = [1, Math.tan(rad(plan)), Math.tan(rad(side))] as const;
    expect(angleInSpace(rad(side), rad(plan))).toBeCloseTo(Math.acos(1 / Math.hypot(...line)), 9);
  }
});

test('torque times turning speed is power, and half the speed takes twice the torque', () => {
  expect((torqueOf(30, 540) * 540 * 2 * Math.PI) / 60).toBeCloseTo(30000, 6);
  expect(torqueOf(30, 500)).toBeCloseTo(2 * torqueOf(30, 1000), 9);
});

test('a straight, still or idle joint has no life to tell', () => {
  expect(bearingLife(0, 540, 1)).toBeNull();
  expect(bearingLife(3, 0, 1)).toBeNull();
  expect(bearingLife(3, 540, 0)).toBeNull();
  expect(bearingLife(6, 100, 1)).toBe(2500);
});

test('a metre of circumference winds in a metre each turn', () => {
  expect(wrapSpeed(1000 / Math.PI, 60)).toBeCloseTo(1, 12);
});
