import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import { reader, type Box } from '../../src/engine/proof/index.ts';
import { withEdits, type Edit } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { questionOf } from '../references/engineAt.ts';
import { tapePaths, tapes, type Spoken } from './generateLift.ts';
import { shaftCases, type ShaftCase } from './generateShaft.ts';
import { shaftDocument, shaftTapePaths, shaftTapes } from './generateShaftDocument.ts';
import { boxOf, pointIn } from './boxes.ts';
import { numbers } from './numbers.ts';
import { openShaftTruth, type SeenOfShaft } from './shaftTruth.ts';
import { middleOf } from './widths.ts';

const setupsTried = Number(process.env['PROPERTY_SETUPS'] ?? 24);
const samplesEach = 1000;
/** Rounding in sums of thousands of millimetres. */
const rounding = 1e-7;

type Bounds = ReadonlyMap<SeenOfShaft, Interval>;

/** What every check of the drive is bounded to over a box [mm, deg]. */
function boundsOver(question: SetupQuestion, box: Box): Bounds {
  const at = reader(box);
  const isOfShaft = (id: string): boolean => id.startsWith('shaft.') && id !== 'shaft.power' && id !== 'shaft.series';
  return new Map(
    question.checks
      .filter(({ id }) => isOfShaft(id))
      .map(({ id, measure }) => [id as SeenOfShaft, measure(at).quantity]),
  );
}

interface Sampled {
  readonly spread: ReadonlyMap<SeenOfShaft, Interval>;
  readonly closing: number;
}

/** Looks at truths in the box; every one that closes has to lie inside the bounds. */
function sampled(question: SetupQuestion, box: Box, bounds: Bounds, seed: number): Sampled {
  const look = openShaftTruth(question);
  const stream = numbers(seed);
  const spread = new Map<SeenOfShaft, Interval>();
  let closing = 0;
  for (let i = 0; i < samplesEach; i += 1) {
    const seen = look(reader(pointIn(box, stream)));
    if ((seen.get('closes') ?? -1) <= 0) continue;
    closing += 1;
    for (const [what, { low, high }] of bounds) {
      const value = seen.get(what) ?? NaN;
      if (!(value >= low - rounding && value <= high + rounding)) {
        throw new Error(`${what}: ${value} outside [${low}, ${high}]`);
      }
      const known = spread.get(what) ?? { low: value, high: value };
      spread.set(what, { low: Math.min(value, known.low), high: Math.max(value, known.high) });
    }
  }
  return { spread, closing };
}

interface Width {
  readonly what: string;
  readonly ratio: number;
  readonly width: number;
}

function report(title: string, widths: readonly Width[]): void {
  for (const what of new Set(widths.map((one) => one.what))) {
    const these = widths.filter((one) => one.what === what);
    const ratios = these.map(({ ratio }) => ratio).filter((ratio) => Number.isFinite(ratio));
    const median = `median width ${middleOf(these.map(({ width }) => width)).toPrecision(3)}`;
    const over = `over the sampled spread median ${middleOf(ratios).toFixed(2)}, worst ${Math.max(...ratios).toFixed(2)}`;
    console.log(`${title}, ${what}: ${median}${ratios.length === 0 ? '' : `; ${over}`}; ${these.length} bounds`);
  }
}

/** How the figures are said: exactly, as a tape leaves them open, or as widely as a guess. */
type Saying = (lift: readonly string[], drive: readonly string[], times: number) => Spoken;

const taped: Saying = (lift, drive) => shaftTapes(drive, tapes(lift));
const apart: Edit[] = [
  { path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' },
  { path: 'implement.turnsWhileRaised', value: false },
];

const sayings: readonly (readonly [string, number, Saying, readonly Edit[]])[] = [
  ['exact', 1 / 3, () => (_, value) => value, []],
  ['taped', 2 / 3, taped, []],
  ['taped, top link set apart and drive off for carrying', 1 / 6, taped, apart],
  ['wide', 2 / 3, (lift, drive, times) => shaftTapes(drive, tapes(lift, times), times), []],
];

describe('bounds of the drive against sampled truth', () => {
  for (const [title, share, saying, edits] of sayings) {
    const runs = Math.ceil(setupsTried * share);
    test(`${title}: ${samplesEach} truths a setup stay inside, ${runs} setups`, () => {
      const widths: Width[] = [];
      let closing = 0;
      const reads = fc.record({ lift: tapePaths, drive: shaftTapePaths, times: even(3, 12) });
      const inputs = [shaftCases(), reads, fc.nat(), even(0, 1)] as const;
      fc.assert(
        fc.property(...inputs, (one, { lift, drive, times }, seed, at) => {
          const question = questionOf(withEdits(shaftDocument(one, saying(lift, drive, times)), edits));
          const box = boxOf(question, at);
          const bounds = boundsOver(question, box);
          expect(bounds.size).toBe(8);
          const found = sampled(question, box, bounds, seed);
          closing += found.closing;
          for (const [what, { low, high }] of bounds) {
            const spread = found.spread.get(what);
            if (spread === undefined || high - low < 1e-6 || high - low > 1e6) continue;
            widths.push({ what, width: high - low, ratio: (high - low) / (spread.high - spread.low) });
          }
        }),
        { numRuns: runs, endOnFailure: true },
      );
      report(title, widths);
      console.log(`${title}: ${closing} truths that close`);
      expect(closing).toBeGreaterThan((runs * samplesEach) / 2);
    });
  }
});

test('a drive that is straight from above is bounded as tightly where it runs straight through as anywhere else', () => {
  const angles = ['tractorJoint', 'implementJoint', 'tractorJointRaised', 'implementJointRaised'] as const;
  fc.assert(
    fc.property(shaftCases(), ({ lift, drive, ...rest }) => {
      const inMiddle = { stubAside: 0, inputAside: 0, inputYaw: null, shiftLeft: 0, shiftRight: 0, sway: 0 };
      const tractor = { ...lift.tractor, sidePlay: 0 };
      const one: ShaftCase = { ...rest, lift: { ...lift, tractor }, drive: { ...drive, ...inMiddle } };
      const question = questionOf(shaftDocument(one));
      const bounds = boundsOver(question, boxOf(question, 0.5));
      for (const angle of angles) {
        const { low, high } = bounds.get(`shaft.${angle}`) ?? { low: 0, high: 180 };
        expect(high - low, angle).toBeLessThan(1);
      }
    }),
    { numRuns: 25, endOnFailure: true },
  );
});
