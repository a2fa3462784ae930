import { expect, test } from 'vitest';
import { checkIds } from '../../src/engine/findings/index.ts';
import { fewestPlaces } from '../properties/plainRun.ts';
import { middleOf } from '../properties/widths.ts';
import type { SetupResult } from './held.ts';
import { notSampled } from './margins.ts';
import { setupOf, usualSeed, type Kind } from './setups.ts';
import { soundnessOf, type How } from './soundness.ts';
import { rowsOf, talliesOf, told, totalsOf } from './table.ts';

/** The seed of the setups in the tests. */
export const seed = Number(process.env['PROPERTY_SEED'] ?? usualSeed);

/** Truths of each setup in the tests; joints are quick to look at. */
const samplesOf = (kind: Kind): number => (kind === 'hookUp' ? 1000 : 500);

/** The same as `npm run soundness` in short: fewer truths, and the fewest places of the lift that a bound may pick from. */
function inShort(kind: Kind): How {
  return { samples: samplesOf(kind), elsewhere: 100, places: fewestPlaces };
}

/** How many setups make one round of every kind. */
const round = 20;

/** The setups of every other round, so that either half has every kind in the order in which they are made. */
export function everyOther(first: 0 | 1): number[] {
  return Array.from({ length: 200 }, (_, number) => number).filter(
    (number) => Math.floor(number / round) % 2 === first,
  );
}

const batch = 10;
/** So many setups at least. */
const fewest = 2;
/** Less than this a margin does not spread enough to hold its bound against [check's unit]. */
const leastSpread = 0.01;

/** Holds some setups against truths of them, and the width of their bounds against how far truths spread. */
export function holdsInShort(numbers: readonly number[]): void {
  const results: SetupResult[] = [];
  for (let from = 0; from < numbers.length; from += batch) {
    const these = numbers.slice(from, from + batch);
    test(`no truth of setups ${these[0]} to ${these.at(-1)} speaks against what is told of them`, () => {
      for (const number of these) {
        const setup = setupOf(seed, number);
        const result = soundnessOf(setup, inShort(setup.kind));
        expect(result.first.map((one) => told(one, seed))).toEqual([]);
        expect(result.violations).toBe(0);
        results.push(result);
      }
    });
  }

  test('every check that a number stands behind, and every answer, was held in some of them', () => {
    console.log(`${talliesOf(results)}\n${totalsOf(results)}`);
    const setups = new Map(rowsOf(results).map((row) => [row.id, row.setups]));
    expect(checkIds.filter((id) => !notSampled.includes(id) && (setups.get(id) ?? 0) < fewest)).toEqual([]);
    expect(notSampled.filter((id) => setups.has(id))).toEqual([]);
    for (const answer of ['hooksUp', 'runs', 'lifts', 'staysUpright', 'verdict'] as const) {
      for (const outcome of ['works', 'measureFirst', 'willNot'] as const) {
        expect(results.filter((one) => one.answers[answer] === outcome).length, `${answer} ${outcome}`).toBeGreaterThan(
          0,
        );
      }
    }
  });

  test('margins at the joints are hardly wider than truths of them spread', () => {
    const wide = results
      .filter(({ kind }) => kind === 'hookUp')
      .flatMap(({ checks }) => checks.filter(({ width, spread }) => width !== null && spread > leastSpread));
    const median = middleOf(wide.map(({ width, spread }) => (width as number) / spread));
    console.log(
      `joints: width of a margin over how far truths spread: median ${median.toFixed(3)}, ${wide.length} margins`,
    );
    expect(wide.length).toBeGreaterThan(100);
    expect(median).toBeLessThanOrEqual(1.1);
  });
}

/** One setup as it is held in the tests, with something changed. */
export function heldWith(number: number, how: Partial<How>): SetupResult {
  const setup = setupOf(seed, number);
  return soundnessOf(setup, { ...inShort(setup.kind), ...how });
}
