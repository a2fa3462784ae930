import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import { reader, type Box } from '../../src/engine/proof/index.ts';
import { withEdits, type Edit } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { questionOf } from '../references/engineAt.ts';
import { balanceCases, balanceDocument, balanceTapePaths, balanceTapes } from './generateBalance.ts';
import { tapePaths, tapes } from './generateLift.ts';
import { boundsOf, openBalanceTruth, type Told } from './balanceTruth.ts';
import { boxOf, pointIn } from './boxes.ts';
import { numbers } from './numbers.ts';
import { middleOf, reportWidths, type Width } from './widths.ts';

const setupsTried = Number(process.env['PROPERTY_SETUPS'] ?? 24);
const samplesEach = 1000;
/** Rounding in sums of thousands of kilograms. */
const rounding = 1e-7;

/** What truths of a box come to, and the outermost of them. */
interface Spread {
  low: number;
  high: number;
  lowAt: Box;
  highAt: Box;
}

/** Looks at truths of a box: every one that closes has to lie inside the bounds. */
function openSpread(question: SetupQuestion, bounds: ReadonlyMap<Told, Interval>) {
  const look = openBalanceTruth(question);
  const found = new Map<Told, Spread>();
  let closing = 0;
  const note = (box: Box): void => {
    const truth = look(reader(box));
    if (!(truth.closes > 0)) return;
    closing += 1;
    for (const [what, { low, high }] of bounds) {
      const value = truth[what];
      if (!(value >= low - rounding && value <= high + rounding)) {
        throw new Error(`${what}: ${value} outside [${low}, ${high}]`);
      }
      const known = found.get(what) ?? { low: value, high: value, lowAt: box, highAt: box };
      if (value < known.low) [known.low, known.lowAt] = [value, box];
      if (value > known.high) [known.high, known.highAt] = [value, box];
      found.set(what, known);
    }
  };
  return { note, found, closing: () => closing };
}

type Opened = ReturnType<typeof openSpread>;

/** From the outermost truths that were found, each input by itself to its ends and middle as long as that goes further. */
function searchFurther({ note, found }: Opened, box: Box): void {
  const open = box.flatMap(({ low, high }, index) => (low < high ? [index] : []));
  for (const spread of found.values()) {
    for (const side of ['lowAt', 'highAt'] as const) {
      for (let round = 0; round < 2; round += 1) {
        for (const index of open) {
          const { low, high } = box[index] as Interval;
          for (const end of [low, (low + high) / 2, high]) {
            note(spread[side].map((range, i) => (i === index ? { low: end, high: end } : range)));
          }
        }
      }
    }
  }
}

const apart: Edit[] = [{ path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' }];
const unheld: Edit[] = [{ path: 'implement.mounting', value: 'twoPointsAndWheels' }];
const bySize: Edit[] = [
  { path: 'tractor.tyreLiquidMass', value: undefined },
  { path: 'tractor.tyreLiquid', value: { size: '16.9-34', fluid: 'calciumChloride3_5lb' } },
];

const linkage = ['lowerLinkLength', 'lowerLinkPivotBehindAxle', 'lowerLinkPivotHeight', 'lowerLinkPivotSpan'];
const topLink = ['topLinkPivotBehindAxle', 'topLinkPivotHeight', 'topLinkLength'];
const byCategory: Edit[] = [
  { path: 'tractor.category', value: '1' },
  ...[...linkage, ...topLink].map((key) => ({ path: `tractor.${key}`, value: undefined })),
];

/** How figures are said: setups as a share of those tried, times as wide as a tape leaves them, what else is edited. */
interface Saying {
  readonly title: string;
  readonly share: number;
  readonly times: number;
  readonly edits: readonly Edit[];
  /** Of the truths that are sampled, at least this share close. */
  readonly closing: number;
}

const sayings: readonly Saying[] = [
  { title: 'taped', share: 1, times: 1, edits: [], closing: 0.99 },
  { title: 'taped, top link set apart for carrying', share: 0.25, times: 1, edits: apart, closing: 0.99 },
  { title: 'taped, nothing for a top link to hold', share: 0.25, times: 1, edits: unheld, closing: 0.99 },
  { title: 'taped, tyre liquid by the size of the tyre', share: 0.25, times: 1, edits: bySize, closing: 0.99 },
  { title: 'up to eight times as wide', share: 0.5, times: 8, edits: [], closing: 0.3 },
  { title: 'a linkage by its category alone', share: 0.25, times: 1, edits: byCategory, closing: 0.05 },
];

describe('bounds of the axle loads against sampled truth', () => {
  const taped: Width[] = [];
  for (const { title, share, times, edits, closing: least } of sayings) {
    const runs = Math.ceil(setupsTried * share);
    test(`${title}: ${samplesEach} truths a setup stay inside, ${runs} setups`, () => {
      const widths: Width[] = [];
      let closing = 0;
      const said = fc.record({ lift: tapePaths, axles: balanceTapePaths, times: even(times === 1 ? 1 : 2, times) });
      fc.assert(
        fc.property(balanceCases(), said, fc.nat(), even(0, 1), (one, { lift, axles, times: by }, seed, at) => {
          const document = balanceDocument(one, balanceTapes(axles, tapes(lift, by), by));
          const question = questionOf(withEdits(document, edits));
          const box = boxOf(question, at);
          const bounds = boundsOf(question, reader(box));
          const opened = openSpread(question, bounds);
          const stream = numbers(seed);
          for (let i = 0; i < samplesEach; i += 1) opened.note(pointIn(box, stream));
          closing += opened.closing();
          const sampled = new Map([...opened.found].map(([what, { low, high }]) => [what, high - low]));
          searchFurther(opened, box);
          for (const [what, { low, high }] of bounds) {
            const spread = opened.found.get(what);
            if (spread === undefined || spread.high - spread.low < 0.01) continue;
            const searched = (high - low) / (spread.high - spread.low);
            widths.push({ what, searched, sampled: (high - low) / (sampled.get(what) ?? NaN) });
          }
        }),
        { numRuns: runs, endOnFailure: true },
      );
      reportWidths(title, widths);
      console.log(`${title}: ${closing} truths close`);
      expect(closing).toBeGreaterThan(least * runs * samplesEach);
      if (least > 0.9) taped.push(...widths);
    });
  }

  test('as a tape leaves them the median bound is at most a quarter wider than the truth', () => {
    for (const what of new Set(taped.map((one) => one.what))) {
      reportWidths(
        what,
        taped.filter((one) => one.what === what),
      );
    }
    reportWidths('all together', taped);
    expect(taped.length).toBeGreaterThan(4 * setupsTried);
    expect(middleOf(taped.map(({ searched }) => searched))).toBeLessThanOrEqual(1.25);
  });
});
