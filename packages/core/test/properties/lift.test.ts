import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { Step } from '../../src/engine/formula/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import { openRun } from '../../src/engine/lift/run.ts';
import { throughLift, type LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { reader, type Box } from '../../src/engine/proof/index.ts';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import { evaluated, middles, questionOf, spaced } from '../references/engineAt.ts';
import { apart } from '../references/sideView.ts';
import { even } from '../even.ts';
import { documentOf, liftCases, tapes, tapePaths, unknownTo, type LiftCase, type Unknown } from './generateLift.ts';
import { openTruth, type Seen } from './liftTruth.ts';
import { numbers } from './numbers.ts';
import { middleOf, reportWidths, type Width } from './widths.ts';

describe('closure', () => {
  test('away from toggle every rod keeps its length to a billionth of a millimetre', () => {
    let worst = 0;
    let rods = 0;
    const kept = (miss: number): void => {
      worst = Math.max(worst, Math.abs(miss));
      rods += 1;
      expect(Math.abs(miss)).toBeLessThan(1e-9);
    };
    const wanted = ({ place, body, arm, topLink }: LiftSteps): Step[] => {
      if (arm === null) throw new Error('no arms');
      const points = [place.ball, body.origin, body.upper, arm.end, arm.rodFoot];
      return [...points.flatMap(({ x, z }) => [x, z]), topLink];
    };
    fc.assert(
      fc.property(liftCases(), (one) => {
        const lanes = spaced(31);
        const { steps, value } = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted);
        const { pivot, link, topPivot, upper, arm } = one.sideView;
        lanes.forEach((_, i) => {
          const at = ({ x, z }: { x: Step; z: Step }) => ({ x: value(x, i), z: value(z, i) });
          if (steps.arm === null) throw new Error('no arms');
          const [ball, end, foot, top] = [
            at(steps.place.ball),
            at(steps.arm.end),
            at(steps.arm.rodFoot),
            at(steps.body.upper),
          ];
          kept(apart(ball, pivot) - link);
          kept(apart(top, at(steps.body.origin)) - Math.hypot(upper.x, upper.z));
          kept(apart(top, topPivot) - value(steps.topLink));
          kept(apart(end, arm.pivot) - arm.length);
          kept(apart(end, foot) - arm.rod);
          kept(apart(foot, pivot) - Math.hypot(arm.along, arm.above));
        });
      }),
      { numRuns: 150 },
    );
    console.log(`closure: worst ${worst.toExponential(1)} mm over ${rods} rods`);
    expect(rods).toBe(150 * 31 * 6);
  });
});

const setupsTried = Number(process.env['PROPERTY_SETUPS'] ?? 24);
const samplesEach = 1000;
/** Where only the proven lift is looked at besides. */
const fewerSamples = 200;
/** Rounding in sums of thousands of millimetres or kilograms. */
const rounding = 1e-7;

/** The bounds of one quantity over the whole box [mm, deg, kg]. */
type Bounds = ReadonlyMap<Seen, Interval>;

function boundsOver(question: SetupQuestion, box: Box, forceOnly = false): Bounds {
  const at = reader(box);
  const bounds = new Map<Seen, Interval>();
  const ofCheck = (seen: Seen, id: string): void => {
    const check = question.checks.find((one) => one.id === id);
    if (check !== undefined) bounds.set(seen, check.measure(at).quantity);
  };
  ofCheck('force', 'lift.force');
  if (forceOnly || !question.lift.structure.linkage) return bounds;
  ofCheck('closes', 'lift.linkage');
  ofCheck('clearance', 'limit.clearance');
  ofCheck('topLink', 'front.topLink');
  ofCheck('tyreGap', 'contact.tyre');
  const { formula, steps } = throughLift(question.lift.structure, 'stroke');
  const over = openRun(formula, question.lift.leaves, [steps.pitch]);
  const inDegrees = ({ low, high }: Interval): Interval => ({
    low: (low * 180) / Math.PI,
    high: (high * 180) / Math.PI,
  });
  bounds.set('pitchLeast', inDegrees(over.least(steps.pitch)(at)));
  bounds.set('pitchGreatest', inDegrees(over.greatest(steps.pitch)(at)));
  return bounds;
}

/** Settings at one place each; what is uncertain keeps its range, but for the share of the supply where that is fixed. */
function boxOf({ ledger }: SetupQuestion, share: number, provenOnly: boolean): Box {
  return ledger.entries.map(({ role, range, path }) => {
    if (provenOnly && path === 'tractor.liftSupplyShare') return { low: 0, high: 0 };
    if (role === 'uncertain') return range;
    const set = role === 'choice' ? range.low : range.low + share * (range.high - range.low);
    return { low: set, high: set };
  });
}

function point(box: Box, pick: (range: Interval, index: number) => number): Box {
  return box.map((range, index) => {
    const value = range.low === range.high ? range.low : pick(range, index);
    return { low: value, high: value };
  });
}

function expectInside(bounds: Bounds, seen: ReadonlyMap<Seen, number>): void {
  for (const [what, value] of seen) {
    const { low, high } = bounds.get(what) ?? { low: -Infinity, high: Infinity };
    if (!(value >= low - rounding && value <= high + rounding)) {
      throw new Error(`${what}: ${value} outside [${low}, ${high}]`);
    }
  }
}

interface Spread {
  low: number;
  high: number;
  lowAt: Box;
  highAt: Box;
}

/** Random truths first; then, from the outermost of them, each input by itself to its ends as long as that goes further. */
function spreadOver(question: SetupQuestion, box: Box, bounds: Bounds, how: { seed: number; samples: number }) {
  const look = openTruth(question);
  const found = new Map<Seen, Spread>();
  const note = (at: Box): void => {
    const seen = look(reader(at));
    expectInside(bounds, seen);
    for (const [what, value] of seen) {
      const known = found.get(what) ?? { low: value, high: value, lowAt: at, highAt: at };
      if (value < known.low) [known.low, known.lowAt] = [value, at];
      if (value > known.high) [known.high, known.highAt] = [value, at];
      found.set(what, known);
    }
  };
  const stream = numbers(how.seed);
  for (let i = 0; i < how.samples; i += 1) {
    note(point(box, ({ low, high }) => low + stream.next().value * (high - low)));
  }
  const sampled = new Map([...found].map(([what, { low, high }]) => [what, high - low]));
  const open = box.flatMap(({ low, high }, index) => (low < high ? [index] : []));
  for (const what of bounds.keys()) {
    for (const side of ['lowAt', 'highAt'] as const) {
      for (let round = 0; round < 2; round += 1) {
        for (const index of open) {
          const { low, high } = box[index] as Interval;
          for (const end of [low, (low + high) / 2, high]) {
            const from = (found.get(what) as Spread)[side];
            note(from.map((range, i) => (i === index ? { low: end, high: end } : range)));
          }
        }
      }
    }
  }
  return { found, sampled };
}

describe('bounds through the lift against sampled truth', () => {
  const widths: Width[] = [];

  const tried = (
    title: string,
    runs: number,
    change: (document: SetupDocument, one: LiftCase) => SetupDocument,
  ): void => {
    test(`${title}: ${samplesEach} truths a setup stay inside, ${runs} setups`, () => {
      const here: Width[] = [];
      fc.assert(
        fc.property(liftCases(), tapePaths, fc.nat(), even(0, 1), (one, taped, seed, share) => {
          const question = questionOf(change(documentOf(one, tapes(taped)), one));
          middles(question);
          for (const provenOnly of [false, true]) {
            const box = boxOf(question, share, provenOnly);
            const bounds = boundsOver(question, box, provenOnly);
            const samples = provenOnly ? fewerSamples : samplesEach;
            const { found, sampled } = spreadOver(question, box, bounds, { seed, samples });
            for (const [what, { low, high }] of bounds) {
              const spread = found.get(what);
              if (spread === undefined || spread.high - spread.low < 0.01 || high > 1e6) continue;
              here.push({
                what: provenOnly ? `${what}, as proven` : what,
                searched: (high - low) / (spread.high - spread.low),
                sampled: (high - low) / (sampled.get(what) ?? NaN),
              });
            }
          }
        }),
        { numRuns: runs },
      );
      reportWidths(title, here);
      widths.push(...here);
    });
  };

  const without = (unknown: Unknown) => (document: SetupDocument, one: LiftCase) =>
    withEdits(document, unknownTo(unknown, one));

  tried('linkage, arms and both ratings', setupsTried / 2, (document) => document);
  tried('arms with their angles', setupsTried / 8, without('ballHeights'));
  tried('linkage without arms', setupsTried / 8, without('arms'));
  tried('one rating', setupsTried / 8, without('liftAtBalls'));
  tried('ratings alone', setupsTried / 8, without('linkage'));
  tried('a top link set apart for carrying', setupsTried / 8, (document) =>
    withEdits(document, [{ path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' }]),
  );
  tried('a lift cylinder', setupsTried / 8, (document, one) => withEdits(document, unknownTo('nothing', one)));

  test('ranges up to twenty times as wide, past where the loops close: every truth that closes stays inside', () => {
    let closing = 0;
    let open = 0;
    fc.assert(
      fc.property(liftCases(), tapePaths, fc.nat(), even(3, 20), (one, taped, seed, times) => {
        const question = questionOf(documentOf(one, tapes(taped, times)));
        middles(question);
        const box = boxOf(question, 0.5, false);
        const bounds = boundsOver(question, box);
        const look = openTruth(question);
        const stream = numbers(seed);
        for (let i = 0; i < 300; i += 1) {
          const seen = look(reader(point(box, ({ low, high }) => low + stream.next().value * (high - low))));
          const closes = Math.min(seen.get('closes') ?? -1, seen.get('raiseCloses') ?? -1);
          if (closes > 0) expectInside(bounds, seen);
          if (closes > 0) closing += 1;
          else open += 1;
        }
      }),
      { numRuns: setupsTried },
    );
    console.log(`wide ranges: ${closing} truths that close stay inside, ${open} that do not close passed over`);
    expect(closing).toBeGreaterThan(100 * setupsTried);
    expect(open).toBeGreaterThan(setupsTried / 4);
  });

  test('in all of them the median bound is at most a quarter wider than the truth', () => {
    for (const what of new Set(widths.map((one) => one.what))) {
      reportWidths(
        what,
        widths.filter((one) => one.what === what),
      );
    }
    const asked = widths.filter(({ what }) => what !== 'closes' && what !== 'force, as proven');
    reportWidths('force, attitude, clearance, top link and tyre gap together', asked);
    expect(asked.length).toBeGreaterThan(100);
    expect(middleOf(asked.map(({ searched }) => searched))).toBeLessThanOrEqual(1.25);
  });
});
