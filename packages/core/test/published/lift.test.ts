import { describe, expect } from 'vitest';
import { evaluate, openFormula, openWorkspace, stepsFor, valueAt } from '../../src/engine/formula/index.ts';
import { pushOf } from '../../src/engine/lift/supply.ts';
import { planeOf } from '../../src/engine/linkage/index.ts';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import { minimumLift, minimumLiftFigures } from '../../src/tables/minimumLift.ts';
import { example } from '../asked.ts';
import { evaluated, questionOf } from '../references/engineAt.ts';
import { rootOf } from '../references/sideView.ts';
import { published } from './register.ts';
import { rises, sum } from './rows.ts';

describe('the least lift that a tractor is asked to have 610 mm behind its balls', () => {
  const source = 'paes-118-2001';
  const locator = 'clause 6.3, table 5, as quoted';
  published(
    { source, locator, kind: 'computes', title: '65 kW at the drawbar ask for 20.15 kN, 0.31 kN for each kilowatt' },
    () => {
      expect(minimumLift(65)).toBeCloseTo(20.15, 9);
      expect(minimumLift(1)).toBeCloseTo(0.31, 9);
      expect(minimumLift(65.001)).toBeCloseTo(20.15, 3);
    },
  );
  published({ source, locator, kind: 'computes', title: '25, 20 and 100 kW ask for 7.75, 6.2 and 25.575 kN' }, () => {
    expect(minimumLift(25)).toBeCloseTo(7.75, 9);
    expect(minimumLift(20)).toBeCloseTo(6.2, 9);
    expect(minimumLift(100)).toBeCloseTo(25.575, 9);
    expect(rises([10, 64, 65, 66, 100, 200].map(minimumLift))).toBe(true);
  });
  published({ source, locator, kind: 'reads', title: 'four figures: 65 kW, 0.31, 20.15 and 0.155' }, () => {
    expect(minimumLiftFigures).toHaveLength(4);
    expect(minimumLiftFigures.every((figure) => figure.status === 'readSecondHand')).toBe(true);
    expect(sum(minimumLiftFigures.map(({ value }) => value))).toBeCloseTo(85.615, 9);
  });
});

describe('the push of a lift cylinder', () => {
  published(
    {
      source: 'exam-banks-hitch',
      locator: 'lift cylinder question, printed 69.3 kN',
      kind: 'computes',
      title: 'a bore of 70 mm at 18 MPa pushes with 69.27 kN',
    },
    () => {
      const writer = openFormula();
      const push = pushOf(planeOf(writer));
      const formula = writer.finish();
      const space = openWorkspace(formula, 1);
      const given: Readonly<Record<string, number>> = { cylinderBore: 70, liftPressure: 180 };
      evaluate(space, stepsFor(formula, [push]), {
        leaf: (index) => given[formula.leaves[index] ?? ''] ?? NaN,
        lane: () => 0,
      });
      const kilonewtons = (valueAt(space, push, 0) * 9.80665) / 1000;
      expect(Math.abs(kilonewtons - 69.27)).toBeLessThanOrEqual(0.005);
      expect(kilonewtons.toFixed(1)).toBe('69.3');
    },
  );
});

/** Links of a length as seen from above on given spreads, and where their lines meet ahead of the balls [mm]. */
function convergence(ballSpan: number, frontSpan: number, planLength: number): number {
  const document: SetupDocument = {
    hitchwright: 1,
    units: 'metric',
    tractor: {
      lowerBallWidth: 45,
      lowerLinkLength: Math.hypot(planLength, (ballSpan - frontSpan) / 2),
      lowerLinkPivotSpan: frontSpan,
      lowerLinkPivotBehindAxle: 100,
      lowerLinkPivotHeight: 500,
      topLinkPivotBehindAxle: 200,
      topLinkPivotHeight: 1000,
      topLinkLength: { adjustable: { between: [600, 900] } },
      ballHeightLow: 200,
      ballHeightHigh: 1000,
    },
    implement: { mounting: 'threePoint', shoulderSpan: ballSpan - 45, mastHeight: 610, mastSetback: 0 },
  };
  const { steps, value } = evaluated(questionOf(document), 'stroke', [0], (all) => [all.convergencePlan]);
  return value(steps.convergencePlan);
}

describe('printed spreads of the links against the printed convergence', () => {
  // Ball centres 870 and 1010: hitch figures 5 and 6. Front spreads and convergence: the two pages.
  const rows = [
    { category: '2', ballSpan: 870, front: [390, 505], meets: [1800, 2400], lengths: [993, 1007] },
    { category: '3', ballSpan: 1010, front: [480, 635], meets: [1900, 2700], lengths: [997, 1002] },
  ] as const;
  for (const { category, ballSpan, front, meets, lengths } of rows) {
    for (const source of ['manual-seed-drill', 'manual-plough'] as const) {
      published(
        {
          source,
          locator: source === 'manual-seed-drill' ? 'p. 19, hitch table' : 'p. 43, hitch table',
          kind: 'computes',
          title: `category ${category}: links about ${lengths.join('–')} mm long meet ${meets.join('–')} mm ahead of balls ${ballSpan} apart`,
        },
        () => {
          front.forEach((spread, i) => {
            const printed = meets[i] ?? NaN;
            const ends = [convergence(ballSpan, spread, lengths[0]), convergence(ballSpan, spread, lengths[1])];
            const rounding = (0.5 * printed) / 1000;
            expect(Math.min(...ends)).toBeLessThanOrEqual(printed + rounding);
            expect(Math.max(...ends)).toBeGreaterThanOrEqual(printed - rounding);
            const one = (lengths[0] + lengths[1]) / 2;
            expect(Math.abs(convergence(ballSpan, spread, one) / printed - 1)).toBeLessThan(0.008);
          });
        },
      );
    }
  }
});

describe('the mast of a category 1 linkage', () => {
  const source = 'forum-mast-adjustment';
  const locator = 'thread 320699, on ASAE S217.12';
  const tractor = example('box-blade-direct');
  const standing = (ballHeight: number): SetupDocument =>
    withEdits(tractor, [
      { path: 'coupler', value: undefined },
      { path: 'implement.mastHeight', value: 457 },
      { path: 'implement.mastSetback', value: 0 },
      { path: 'implement.workPinHeight', value: ballHeight },
    ]);
  /** Top link that leans the mast by an angle with the balls at a height, and how it then stands there. */
  const leaning = (ballHeight: number, degrees: number) => {
    const question = questionOf(standing(ballHeight));
    const own = evaluated(question, 'carry', [0], (all) => [all.workTopLink], { workPitch: degrees });
    const topLink = own.value(own.steps.workTopLink);
    const apart = questionOf(
      withEdits(standing(ballHeight), [{ path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' }]),
    );
    const there = evaluated(apart, 'carry', [0], (all) => [all.body.pitch], {
      topLinkWhileCarrying: topLink,
      carryHeight: ballHeight,
    });
    return { topLink, pitch: (there.value(there.steps.body.pitch) * 180) / Math.PI };
  };
  published(
    {
      source,
      locator,
      kind: 'computes',
      title: 'an invented category 1 linkage stands its mast 5° either way with the balls at 200 and at 508 mm',
    },
    () => {
      const ends = (tractor['tractor'] as { topLinkLength: { adjustable: { between: number[] } } }).topLinkLength;
      const [shortest = NaN, longest = NaN] = ends.adjustable.between;
      const wanted = [200, 508].flatMap((height) => [-5, 5].map((degrees) => ({ height, degrees })));
      const found = wanted.map(({ height, degrees }) => ({ degrees, ...leaning(height, degrees) }));
      for (const { degrees, topLink, pitch } of found) {
        expect(topLink).toBeGreaterThanOrEqual(shortest);
        expect(topLink).toBeLessThanOrEqual(longest);
        expect(pitch).toBeCloseTo(degrees, 9);
      }
      const lengths = found.map(({ topLink }) => topLink);
      expect(Math.max(...lengths) - Math.min(...lengths)).toBeGreaterThan(100);
      expect(leaning(508, -9).topLink).toBeGreaterThan(longest);
    },
  );
});

describe('the ratio of travels', () => {
  published(
    {
      source: 'common-practice',
      locator: 'owners’ rule: lift goes down as travel goes up',
      kind: 'computes',
      title: 'balls 12 in up, tip 24 in up: half of the lift at the balls is left at the tip',
    },
    () => {
      const document = withEdits(example('box-blade-direct'), [
        { path: 'coupler', value: undefined },
        { path: 'tractor.liftAt610', value: undefined },
      ]);
      const question = questionOf(document);
      const at = (centreBehind: number) =>
        evaluated(question, 'stroke', [0.6], (all) => [all.load.rise, all.proven], {
          centreBehind,
          liftAtBalls: 1000,
          allowance: 1,
        });
      const ratio = (behind: number): number => {
        const { steps, value } = at(behind);
        return value(steps.load.rise);
      };
      const tip = rootOf((behind) => ratio(behind) - 24 / 12, 0, 20000);
      if (tip === null) throw new Error('no point rises twice as far as the balls');
      const { steps, value } = at(tip);
      expect(value(steps.proven) / 1000).toBeCloseTo(0.5, 9);
      const level = at(0);
      expect(level.value(level.steps.proven)).toBeGreaterThan(900);
    },
  );
});
