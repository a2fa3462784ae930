import {
  openBounder,
  openEstimator,
  type Bounder,
  type Care,
  type Estimator,
  type Formula,
  type Step,
} from '../formula/index.ts';
import { middle, type Interval } from '../geometry/index.ts';
import { marginOf, nearlyZero, withCare, type Measured, type Reading, type Term } from '../proof/index.ts';
import type { Leaves, LeafTerms } from './leaves.ts';

/** Pieces that the lift is cut into where a margin is proven unless said otherwise, and places where one is estimated. */
const usualPieces = 24;
const estimatePlaces = 9;
const alone = 1;

/** A formula of a setup, ready to be bounded and estimated over boxes of its inputs. */
export interface Run {
  /** Bounds of the least of a result over the course: certain at its lower end, possible at its upper. */
  readonly least: (result: Step) => Bounds;
  /** Bounds of the greatest of a result over the course. */
  readonly greatest: (result: Step) => Bounds;
  /** The least, and the greatest, of a result at the middle of a box, at a few places only. */
  readonly leastEstimate: (result: Step) => (at: Reading) => number;
  readonly greatestEstimate: (result: Step) => (at: Reading) => number;
  /** Bounds of a result over each piece of its course. */
  readonly along: (result: Step) => (at: Reading) => readonly Interval[];
  /** A result at a few places of its course, at the middle of a box. */
  readonly values: (result: Step) => (at: Reading) => readonly number[];
  /** Reads the inputs of a result. */
  readonly reads: (result: Step) => (at: Reading) => void;
}

/**
 * Bounds of a result. A goal says what a check asks of it: its least to be at least that, its greatest to be at most that;
 * where a check has only to be shown to pass, or to fail, one end is bounded no tighter than that takes.
 */
export type Bounds = (at: Reading, goal?: Interval) => Interval;

interface Rooms {
  readonly bounder: Bounder;
  readonly estimator: Estimator;
}

const rooms = new WeakMap<Formula, Map<number, Rooms>>();

/**
 * Opens a formula for a setup; rooms to compute in are shared by all setups of the same structure. Only the inputs of the
 * results that are asked for are ever read.
 */
export function openRun(
  formula: Formula,
  { exact, quick }: Leaves,
  results: readonly Step[],
  pieces = usualPieces,
): Run {
  const made = roomsFor(formula, pieces);
  const terms = termsOf(formula, made.bounder, exact, results);
  const quickTerms = termsOf(formula, made.bounder, quick, results);
  const rangesAt = (result: Step, at: Reading): Interval[] => {
    const ranges = new Array<Interval>(formula.leaves.length);
    for (const leaf of made.bounder.leavesOf(result)) ranges[leaf] = (terms[leaf] as Term)(at);
    return ranges;
  };
  const bounds =
    (result: Step, sense: 1 | -1): Bounds =>
    (at, goal) =>
      made.bounder.extreme(result, rangesAt(result, at), sense, careFor(at, goal));
  const estimated = (result: Step): ((at: Reading) => Float64Array) => {
    const middles = openMiddles(made.bounder.leavesOf(result), quickTerms);
    return (at) => {
      const values = middles(at);
      return made.estimator.estimate(result, (leaf) => values[leaf] as number);
    };
  };
  return {
    least: (result) => bounds(result, 1),
    greatest: (result) => bounds(result, -1),
    leastEstimate: (result) => {
      const values = estimated(result);
      return (at) => leastOf(values(at));
    },
    greatestEstimate: (result) => {
      const values = estimated(result);
      return (at) => greatestOf(values(at));
    },
    values: (result) => {
      const values = estimated(result);
      return (at) => [...values(at)];
    },
    along: (result) => (at) => made.bounder.along(result, rangesAt(result, at)),
    reads: (result) => (at) => {
      for (const leaf of made.bounder.leavesOf(result)) (terms[leaf] as Term)(at);
    },
  };
}

// Loops: handing them over as arguments takes longer than all that is computed for them.
function leastOf(values: Float64Array): number {
  let least = Infinity;
  for (const value of values) least = Math.min(least, value);
  return least;
}

function greatestOf(values: Float64Array): number {
  let greatest = -Infinity;
  for (const value of values) greatest = Math.max(greatest, value);
  return greatest;
}

function careFor({ care }: Reading, goal: Interval | undefined): Care | undefined {
  if (care === undefined || care === 'rough') return care;
  return goal === undefined ? undefined : { side: care === 'passes' ? 'outer' : 'inner', goal };
}

/**
 * What is measured, by first bounds where they show whether the check passes.
 *
 * @param at reads a box [reading]
 * @param measure measures with the care that is read [check's unit]
 * @returns the quantity and its band [check's unit]
 */
export function roughFirst(at: Reading, measure: (at: Reading) => Measured): Measured {
  return withFirst((read) => measure(withCare(read, 'rough')), measure, at);
}

/** What is measured, by what is quick to measure where that shows whether the check passes. */
export function withFirst(
  quickly: (at: Reading) => Measured,
  closely: (at: Reading) => Measured,
  at: Reading,
): Measured {
  if (at.care !== 'passes' && at.care !== 'fails') return closely(at);
  const first = quickly(at);
  const { low, high } = marginOf(first);
  return low >= -nearlyZero || high < -nearlyZero ? first : closely(at);
}

function roomsFor(formula: Formula, pieces: number): Rooms {
  const known = rooms.get(formula) ?? new Map<number, Rooms>();
  rooms.set(formula, known);
  const isLaned = formula.laned.includes(1);
  const made = known.get(pieces) ?? {
    bounder: openBounder(formula, isLaned ? pieces : alone),
    estimator: openEstimator(formula, isLaned ? estimatePlaces : alone),
  };
  known.set(pieces, made);
  return made;
}

/**
 * The middles of the ranges of some leaves. A search for a setting changes one range of a box at a time: a term is asked
 * again only where a range that it read is another one.
 */
function openMiddles(leaves: readonly number[], terms: readonly Term[]): (at: Reading) => readonly number[] {
  const values: number[] = [];
  const readBy = new Map<number, Set<number>>();
  const last: Interval[] = [];
  let read: readonly number[] = [];
  const ask = (leaf: number, at: Reading): void => {
    const range = (terms[leaf] as Term)((index) => {
      const by = readBy.get(index) ?? new Set();
      readBy.set(index, by.add(leaf));
      return (last[index] = at(index));
    });
    values[leaf] = middle(range);
  };
  return (at) => {
    const stale = new Set(read.length === 0 ? leaves : []);
    for (const index of read) {
      const range = at(index);
      if (range === last[index]) continue;
      last[index] = range;
      for (const leaf of readBy.get(index) as Set<number>) stale.add(leaf);
    }
    if (stale.size === 0) return values;
    for (const leaf of stale) ask(leaf, at);
    if (readBy.size > read.length) read = [...readBy.keys()];
    return values;
  };
}

/** The terms behind the leaves of some results, by their number. */
function termsOf(formula: Formula, bounder: Bounder, leaves: LeafTerms, results: readonly Step[]): Term[] {
  const terms: Term[] = [];
  for (const result of results) {
    for (const leaf of bounder.leavesOf(result)) terms[leaf] ??= termOf(leaves, formula.leaves[leaf] as string);
  }
  return terms;
}

function termOf(leaves: LeafTerms, name: string): Term {
  const term = leaves.get(name);
  if (term === undefined) throw new Error(`invariant: no leaf ${name}`);
  return term;
}
