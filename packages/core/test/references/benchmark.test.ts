import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/engine/formula/index.ts';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import type { LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { evaluated, questionOf } from './engineAt.ts';

/**
 * Benchmark W7: our own, not published. It was worked out by virtual work and by a balance of forces, which agree to four
 * digits. Pitch is positive where the mast leans forward.
 */
const rows: readonly Row[] = [
  row(-18, [784.8, 197.5], -3.008, [-3991.0, 1749.2], 1.1276, [0.3987, 0.4496], 1.3439),
  row(-10, [809.1, 295.0], -1.785, [-3538.1, 1061.5], 1.1403, [0.4259, 0.4856], 1.3265),
  row(0, [820.0, 420.0], 0, [-2860.0, 420.0], 1.1658, [0.4289, 0.5], 1.3364),
  row(10, [809.1, 545.0], 2.171, [-2130.8, 26.7], 1.2073, [0.4011, 0.4843], 1.3809),
  row(20, [776.6, 666.3], 4.891, [-1426.7, -135.7], 1.2758, [0.3447, 0.4398], 1.4617),
];

type Pair = readonly [number, number];

interface Row {
  readonly linkAngle: number;
  readonly hitch: Pair;
  readonly pitch: number;
  readonly instantCentre: Pair;
  readonly travelRatio: number;
  /** Moment on the shaft of the lift arms for each kilonewton of load, at the hitch and at G [m]. */
  readonly moments: Pair;
  readonly topLink: number;
}

function row(
  linkAngle: number,
  hitch: Pair,
  pitch: number,
  instantCentre: Pair,
  travelRatio: number,
  ...[moments, topLink]: [Pair, number]
): Row {
  return { linkAngle, hitch, pitch, instantCentre, travelRatio, moments, topLink };
}

const linkage = { pivot: { x: 100, z: 420 }, link: 720 } as const;
const heightAt = (degrees: number): number => linkage.pivot.z + linkage.link * Math.sin((degrees * Math.PI) / 180);
const lowest = heightAt(-18);
const highest = heightAt(20);

/** The load is one kilogram at G, 610 mm behind the lower pins and square to the mast. */
const document: SetupDocument = {
  hitchwright: 1,
  units: 'metric',
  tractor: {
    lowerBallWidth: 35,
    lowerLinkLength: linkage.link,
    lowerLinkPivotSpan: 718,
    lowerLinkPivotBehindAxle: linkage.pivot.x,
    lowerLinkPivotHeight: linkage.pivot.z,
    topLinkPivotBehindAxle: 180,
    topLinkPivotHeight: 800,
    topLinkLength: { adjustable: { between: [600, 700] } },
    ballHeightLow: lowest,
    ballHeightHigh: highest,
    liftArmPivotBehindAxle: 150,
    liftArmPivotHeight: 830,
    liftArmLength: 230,
    liftRodLength: 480,
    liftRodAlong: 400,
    liftAtBalls: 1000,
    liftAt610: 800,
    liftTestMastHeight: 460,
  },
  implement: {
    mounting: 'threePoint',
    shoulderSpan: 683,
    mastHeight: 460,
    mastSetback: 0,
    mass: 100,
    centreBehind: 610,
    centreAbove: 0,
    workPinHeight: linkage.pivot.z,
  },
};

const question = questionOf(document);
const places = rows.map(({ linkAngle }) => (heightAt(linkAngle) - lowest) / (highest - lowest));

function wanted({ place, body, topLink, load, convergenceSide, supply, topLinkForce }: LiftSteps): Step[] {
  const { ball, direction } = place;
  const alongLift = [ball.x, ball.z, direction.cos, direction.sin, body.pitch, convergenceSide, load.rise];
  return [...alongLift, topLink, supply.testRise, supply.ballsByArm, supply.testByArm, topLinkForce];
}

const { steps, value } = evaluated(question, 'stroke', places, wanted, { mass: 1 });

/** Within half of the last printed digit, and a little for the digits that were cut from the inputs. */
function expectPrinted(ours: number, printed: number, lastDigit: number): void {
  expect(Math.abs(ours - printed), `${ours} where ${printed} is printed`).toBeLessThanOrEqual(lastDigit);
}

describe('benchmark W7, our own linkage at five heights', () => {
  test('the top link that stands the mast upright with the links level is 644.981 mm long', () => {
    expectPrinted(value(steps.topLink), 644.981, 0.0005);
  });

  rows.forEach((printed, i) => {
    test(`lower links at ${printed.linkAngle}°: hitch, pitch, instant centre, ratio, moments and pull`, () => {
      const { ball, direction } = steps.place;
      const ahead = value(steps.convergenceSide, i);
      expectPrinted(value(ball.x, i), printed.hitch[0], 0.1);
      expectPrinted(value(ball.z, i), printed.hitch[1], 0.1);
      expectPrinted((value(steps.body.pitch, i) * 180) / Math.PI, printed.pitch, 0.001);
      expectPrinted(value(ball.x, i) - ahead, printed.instantCentre[0], 0.5);
      const slope = value(direction.sin, i) / value(direction.cos, i);
      expectPrinted(value(ball.z, i) - ahead * slope, printed.instantCentre[1], 0.5);
      expectPrinted(value(steps.load.rise, i), printed.travelRatio, 1e-4);
      expectPrinted(value(steps.supply.testRise, i), printed.travelRatio, 1e-4);
      const perMetre = 1000;
      expectPrinted(value(steps.supply.ballsByArm, i) / perMetre, printed.moments[0], 1e-4);
      expectPrinted(value(steps.supply.testByArm, i) / perMetre, printed.moments[1], 1e-4);
      expectPrinted(value(steps.topLinkForce, i), printed.topLink, 1e-4);
    });
  });

  test('a top link one millimetre longer would show in every row but the level one', () => {
    const longer = withEdits(document, [{ path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' }]);
    rows.forEach((printed, i) => {
      const at = evaluated(questionOf(longer), 'raise', [places[i] as number], wanted, {
        mass: 1,
        carryHeight: highest,
        parkedPinHeight: lowest,
        topLinkWhileCarrying: 645.981,
      });
      const pitch = (at.value(at.steps.body.pitch) * 180) / Math.PI;
      expect(Math.abs(pitch - printed.pitch)).toBeGreaterThan(0.1);
    });
  });
});
