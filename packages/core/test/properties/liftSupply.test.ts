import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate, openWorkspace, stepsFor, valueAt } from '../../src/engine/formula/index.ts';
import { ratedLift } from '../../src/engine/lift/ratedLift.ts';
import type { LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { withEdits } from '../../src/records/index.ts';
import { evaluated, middles, questionOf, spaced } from '../references/engineAt.ts';
import {
  armEndAt,
  ballAt,
  placed,
  slopeAt,
  upperAt,
  type Ball,
  type Body,
  type Point,
  type SideView,
} from '../references/sideView.ts';
import { weightsAt } from '../references/weights.ts';
import { even } from '../even.ts';
import { documentOf, liftCases, unknownTo, type Held, type LiftCase } from './generateLift.ts';

const lanes = spaced(25);
/** Step of the central differences in ball height [mm]. */
const step = 0.4;
/** The second test point lies this far behind the balls [mm]. */
const testDistance = 610;
const held = (...kinds: Held[]): fc.Arbitrary<Held> => fc.constantFrom(...kinds);
const figure = (of: Readonly<Record<string, number>>, key: string): number => of[key] ?? 0;

/** Any positive course of the arms' torque, in no unit: it is scaled to the ratings afterwards. */
const torques = fc.array(even(0.2, 5), {
  minLength: lanes.length,
  maxLength: lanes.length,
});

/** What a tractor's ratings leave out: which of them is printed. */
const printed = fc.constantFrom<readonly ('liftAtBalls' | 'liftAt610')[]>(
  ['liftAtBalls', 'liftAt610'],
  ['liftAtBalls', 'liftAt610'],
  ['liftAt610'],
  ['liftAtBalls'],
);

function heightsOf({ tractor }: LiftCase): number[] {
  const [low, high] = [figure(tractor, 'ballHeightLow'), figure(tractor, 'ballHeightHigh')];
  return lanes.map((lane) => low + lane * (high - low));
}

function rigid(view: SideView, height: number): { ball: Ball; body: Body } {
  const ball = ballAt(view, height);
  const body = ball === null ? null : upperAt(view, ball);
  if (ball === null || body === null) throw new Error('does not close');
  return { ball, body };
}

/** The frame of the lift test on the links of a case: no setback, its mast upright with the links level. */
function testFrame({ sideView, tractor }: LiftCase): SideView {
  const upper = { x: 0, z: figure(tractor, 'liftTestMastHeight') };
  const { pivot, topPivot, link } = sideView;
  const topLink = Math.hypot(pivot.x + link - topPivot.x, pivot.z + upper.z - topPivot.z);
  return { ...sideView, upper, onLink: null, topLink };
}

/** How far a point of the held body rises for a unit of the balls, from solved positions alone. */
function riseOf(view: SideView, height: number, point: Point): number {
  const at = (one: number): number => {
    const { body } = rigid(view, one);
    return placed(body.origin, point, body.pitch).z;
  };
  return slopeAt(at, height, step);
}

function armSpin(view: SideView, height: number): number {
  const angle = (one: number): number => {
    const arm = armEndAt(view, rigid(view, one).ball);
    if (arm === null) throw new Error('does not close');
    return arm.angle;
  };
  return slopeAt(angle, height, step);
}

/** What a torque of the arms lifts in the load's place, once everything else is lifted: virtual work from solved positions. */
function liftedBy(torque: number, one: LiftCase, view: SideView, height: number): number | null {
  const heightOf = (pick: (at: number) => number): number => slopeAt(pick, height, step);
  const rise = heightOf((at) => weightsAt(one, view, at).load.at.z);
  if (rise <= leastRise) return null;
  const others = heightOf((at) => {
    const { load, onBody, onLinks } = weightsAt(one, view, at);
    const besides = [...onBody, ...onLinks].filter((weight) => weight !== load);
    return besides.reduce((sum, { mass, at: point }) => sum + mass * point.z, 0);
  });
  return (torque * armSpin(view, height) - others) / rise;
}

/** Below this a load hardly rises: the lift counts it as rising so much. */
const leastRise = 0.05;
const asRated = { allowance: 1 };

type Rating = 'liftAtBalls' | 'liftAt610';

/** Rises of each rated test point for a unit turn of the arm [mm]. */
function risesByArm(one: LiftCase): Readonly<Record<Rating, number[]>> {
  const frame = testFrame(one);
  const heights = heightsOf(one);
  const spins = heights.map((height) => armSpin(one.sideView, height));
  return {
    liftAtBalls: spins.map((spin) => 1 / spin),
    liftAt610: heights.map((height, i) => riseOf(frame, height, { x: testDistance, z: 0 }) / (spins[i] as number)),
  };
}

/** Scales a torque until its smallest force at every rated point is at least the rating, and at one of them just that. */
function scaled(torque: readonly number[], one: LiftCase, ratings: readonly Rating[]): number[] {
  const rises = risesByArm(one);
  const factors = ratings.map((rating) => {
    const forces = torque.map((at, i) => at / (rises[rating][i] as number));
    return figure(one.tractor, rating) / Math.min(...forces);
  });
  return torque.map((at) => at * Math.max(...factors));
}

/** The least torque at each height that the ratings leave open: they prove no more than this. */
function leastTorque(one: LiftCase, ratings: readonly Rating[]): number[] {
  const rises = risesByArm(one);
  return lanes.map((_, i) =>
    Math.max(...ratings.map((rating) => figure(one.tractor, rating) * (rises[rating][i] as number))),
  );
}

function wanted({ proven, estimated, supply, topLink, body }: LiftSteps) {
  return [proven, estimated, topLink, body.spin, supply.lowAtBalls];
}

const missing = (ratings: readonly Rating[]): { path: string; value: undefined }[] =>
  (['liftAtBalls', 'liftAt610'] as const)
    .filter((rating) => !ratings.includes(rating))
    .map((rating) => ({ path: `tractor.${rating}`, value: undefined }));

describe('what the ratings prove, with the linkage known', () => {
  const kinds = held('bareBalls', 'uFrame', 'triangle');

  test('is never more than what any torque that keeps the ratings lifts, at any height', () => {
    let nearest = Infinity;
    fc.assert(
      fc.property(liftCases(kinds), torques, printed, (one, raw, ratings) => {
        const question = questionOf(withEdits(documentOf(one), missing(ratings)));
        const of = evaluated(question, 'stroke', lanes, wanted, asRated);
        const view = { ...one.sideView, topLink: of.value(of.steps.topLink) };
        const torque = scaled(raw, one, ratings);
        heightsOf(one).forEach((height, i) => {
          const capacity = liftedBy(torque[i] as number, one, view, height);
          if (capacity === null) return;
          const above = (capacity - of.value(of.steps.proven, i)) / figure(one.tractor, 'liftAtBalls');
          nearest = Math.min(nearest, above);
          expect(above).toBeGreaterThanOrEqual(-1e-8);
        });
      }),
      { numRuns: 150 },
    );
    console.log(
      `proven lift against torques that keep the ratings: nearest ${(100 * nearest).toExponential(1)} % of the rating below`,
    );
  });

  test('is all that they prove: the weakest torque that keeps them lifts just that, at every height', () => {
    fc.assert(
      fc.property(liftCases(kinds), printed, (one, ratings) => {
        const question = questionOf(withEdits(documentOf(one), missing(ratings)));
        const of = evaluated(question, 'stroke', lanes, wanted, asRated);
        const view = { ...one.sideView, topLink: of.value(of.steps.topLink) };
        const torque = leastTorque(one, ratings);
        heightsOf(one).forEach((height, i) => {
          const capacity = liftedBy(torque[i] as number, one, view, height);
          if (capacity === null) return;
          expect((of.value(of.steps.proven, i) - capacity) / figure(one.tractor, 'liftAtBalls')).toBeCloseTo(0, 8);
        });
      }),
      { numRuns: 60 },
    );
  });

  test('the estimate is the constant torque whose smallest force is the rating, the lower of two', () => {
    let wide = 0;
    fc.assert(
      fc.property(liftCases(kinds), printed, (one, ratings) => {
        const question = questionOf(withEdits(documentOf(one), missing(ratings)));
        const rises = risesByArm(one);
        const byRating = ratings.map((rating) => figure(one.tractor, rating) * Math.max(...rises[rating]));
        const constant = Math.min(...byRating);
        const found = question.lift.leaves.exact.get('constantTorque')?.(middles(question));
        if (found === undefined) throw new Error('no constant torque');
        // Heights looked at miss a little of the greatest rise, the pieces that it is bounded in hold all of it.
        expect(found.low).toBeLessThanOrEqual(constant * (1 + 1e-3));
        expect(found.high).toBeGreaterThanOrEqual(constant * (1 - 1e-9));
        wide = Math.max(wide, (found.high - found.low) / found.low);
        const of = evaluated(question, 'stroke', lanes, wanted, { ...asRated, constantTorque: constant });
        const view = { ...one.sideView, topLink: of.value(of.steps.topLink) };
        heightsOf(one).forEach((height, i) => {
          const estimate = liftedBy(constant, one, view, height);
          if (estimate === null) return;
          const high = Math.max(of.value(of.steps.proven, i), estimate);
          expect((of.value(of.steps.estimated, i) - high) / figure(one.tractor, 'liftAtBalls')).toBeCloseTo(0, 8);
        });
      }),
      { numRuns: 60 },
    );
    console.log(`constant torque with every input exact: bounded within ${(100 * wide).toFixed(2)} %`);
  });
});

/** The ratings' own formula at a load that stands level a distance behind the balls. */
function ratedAt(one: LiftCase, ratings: readonly Rating[], behind: number): number {
  const edits = [...unknownTo('linkage', one), ...missing(ratings)];
  const question = questionOf(withEdits(documentOf(one), edits));
  const { formula, low, behind: distance } = ratedLift(question.lift.structure);
  const space = openWorkspace(formula, 1);
  const given: Readonly<Record<string, number>> = {
    mass: 100,
    centreBehind: behind,
    liftAtBalls: figure(one.tractor, 'liftAtBalls'),
    liftAt610: figure(one.tractor, 'liftAt610'),
  };
  evaluate(space, stepsFor(formula, [low, distance]), {
    leaf: (index) => given[formula.leaves[index] ?? ''] ?? 0,
    lane: () => 0,
  });
  expect(valueAt(space, distance, 0)).toBeCloseTo(behind, 9);
  return valueAt(space, low, 0);
}

describe('what the ratings prove with no linkage known, at the top link and mast of the lift test', () => {
  const distances = even(0, 2500);

  for (const ratings of [['liftAtBalls', 'liftAt610'], ['liftAt610']] as const) {
    test(`is never more than what any torque that keeps ${ratings.join(' and ')} lifts`, () => {
      let compared = 0;
      let nearest = Infinity;
      fc.assert(
        fc.property(liftCases(held('bareBalls')), torques, distances, (one, raw, behind) => {
          const low = ratedAt(one, ratings, behind);
          const frame = testFrame(one);
          const torque = scaled(raw, one, ratings);
          const least = leastTorque(one, ratings);
          heightsOf(one).forEach((height, i) => {
            const rise = riseOf(frame, height, { x: behind, z: 0 });
            const tilt = slopeAt((at) => rigid(frame, at).body.pitch, height, step);
            const needsTailUp = ratings.length === 1 && behind < testDistance;
            if (rise <= 0 || (needsTailUp && tilt < 0)) return;
            for (const at of [torque[i] as number, least[i] as number]) {
              const share = (low * rise) / (at * armSpin(frame, height));
              nearest = Math.min(nearest, 1 - share);
              expect(share).toBeLessThanOrEqual(1 + 1e-8);
              compared += 1;
            }
          });
        }),
        { numRuns: 80 },
      );
      console.log(`ratings alone (${ratings.join(', ')}): nearest ${(100 * nearest).toFixed(3)} % below`);
      expect(compared).toBeGreaterThan(2000);
    });
  }

  test('with both ratings, at either test point it is the rating', () => {
    fc.assert(
      fc.property(liftCases(held('bareBalls')), (one) => {
        const both = ['liftAtBalls', 'liftAt610'] as const;
        expect(ratedAt(one, both, 0)).toBeCloseTo(figure(one.tractor, 'liftAtBalls'), 9);
        expect(ratedAt(one, both, testDistance)).toBeCloseTo(figure(one.tractor, 'liftAt610'), 9);
        expect(ratedAt(one, ['liftAt610'], 2 * testDistance)).toBeCloseTo(figure(one.tractor, 'liftAt610') / 2, 9);
      }),
      { numRuns: 20 },
    );
  });
});

describe('moving the load rearward', () => {
  const shift = even(1, 1500);

  test('never raises the lift where the linkage tilts the tail up', () => {
    let compared = 0;
    let fell = 0;
    fc.assert(
      fc.property(liftCases(), printed, shift, (one, ratings, by) => {
        const question = questionOf(withEdits(documentOf(one), missing(ratings)));
        const behind = one.implement['carriedMass'] === undefined ? 'centreBehind' : 'carriedBehind';
        const each = (instead: Readonly<Record<string, number>>) => {
          const { steps, value } = evaluated(question, 'stroke', lanes, wanted, instead);
          return lanes.map((_, i) => ({ spin: value(steps.body.spin, i), proven: value(steps.proven, i) }));
        };
        const back = each({ [behind]: figure(one.implement, behind) + by });
        each({}).forEach((here, i) => {
          const there = back[i] as typeof here;
          // A lift that can't even raise what is carried besides the load has nothing to lose.
          if (here.spin < 0 || here.proven < 0) return;
          expect(there.proven).toBeLessThanOrEqual(here.proven * (1 + 1e-12) + 1e-9);
          if (there.proven < here.proven) fell += 1;
          compared += 1;
        });
      }),
      { numRuns: 150 },
    );
    expect(compared).toBeGreaterThan(500);
    expect(fell).toBeGreaterThan(compared / 2);
  });

  test('never raises it with the ratings alone', () => {
    fc.assert(
      fc.property(liftCases(held('bareBalls')), even(-300, 2500), shift, (one, from, by) => {
        for (const ratings of [['liftAtBalls', 'liftAt610'], ['liftAt610']] as const) {
          expect(ratedAt(one, ratings, from + by)).toBeLessThanOrEqual(ratedAt(one, ratings, from) * (1 + 1e-12));
        }
      }),
      { numRuns: 60 },
    );
  });
});
