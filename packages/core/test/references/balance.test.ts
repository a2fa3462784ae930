import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BalanceSteps } from '../../src/engine/balance/balanceSteps.ts';
import { withEdits, type Edit } from '../../src/records/index.ts';
import type { SteeringRuleName } from '../../src/tables/index.ts';
import { even } from '../even.ts';
import { balanceCases, balanceDocument, everyLoader, type BalanceCase } from '../properties/generateBalance.ts';
import type { Held } from '../properties/generateLift.ts';
import { balanceAt } from './balanceAt.ts';
import { reactionsOf, type PointMass } from './balanceBody.ts';
import { everything, frontWeightsOf, hungAt, hungLevel, massOf, placedOn, supportsOf } from './balancePlaced.ts';
import { questionOf, spaced } from './engineAt.ts';

const lanes = spaced(7);
/** Of what everything weighs. */
const digits = 1e-9;

/** What the engine makes of a case at one place of the lift [kg]. */
type Loads = Readonly<Record<(typeof compared)[number], number>>;

const compared = [
  'front',
  'rear',
  'total',
  'frontFree',
  'base',
  'behind',
  'wanted',
  'spare',
  'spareOfTotal',
  'rearSpare',
  'ballast',
] as const;

const shares: Readonly<Record<SteeringRuleName, number>> = { ofTractor: 0.2, ofTotal: 0.2, halfOfFront: 0.5 };

/** The same from the rest of one rigid body; the ballast from two trials of it, for the load on an axle is linear in a mass. */
function bodiesAtRest(one: BalanceCase, behind: readonly PointMass[]): Loads {
  const on = supportsOf(one);
  const standing = placedOn(one, behind);
  const loads = (masses: readonly PointMass[], carried: readonly PointMass[]) => {
    const { left, right, front } = reactionsOf([...masses, ...carried], on);
    const total = massOf([...masses, ...carried]);
    const base = massOf([...standing.tractor, ...standing.added, ...standing.loader]);
    const frontFree = reactionsOf(masses, on).front;
    const wanted = shares[one.rule] * { ofTractor: base, ofTotal: total, halfOfFront: frontFree }[one.rule];
    return { front, rear: left + right, total, frontFree, base, wanted, spare: front - wanted };
  };
  const spareWith = (mass: number): number => {
    const weighted = { ...standing, frontWeights: frontWeightsOf(one, mass), behind: [] };
    return loads(everything(weighted), behind).spare;
  };
  const here = loads(everything({ ...standing, behind: [] }), behind);
  const trial = here.total;
  const ballast = (trial * spareWith(0)) / (spareWith(0) - spareWith(trial));
  expect(Math.abs(spareWith(ballast)) / trial).toBeLessThan(1e-11);
  return {
    ...here,
    behind: massOf(behind),
    spareOfTotal: here.front - 0.2 * here.total,
    rearSpare: here.rear - 0.2 * here.total,
    ballast,
  };
}

const wanted = (steps: BalanceSteps) => [
  ...compared.map((what) => steps[what]),
  steps.lift.ballHeight,
  steps.lift.topLink,
];

function worstDifference(ours: Loads, theirs: Loads): number {
  const differences = compared.map((what) => {
    const share = Math.abs(ours[what] - theirs[what]) / theirs.total;
    expect(share, `${what}: ${ours[what]} where the bodies at rest say ${theirs[what]}`).toBeLessThan(digits);
    return share;
  });
  return Math.max(...differences);
}

/** Engine and bodies at rest at every place of a course, by an attitude at work; the largest difference, as a share of the whole mass. */
function compareAlong(
  one: BalanceCase,
  course: 'stroke' | 'raise',
  workPitch: number,
  edits: readonly Edit[] = [],
): number {
  const question = questionOf(withEdits(balanceDocument(one), edits));
  const { steps, value } = balanceAt(question, course, lanes, wanted, { workPitch });
  const view = { ...one.lift.sideView, topLink: value(steps.lift.topLink) };
  const worst = lanes.map((_, i) => {
    const ours = Object.fromEntries(compared.map((what) => [what, value(steps[what], i)])) as Loads;
    return worstDifference(ours, bodiesAtRest(one, hungAt(one, view, value(steps.lift.ballHeight, i))));
  });
  return Math.max(...worst);
}

const runs = 45;

describe('axle loads against the rest of one rigid body', () => {
  for (const loaders of everyLoader) {
    const weighed = loaders.weighedWithLoader ? 'weighed with it' : 'weighed without it';
    test(`loader ${loaders.loader}, ${weighed}: every load, share and ballast at every height, ${runs} setups`, () => {
      const seen = new Set<string>();
      let worst = 0;
      fc.assert(
        fc.property(balanceCases(fc.constant(loaders)), even(-3, 3), (one, workPitch) => {
          worst = Math.max(worst, compareAlong(one, 'stroke', workPitch));
          seen.add(one.lift.held);
        }),
        { numRuns: runs },
      );
      console.log(`loader ${loaders.loader}, ${weighed}: worst ${worst.toExponential(1)} of the whole mass`);
      expect(seen.size).toBe(6);
    });
  }

  test('a top link set apart for carrying: every load of the raise by itself, 40 setups', () => {
    const edits = [{ path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' }];
    fc.assert(
      fc.property(balanceCases(), even(-15, 15), (one, longer) => {
        const between = one.lift.sideView.topLink + longer;
        const limits = { path: 'tractor.topLinkLength.adjustable.between', value: [between, between] };
        compareAlong(one, 'raise', 0, [...edits, limits]);
      }),
      { numRuns: 40 },
    );
  });

  test('nothing for a top link to hold: links and implement level, 60 setups', () => {
    const kinds = fc.constantFrom<Held[]>('bareBalls', 'clawEnds', 'hookEnds', 'bar');
    const sums = ['front', 'rear', 'total', 'behind', 'spare', 'ballast'] as const;
    fc.assert(
      fc.property(balanceCases(undefined, kinds), (one) => {
        const edits = [{ path: 'implement.mounting', value: 'twoPointsAndWheels' }];
        const question = questionOf(withEdits(balanceDocument(one), edits));
        expect(question.balance.structure.held).toBe(false);
        const { steps, value } = balanceAt(question, 'stroke', [0.5], wanted);
        const theirs = bodiesAtRest(one, hungLevel(one));
        for (const what of sums) {
          const share = Math.abs(value(steps[what]) - theirs[what]) / theirs.total;
          expect(share, `${what}: ${value(steps[what])} where the bodies at rest say ${theirs[what]}`).toBeLessThan(
            digits,
          );
        }
      }),
      { numRuns: 60 },
    );
  });
});
