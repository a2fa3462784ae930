import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../src/engine/findings/index.ts';
import { judgeSetup } from '../../src/engine/assess/index.ts';
import { linkOf, readLink } from '../../src/exchange/index.ts';
import { atPath, readSetup, withEdits, type SetupDocument } from '../../src/records/index.ts';
import { assess } from '../../src/engine/assess/index.ts';
import { printQuantity } from '../../src/units/index.ts';
import { even } from '../even.ts';
import { setups } from './generate.ts';

function findingsOf(document: SetupDocument): readonly Finding[] {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return judgeSetup(reading.setup, { thresholds: false }).findings;
}

type Whole = 'passes' | 'fails' | 'undecided';

/** Checks that hang together through what can be set on the tractor and the coupler. */
const settable = ['front.span', 'front.topLink', 'rear.mast', 'rear.shoulders', 'rear.pinSeat', 'rear.retention'];

/** All core checks taken together, or some of them. */
function whole(document: SetupDocument, ids?: readonly string[]): Whole {
  const core = findingsOf(document).filter((finding) => finding.core && (ids?.includes(finding.id) ?? true));
  if (core.some(({ status }) => status === 'fail')) return 'fails';
  return core.some(({ status }) => status === 'undecided') ? 'undecided' : 'passes';
}

/** Paths of plain figures in a document, those that are numbers or have a tolerance or a range. */
function figurePaths(document: SetupDocument): string[] {
  return ['tractor', 'coupler', 'coupler.front', 'implement'].flatMap((machine) =>
    Object.entries((atPath(document, machine) as object | undefined) ?? {})
      .filter(
        ([, figure]) =>
          typeof figure === 'number' ||
          (typeof figure === 'object' && figure !== null && ('value' in figure || 'between' in figure)),
      )
      .map(([key]) => `${machine}.${key}`),
  );
}

function ends(figure: unknown): [number, number] {
  if (typeof figure === 'number') return [figure, figure];
  const { value, plusMinus, between } = figure as { value: number; plusMinus: number; between?: [number, number] };
  return between ?? [value - plusMinus, value + plusMinus];
}

describe('the two widening rules', () => {
  test('widening an uncertain input never makes a result surer', () => {
    const seen = { passes: 0, fails: 0, undecided: 0 };
    fc.assert(
      fc.property(
        setups,
        fc.nat(),
        fc.double({ min: 0, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (document, pick, down, up) => {
          const paths = figurePaths(document);
          const path = paths[pick % paths.length] as string;
          const [low, high] = ends(atPath(document, path));
          const wide = withEdits(document, [{ path, value: { between: [low - down, high + up] } }]);
          if (!readSetup(wide).ok) return;
          const wider = whole(wide);
          seen[wider] += 1;
          if (wider !== 'undecided') expect(whole(document), path).toBe(wider);
        },
      ),
      { numRuns: 150 },
    );
    expect(seen.fails).toBeGreaterThan(10);
  });

  test('widening an adjustable range never makes a result worse', () => {
    const rank: Readonly<Record<Whole, number>> = { fails: 0, undecided: 1, passes: 2 };
    let better = 0;
    fc.assert(
      fc.property(setups, even(0, 40), fc.constantFrom('ballSpan', 'topLinkLength'), (document, more, key) => {
        const path = `tractor.${key}.adjustable.between`;
        const [from, to] = atPath(document, path) as [unknown, unknown];
        const lowest = ends(from);
        const highest = ends(to);
        const wide = withEdits(document, [
          {
            path,
            value: [{ between: lowest.map((end) => end - more) }, { between: highest.map((end) => end + more) }],
          },
        ]);
        if (!readSetup(wide).ok) return;
        const [before, after] = [rank[whole(document, settable)], rank[whole(wide, settable)]];
        expect(after).toBeGreaterThanOrEqual(before);
        if (after > before) better += 1;
      }),
      { numRuns: 150 },
    );
    expect(better).toBeGreaterThan(0);
  });
});

const bar = fc
  .record({
    y: fc.double({ min: -400, max: 400, noNaN: true }),
    z: fc.double({ min: -150, max: 500, noNaN: true }),
    wide: fc.double({ min: 5, max: 120, noNaN: true }),
    tall: fc.double({ min: 5, max: 120, noNaN: true }),
  })
  .map(({ y, z, wide, tall }) => [
    [y, z],
    [y + wide, z],
    [y + wide, z + tall],
    [y, z + tall],
  ]);

const mirrored = (outline: number[][]): number[][] => outline.map(([y, z]) => [-(y as number), z as number]);

describe('symmetries and round trips', () => {
  test('a setup and its left-right mirror image get the same findings', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        setups,
        fc.array(bar, { minLength: 1, maxLength: 3 }),
        fc.array(bar, { minLength: 1, maxLength: 3 }),
        (document, bodies, hooks) => {
          if (document['coupler'] === undefined) return;
          compared += 1;
          const withOutlines = (turn: (outline: number[][]) => number[][]): SetupDocument =>
            withEdits(document, [
              {
                path: 'implement.outlines',
                value: bodies.map((rear) => ({ name: 'brace', part: 'brace', rear: turn(rear), plusMinusMm: 2 })),
              },
              {
                path: 'coupler.outlines',
                value: hooks.map((rear) => ({ name: 'post', part: 'post', rear: turn(rear) })),
              },
            ]);
          const [plain, image] = [findingsOf(withOutlines((outline) => outline)), findingsOf(withOutlines(mirrored))];
          image.forEach((finding, i) => {
            expect(finding.status).toBe(plain[i]?.status);
            if (finding.margin?.low != null) expect(finding.margin.low).toBeCloseTo(plain[i]?.margin?.low ?? NaN, 6);
          });
        },
      ),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(20);
  });

  test('the same machine written in inches and in millimetres gets the same findings', () => {
    const sixteenth = 25.4 / 16;
    let compared = 0;
    fc.assert(
      fc.property(setups, (document) => {
        const rounded = figurePaths(document).map((path) => ({
          path,
          value: Math.round(ends(atPath(document, path))[0] / sixteenth) * sixteenth,
        }));
        const lengths = rounded.filter(({ path }) => !path.endsWith('Angle'));
        const metric = withEdits(document, lengths);
        const inches = withEdits(
          document,
          lengths.map(({ path, value }) => ({ path, value: printQuantity(value, 'length', { system: 'us' }) })),
        );
        if (!readSetup(metric).ok) return;
        compared += 1;
        const [a, b] = [findingsOf(metric), findingsOf(inches)];
        b.forEach((finding, i) => {
          expect(finding.status, finding.id).toBe(a[i]?.status);
          if (finding.margin?.low != null) expect(finding.margin.low).toBeCloseTo(a[i]?.margin?.low ?? NaN, 6);
        });
      }),
      { numRuns: 80 },
    );
    expect(compared).toBeGreaterThan(40);
  });

  test('a setup comes back from JSON and from a link as it was, with the same answer', () => {
    fc.assert(
      fc.property(setups, (document) => {
        const fromJson = JSON.parse(JSON.stringify(document)) as SetupDocument;
        expect(readSetup(fromJson)).toEqual(readSetup(document));
        const opened = readLink(linkOf(document));
        expect(opened).toEqual({ ok: true, document: fromJson });
        if (opened.ok) expect(assess(opened.document, { full: false })).toEqual(assess(document, { full: false }));
      }),
      { numRuns: 40 },
    );
  });
});
