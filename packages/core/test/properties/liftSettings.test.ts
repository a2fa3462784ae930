import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../src/engine/findings/index.ts';
import { judgeSetup } from '../../src/engine/assess/index.ts';
import { readSetup, withEdits, type SetupDocument } from '../../src/records/index.ts';
import { example } from '../asked.ts';
import { even } from '../even.ts';
import { documentOf, liftCases, tapePaths, tapes } from './generateLift.ts';

const throughLift = ['front.topLink', 'pickUp.height', 'work.height', 'work.attitude', 'lift.linkage', 'lift.force'];

function findingsOf(document: SetupDocument): readonly Finding[] {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return judgeSetup(reading.setup, { thresholds: false }).findings.filter(({ id }) => throughLift.includes(id));
}

const rank = { fail: 0, undecided: 1, pass: 2 } as const;

/** How the checks through the lift stand together: as the one that stands worst. */
function together(document: SetupDocument): number {
  return Math.min(
    ...findingsOf(document).map(({ status }) => (status in rank ? rank[status as keyof typeof rank] : 2)),
  );
}

function topLink(document: SetupDocument, between: readonly [number, number], setting: string): SetupDocument {
  return withEdits(document, [{ path: 'tractor.topLinkLength', value: { adjustable: { between, setting } } }]);
}

describe('what can be set', () => {
  test('a wider range of the top link never makes a result through the lift worse', () => {
    let better = 0;
    let compared = 0;
    const more = even(0, 200);
    fc.assert(
      fc.property(
        liftCases(),
        tapePaths,
        fc.constantFrom('one', 'perPosition'),
        fc.tuple(fc.constantFrom(-1, 1), even(0, 120)),
        fc.tuple(more, more),
        (one, taped, setting, [side, off], [below, above]) => {
          const document = documentOf(one, tapes(taped));
          const centre = one.sideView.topLink + side * off;
          const narrow = together(topLink(document, [centre - 20, centre + 20], setting));
          const wide = together(topLink(document, [centre - 20 - below, centre + 20 + above], setting));
          expect(wide).toBeGreaterThanOrEqual(narrow);
          if (wide > narrow) better += 1;
          compared += 1;
        },
      ),
      { numRuns: 24, endOnFailure: true },
    );
    expect(compared).toBe(24);
    expect(better).toBeGreaterThan(3);
  });

  test('a top link that also goes shorter than any use still lifts what the shorter range lifts', () => {
    const document = example('box-blade-direct');
    const force = (between: readonly [number, number]) =>
      findingsOf(topLink(document, between, 'perPosition')).find(({ id }) => id === 'lift.force');
    expect(force([250, 660])?.status).toBe('pass');
    // At 200 mm the linkage is nearly folded: it ranks best there by its middle, and can't be proven there.
    expect(force([200, 660])?.margin?.low).toBeGreaterThan(600);
    expect(force([200, 660])?.status).toBe('pass');
  });

  test('where no length of the top link for carrying closes the linkage, it does not close', () => {
    const linkage = findingsOf(topLink(example('box-blade-direct'), [1250, 1450], 'perPosition')).find(
      ({ id }) => id === 'lift.linkage',
    );
    expect(linkage?.status).toBe('fail');
  });
});
