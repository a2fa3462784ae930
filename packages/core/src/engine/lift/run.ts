import { openBounder, openEstimator, type Bounder, type Estimator, type Formula, type Step } from '../formula/index.ts';
import { exactly, middle, type Interval } from '../geometry/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import type { Leaves, LeafTerms } from './leaves.ts';

/** Pieces that the lift is cut into where a margin is proven unless said otherwise, and places where one is estimated. */
const usualPieces = 24;
const estimatePlaces = 9;
const alone = 1;

/** A formula of a setup, ready to be bounded and estimated over boxes of its inputs. */
export interface Run {
  /** Bounds of the least of a result over the course: certain at its lower end, possible at its upper. */
  readonly least: (result: Step) => (at: Reading) => Interval;
  /** Bounds of the greatest of a result over the course. */
  readonly greatest: (result: Step) => (at: Reading) => Interval;
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
  const unread = exactly(0);
  const wanted = new Set(results.flatMap((result) => made.bounder.leavesOf(result)));
  const termsOf = (leaves: LeafTerms): Term[] =>
    formula.leaves.map((name, leaf) => (wanted.has(leaf) ? termOf(leaves, name) : () => unread));
  const terms = termsOf(exact);
  const quickTerms = termsOf(quick);
  const rangesAt = (at: Reading): Interval[] => terms.map((term) => term(at));
  const estimated = (result: Step) => (at: Reading) =>
    made.estimator.estimate(result, (leaf) => middle((quickTerms[leaf] as Term)(at)));
  return {
    least: (result) => (at) => made.bounder.extreme(result, rangesAt(at), 1, at.isRough),
    greatest: (result) => (at) => made.bounder.extreme(result, rangesAt(at), -1, at.isRough),
    leastEstimate: (result) => {
      const values = estimated(result);
      return (at) => Math.min(...values(at));
    },
    greatestEstimate: (result) => {
      const values = estimated(result);
      return (at) => Math.max(...values(at));
    },
    values: (result) => {
      const values = estimated(result);
      return (at) => [...values(at)];
    },
    along: (result) => (at) => made.bounder.along(result, rangesAt(at)),
    reads: (result) => (at) => {
      for (const leaf of made.bounder.leavesOf(result)) (terms[leaf] as Term)(at);
    },
  };
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

function termOf(leaves: LeafTerms, name: string): Term {
  const term = leaves.get(name);
  if (term === undefined) throw new Error(`invariant: no leaf ${name}`);
  return term;
}
