import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../src/engine/assess/candidate.ts';
import { candidatesOf, seekCures } from '../../src/engine/assess/cures.ts';
import { judgeSetup } from '../../src/engine/assess/judgeSetup.ts';
import { isMet, isToCure, isWorse } from '../../src/engine/assess/trials.ts';
import type { Finding } from '../../src/engine/findings/index.ts';
import { readSetup, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { named, setup, yard } from '../scenarios/yard.ts';

const undriven = ['box blade', 'landscape rake', 'bale spear', 'two-row ripper', 'rear blade'];

/** Parts that have nothing to do with a drive. */
const shelf = (yard.parts ?? []).filter(({ kind }) => kind !== 'driveShaft' && kind !== 'stubExtender');

/** Pairings of the yard without a drive, moved about so that more of them fail, with a part of the shelf. */
const misfits: fc.Arbitrary<SetupDocument> = fc
  .record({
    tractor: fc.constantFrom('35', '35', '35', '24', '55'),
    coupler: fc.constantFrom(null, 'U-28', 'U-28', 'hook ends'),
    implement: fc.constantFrom(...undriven),
    heavier: fc.double({ min: 0, max: 420, noNaN: true }),
    narrower: fc.constantFrom(0, 0, 0, -10, 8),
    clevis: fc.constantFrom(null, null, 62),
    loader: fc.constantFrom(undefined, undefined, 'empty'),
    hasLoader: fc.boolean(),
    shelf: fc.subarray(shelf, { minLength: 3 }),
  })
  .map(({ tractor, coupler, implement, heavier, narrower, clevis, loader, hasLoader, shelf: parts }) => {
    const span = spanOf(named(yard.implements, implement));
    const edits: readonly Edit[] = [
      { path: 'implement.carriedMass', value: heavier },
      { path: 'implement.carriedBehind', value: 700 },
      { path: 'implement.shoulderSpan', value: span + narrower },
      ...(clevis === null ? [] : [{ path: 'implement.clevisGap', value: clevis }]),
      { path: 'tractor.loader', value: loader },
    ];
    const without = hasLoader ? [] : [{ path: 'tractor.loaderMass', value: undefined }];
    return setup(tractor, coupler, implement, [...edits, ...without, { path: 'parts', value: parts }]);
  });

function spanOf(implement: SetupDocument): number {
  const span = implement['shoulderSpan'] as number | { readonly value: number } | undefined;
  if (span === undefined) return 680;
  return typeof span === 'number' ? span : span.value;
}

function findingsWith(document: SetupDocument, edits: readonly Edit[]): readonly Finding[] | null {
  if (new Set(edits.map(({ path }) => path)).size < edits.length) return null;
  const reading = readSetup(withEdits(document, edits));
  return reading.ok ? judgeSetup(reading.setup, { thresholds: false }).findings : null;
}

/** Everything that failed holds, and nothing has become worse. */
function curesAll(document: SetupDocument, before: readonly Finding[], set: readonly Candidate[]): boolean {
  const after = findingsWith(
    document,
    set.flatMap(({ edits }) => edits),
  );
  return (
    after !== null &&
    before.every((finding, i) => !isWorse(finding, after[i]) && (!isToCure(finding) || isMet(after[i])))
  );
}

function* subsets(list: readonly Candidate[], size: number, from = 0): Generator<readonly Candidate[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let i = from; i < list.length; i += 1)
    for (const rest of subsets(list, size - 1, i + 1)) yield [list[i] as Candidate, ...rest];
}

/** The size of the smallest set by trying every set of up to four, or null. */
function exhaustive(document: SetupDocument, before: readonly Finding[], list: readonly Candidate[]): number | null {
  for (let size = 1; size <= Math.min(4, list.length); size += 1)
    for (const set of subsets(list, size)) if (curesAll(document, before, set)) return size;
  return null;
}

/** Lists longer than this take too long to try whole. */
const shortList = 9;

describe('the search for cures', () => {
  const seen = { failing: 0, one: 0, more: 0, none: 0 };
  test('finds a set exactly where trying every set finds one, of the same size, and what it offers passes', () => {
    fc.assert(
      fc.property(misfits, (document) => {
        const reading = readSetup(document);
        if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
        const judgement = judgeSetup(reading.setup, { thresholds: false });
        const list = candidatesOf(document, judgement);
        if (!judgement.findings.some(isToCure) || list.length > shortList) return;
        const { cures, searched } = seekCures(document, judgement);
        const set = cures.filter(({ inSmallestSet }) => inSmallestSet);
        const size = exhaustive(document, judgement.findings, list);
        expect(searched).toBe(true);
        expect(set.length > 0 ? set.length : null).toBe(size);
        if (size !== null) expect(curesAll(document, judgement.findings, set)).toBe(true);
        for (const cure of cures.filter(({ cures: ids }) => ids.length > 0)) {
          const after = findingsWith(document, cure.edits);
          expect(cure.cures.every((id) => isMet(after?.find((finding) => finding.id === id)))).toBe(true);
        }
        seen.failing += 1;
        if (size === null) seen.none += 1;
        else if (size === 1) seen.one += 1;
        else seen.more += 1;
      }),
      { numRuns: 150 },
    );
  });
  test('met every kind of outcome on the way', () => {
    expect(seen.one).toBeGreaterThan(10);
    expect(seen.more).toBeGreaterThan(5);
    expect(seen.none).toBeGreaterThan(10);
  });
});
