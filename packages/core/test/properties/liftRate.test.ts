import fc from 'fast-check';
import { expect, test } from 'vitest';
import { judgeSetup } from '../../src/engine/assess/index.ts';
import { readSetup, withEdits, type SetupDocument } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { documentOf, liftCases, tapePaths, tapes, unknownTo, type Unknown } from './generateLift.ts';

const setupsTried = Number(process.env['PROPERTY_LIFTS'] ?? 500);

const unknowns = fc.constantFrom<Unknown | null>(null, null, null, null, 'arms', 'arms', 'ballHeights', 'liftAtBalls');

/** Figures that people leave out most; what stands in for them is wide. */
const leavable = [
  'implement.centreAbove',
  'implement.mastSetback',
  'implement.carryHeight',
  'implement.parkedPinHeight',
  'tractor.liftTestMastHeight',
  'tractor.sidePlay',
  'tractor.lowerLinkLength',
  'coupler.mass',
  'coupler.hookBehind',
] as const;
const leftOut: fc.Arbitrary<readonly string[]> = fc.oneof(
  { weight: 49, arbitrary: fc.constant([]) },
  { weight: 1, arbitrary: fc.subarray([...leavable], { minLength: 1, maxLength: 2 }) },
);

interface Tried {
  readonly document: SetupDocument;
  readonly isMeasured: boolean;
}

/** Setups as they come in: ten figures off a tape, now and then some left out, loads from light to far too heavy. */
const setups: fc.Arbitrary<Tried> = fc
  .record({
    one: liftCases(),
    taped: tapePaths,
    unknown: unknowns,
    left: leftOut,
    heavier: even(0.4, 2.6),
  })
  .map(({ one, taped, unknown, left, heavier }) => {
    const mass = Math.round((one.implement['mass'] ?? 0) * heavier);
    const document = documentOf({ ...one, implement: { ...one.implement, mass } }, tapes(taped));
    const without = left.filter((path) => one.held !== 'bareBalls' || !path.startsWith('coupler.'));
    const edited = withEdits(document, [
      { path: 'tractor.category', value: '1' },
      { path: 'implement.category', value: '1' },
      ...(unknown === null ? [] : unknownTo(unknown, one)),
      ...without.map((path) => ({ path, value: undefined })),
    ]);
    return { document: edited, isMeasured: without.length === 0 };
  });

const percent = (part: number, whole: number): string => `${((100 * part) / Math.max(1, whole)).toFixed(2)} %`;
const listed = (counts: ReadonlyMap<string, number>): string =>
  [...counts]
    .sort()
    .map(([key, n]) => `${key} ${n}`)
    .join(', ');

function count(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}

/** What was counted over one kind of setups. */
class Tally {
  setups = 0;
  findings = 0;
  openSetups = 0;
  readonly open = new Map<string, number>();

  report(title: string): string {
    const open = [...this.open.values()].reduce((sum, n) => sum + n, 0);
    const where = open === 0 ? '' : `: ${listed(this.open)}`;
    return `${title}: unresolved ${open} of ${this.findings} findings (${percent(open, this.findings)}), in ${this.openSetups} of ${this.setups} setups (${percent(this.openSetups, this.setups)})${where}`;
  }
}

test(`unresolved findings over ${setupsTried} generated setups`, () => {
  const statuses = new Map<string, number>();
  const [measured, lacking] = [new Tally(), new Tally()];
  fc.assert(
    fc.property(setups, ({ document, isMeasured }) => {
      const reading = readSetup(document);
      if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
      const { findings } = judgeSetup(reading.setup, { thresholds: false });
      const computed = findings.filter(({ margin }) => margin !== null);
      const tally = isMeasured ? measured : lacking;
      for (const { id, status, unresolved, margin } of computed) {
        count(statuses, `${id} ${status}`);
        if (unresolved) count(tally.open, id);
        expect([margin?.low, margin?.high].some(Number.isNaN), id).toBe(false);
      }
      tally.setups += 1;
      tally.findings += computed.length;
      if (computed.some((finding) => finding.unresolved)) tally.openSetups += 1;
    }),
    { numRuns: setupsTried, endOnFailure: true },
  );
  console.log(measured.report('everything measured'));
  console.log(lacking.report('something left out'));
  const throughLift = [...statuses].filter(([key]) => /^(lift|limit|pickUp|work|contact)/.test(key));
  console.log(listed(new Map(throughLift)));
  for (const status of ['pass', 'fail', 'undecided']) {
    expect(statuses.get(`lift.force ${status}`) ?? 0, status).toBeGreaterThan(setupsTried / 50);
  }
}, 300_000);
