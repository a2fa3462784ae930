import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/engine/formula/index.ts';
import type { LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { documentOf, liftCases, type Held, type LiftCase } from '../properties/generateLift.ts';
import { evaluated, questionOf, spaced, type Evaluated } from './engineAt.ts';
import { freeBodyAt } from './freeBody.ts';
import { solvedSystem } from './linearSystem.ts';
import { armEndAt, ballAt, cross, minus, placed } from './sideView.ts';
import { weightsAt } from './weights.ts';

const lanes = spaced(7);
/** Four digits are asked for; both ways of working it out hold far more. */
const digits = 1e-9;

function wanted({ ballHeight, topLink, total, demand, arm, topLinkForce, lowerForceUp, lowerForce }: LiftSteps) {
  if (arm === null) throw new Error('no arms');
  return [ballHeight, topLink, total, demand, arm.spin, topLinkForce, lowerForceUp, lowerForce];
}

interface Compared {
  readonly what: string;
  readonly ours: number;
  readonly theirs: number;
  /** What a difference is weighed against. */
  readonly size: number;
}

/** Engine and free bodies at every height of a case. */
function comparisons(one: LiftCase, of: Evaluated): Compared[] {
  const { steps, value } = of;
  const view = { ...one.sideView, topLink: value(steps.topLink) };
  const { arm } = steps;
  if (arm === null) throw new Error('no arms');
  return lanes.flatMap((_, i) => {
    const height = value(steps.ballHeight, i);
    const { onBody, onLinks } = weightsAt(one, view, height);
    const free = freeBodyAt(view, height, onBody, onLinks);
    const total = value(steps.total);
    const torque = value(steps.demand, i) / value(arm.spin, i);
    const size = total * 100;
    return [
      { what: 'arm torque', ours: torque, theirs: free.armTorque, size },
      // What rides on the link ends by itself weighs on the pins in the balls, never on the body’s lower points.
      { what: 'top link', ours: value(steps.topLinkForce, i), theirs: free.topLink, size: total },
      { what: 'lower points upward', ours: value(steps.lowerForceUp, i), theirs: free.onBody.z, size: total },
      {
        what: 'pins in the balls',
        ours: value(steps.lowerForce, i),
        theirs: Math.hypot(free.onBody.x, free.onBody.z + onLinks.reduce((sum, { mass }) => sum + mass, 0)),
        size: total,
      },
    ];
  });
}

const held = (...kinds: Held[]): fc.Arbitrary<Held> => fc.constantFrom(...kinds);

/** The case with nothing riding on the link ends but what the top link helps to hold. */
function withoutCoupler(one: LiftCase): LiftCase {
  return { ...one, coupler: { ...one.coupler, mass: 0, hungMass: 0 } };
}

const weightless = { couplerMass: 0, hungMass: 0 };

function worstOf(all: readonly Compared[]): Compared & { readonly share: number } {
  const shares = all.map((one) => ({ ...one, share: Math.abs(one.ours - one.theirs) / one.size }));
  return shares.reduce((a, b) => (b.share > a.share ? b : a));
}

describe('virtual work and moments against the rest of every body by itself', () => {
  test('the elimination solves a system with a known answer', () => {
    const rows = [
      [0, 2, -1],
      [3, -1, 4],
      [1, 1, 1],
    ];
    const answer = [2, -3, 5];
    const right = rows.map((row) => row.reduce((sum, entry, j) => sum + entry * (answer[j] as number), 0));
    solvedSystem(rows, right).forEach((value, i) => expect(value).toBeCloseTo(answer[i] as number, 12));
  });

  test('on the balls and in a frame: arm torque, top link and lower links agree', () => {
    let worst = 0;
    let compared = 0;
    fc.assert(
      fc.property(liftCases(held('bareBalls', 'uFrame', 'triangle')), (one) => {
        const all = comparisons(one, evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted));
        const { what, share } = worstOf(all);
        expect(share, what).toBeLessThan(digits);
        worst = Math.max(worst, share);
        compared += all.length;
      }),
      { numRuns: 120 },
    );
    console.log(`free bodies: worst ${worst.toExponential(1)} of the load over ${compared} forces`);
    expect(compared).toBe(120 * lanes.length * 4);
  });

  test('on link ends that weigh nothing: arm torque, top link and hooks agree', () => {
    fc.assert(
      fc.property(liftCases(held('clawEnds', 'hookEnds', 'bar')), (one) => {
        const of = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted, weightless);
        const { what, share } = worstOf(comparisons(withoutCoupler(one), of));
        expect(share, what).toBeLessThan(digits);
      }),
      { numRuns: 60 },
    );
  });

  for (const what of ['arm torque', 'top link', 'lower points upward', 'pins in the balls'] as const) {
    test(`on link ends, what rides on the ends themselves turns with the links and hangs on no top link: ${what}`, () => {
      fc.assert(
        fc.property(liftCases(held('clawEnds', 'hookEnds', 'bar')), (one) => {
          const all = comparisons(one, evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted));
          const { share, ours, theirs } = worstOf(all.filter((each) => each.what === what));
          expect(share, `${ours} where the free bodies say ${theirs}`).toBeLessThan(1e-4);
        }),
        { numRuns: 60 },
      );
    });
  }
});

describe('a lift cylinder against the moment of its push about the shaft', () => {
  const cylinder = fc.record({
    bore: fc.integer({ min: 50, max: 90 }),
    pressure: fc.integer({ min: 120, max: 220 }),
    behind: fc.integer({ min: -320, max: -120 }),
    below: fc.integer({ min: -60, max: 120 }),
    crank: fc.integer({ min: 70, max: 130 }),
    crankAngle: fc.integer({ min: -130, max: -60 }),
  });

  test('turns the arms with its push times its lever, and lifts the load as far as the free bodies say', () => {
    let compared = 0;
    fc.assert(
      fc.property(liftCases(held('bareBalls', 'uFrame')), cylinder, (one, of) => {
        const { pivot } = one.sideView.arm;
        const fixed = { x: pivot.x + of.behind, z: pivot.z - of.below };
        const document = documentOf({
          ...one,
          tractor: {
            ...one.tractor,
            cylinderBore: of.bore,
            liftPressure: of.pressure,
            cylinderPivotBehindAxle: fixed.x,
            cylinderPivotHeight: fixed.z,
            cylinderCrank: of.crank,
            cylinderCrankAngle: of.crankAngle,
          },
        });
        const instead = { liftEfficiency: 0.87, liftCylinders: 2 };
        const pick = (steps: LiftSteps): Step[] => [
          ...wanted(steps),
          ...[steps.supply.lowAtBalls, steps.supply.highAtBalls, steps.proven, steps.load.rise],
        ];
        const { steps, value } = evaluated(questionOf(document), 'stroke', lanes, pick, instead);
        const view = { ...one.sideView, topLink: value(steps.topLink) };
        lanes.forEach((_, i) => {
          const height = value(steps.ballHeight, i);
          const ball = ballAt(view, height);
          const arm = ball === null ? null : armEndAt(view, ball);
          if (arm === null) throw new Error('does not close');
          const pin = placed(pivot, { x: of.crank, z: 0 }, arm.angle + (of.crankAngle * Math.PI) / 180);
          const along = minus(pin, fixed);
          const lever = cross(minus(pin, pivot), along) / Math.hypot(along.x, along.z);
          const newtons = 2 * 0.87 * (of.pressure / 10) * Math.PI * (of.bore / 2) ** 2;
          const torque = (newtons / 9.80665) * lever;
          if (steps.arm === null) throw new Error('no arms');
          expect(value(steps.supply.lowAtBalls, i) / value(steps.arm.spin, i) / torque).toBeCloseTo(1, 9);
          expect(value(steps.supply.highAtBalls, i)).toBe(value(steps.supply.lowAtBalls, i));
          if (value(steps.load.rise, i) < 0.05) return;
          const { load, onBody, onLinks } = weightsAt(one, view, height);
          const heavier = onBody.map((weight) =>
            weight === load ? { ...load, mass: value(steps.proven, i) } : weight,
          );
          expect(freeBodyAt(view, height, heavier, onLinks).armTorque / (0.9 * torque)).toBeCloseTo(1, 8);
          compared += 1;
        });
      }),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(300);
  });
});
