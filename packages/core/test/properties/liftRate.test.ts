import fc from 'fast-check';
import { expect, test } from 'vitest';
import { judgeSetup } from '../../src/engine/assess/index.ts';
import { readSetup, withEdits, type SetupDocument } from '../../src/records/index.ts';
import { documentOf, liftCases, tapePaths, tapes, unknownTo, type Unknown } from './generateLift.ts';

const setupsTried = Number(process.env['PROPERTY_LIFTS'] ?? 500);

const unknowns = fc.constantFrom<Unknown | null>(null, null, null, 'arms', 'ballHeights', 'linkage', 'liftAtBalls');

/** Figures that people leave out most; what stands in for them is wide. */
const leftOut = fc.subarray(
  [
    'implement.centreAbove',
    'implement.mastSetback',
    'implement.carryHeight',
    'implement.parkedPinHeight',
    'tractor.liftTestMastHeight',
    'tractor.sidePlay',
    'coupler.mass',
    'coupler.hookBehind',
  ],
  { maxLength: 3 },
);

/** Setups as they come in: ten figures off a tape, some left out, loads around what the lift is good for. */
const setups: fc.Arbitrary<SetupDocument> = fc
  .record({
    one: liftCases(),
    taped: tapePaths,
    times: fc.constantFrom(1, 1, 2, 4),
    unknown: unknowns,
    left: leftOut,
    heavier: fc.double({ min: 0.6, max: 1.9, noNaN: true }),
  })
  .map(({ one, taped, times, unknown, left, heavier }) => {
    const mass = Math.round((one.implement['mass'] ?? 0) * heavier);
    const document = documentOf({ ...one, implement: { ...one.implement, mass } }, tapes(taped, times));
    return withEdits(document, [
      { path: 'tractor.category', value: '1' },
      { path: 'implement.category', value: '1' },
      ...(unknown === null ? [] : unknownTo(unknown, one)),
      ...left
        .filter((path) => one.held !== 'bareBalls' || !path.startsWith('coupler.'))
        .map((path) => ({ path, value: undefined })),
    ]);
  });

test(`unresolved findings over ${setupsTried} generated setups`, () => {
  const statuses = new Map<string, number>();
  const unresolved = new Map<string, number>();
  let findings = 0;
  let open = 0;
  fc.assert(
    fc.property(setups, (document) => {
      const reading = readSetup(document);
      if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
      const judged = judgeSetup(reading.setup, { thresholds: false }).findings;
      const computed = judged.filter(({ margin }) => margin !== null);
      for (const { id, status, unresolved: isOpen, margin } of computed) {
        const key = `${id} ${status}`;
        statuses.set(key, (statuses.get(key) ?? 0) + 1);
        if (isOpen) unresolved.set(id, (unresolved.get(id) ?? 0) + 1);
        expect(Number.isNaN(margin?.low ?? 0) || Number.isNaN(margin?.high ?? 0), id).toBe(false);
      }
      findings += computed.length;
      if (computed.some((finding) => finding.unresolved)) open += 1;
    }),
    { numRuns: setupsTried },
  );
  const of = (ids: ReadonlyMap<string, number>): string => [...ids].map(([id, n]) => `${id} ${n}`).join(', ');
  const count = [...unresolved.values()].reduce((sum, n) => sum + n, 0);
  const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(2)} %`;
  console.log(
    `unresolved: ${count} of ${findings} findings (${percent(count, findings)}), in ${open} of ${setupsTried} setups (${percent(open, setupsTried)})${count === 0 ? '' : `: ${of(unresolved)}`}`,
  );
  console.log(of(new Map([...statuses].filter(([key]) => /^(lift|limit|pickUp|work|contact)/.test(key)).sort())));
  const has = (key: string): number => statuses.get(key) ?? 0;
  for (const status of ['pass', 'fail', 'undecided']) expect(has(`lift.force ${status}`), status).toBeGreaterThan(10);
});
