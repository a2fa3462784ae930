import type { Interval } from '../geometry/index.ts';
import type { Ranges } from './enclose.ts';
import { closerBound, firstBound, inward, openBounded, outward, pieceOf, type First, type Search } from './extremes.ts';
import { Op, stepsFor, type Formula, type Step } from './formula.ts';
import { openCutter, type Aim, type Cutter } from './refine.ts';
import { stepsResting } from './resting.ts';
import { openRooms } from './rooms.ts';
import { encloseTightly } from './tightly.ts';

/**
 * With what care an extreme is bounded: as first found (rough), or from one side only and until it is certain that it lies
 * at or beyond the far end of a goal (seen from the place whose value is the extreme, all others lie farther: `outer`), or
 * short of its near end (`inner`), or that this can't be shown. Left out: from both sides, as tightly as can be.
 */
export type Care = 'rough' | Aimed;

/** One side of an extreme, and a goal to show that it lies beyond. The other side is left unbounded. */
interface Aimed {
  readonly side: 'outer' | 'inner';
  readonly goal: Interval;
}

/** Bounds the results of a formula over boxes, with the lift cut into a number of pieces. */
export interface Bounder {
  readonly places: number;
  /** Leaves that a result reads, by their number. */
  readonly leavesOf: (result: Step) => readonly number[];
  /**
   * The least (sense 1) or the greatest (sense −1) of a result along the lift, for every truth of a box: bounds that hold
   * it, sound and tight. Where the slope by an input keeps its sign all over the box, the bound is taken at the end of that
   * input that gives it; the other inputs are bounded by their slopes from a place between their ends (mean value form), and
   * the enclosure of the steps limits both. Only the leaves that the result reads are looked at.
   */
  readonly extreme: (result: Step, leaves: readonly Interval[], sense: 1 | -1, care?: Care) => Interval;
  /** Bounds of a result over each piece of the lift, in order. */
  readonly along: (result: Step, leaves: readonly Interval[]) => readonly Interval[];
}

/**
 * Makes room to bound results of a formula. Between calls only what rests on a leaf whose range changed is enclosed again:
 * checks of one setup ask for many results over the same box.
 *
 * @param formula what is computed [formula]
 * @param places into how many pieces the lift is cut [count]
 * @returns the bounder; it remembers the boxes it saw last [bounder]
 */
export function openBounder(formula: Formula, places: number): Bounder {
  const rooms = openRooms(formula, places);
  const stepsOf = remembered((result: Step) => stepsFor(formula, [result]));
  const leavesOf = remembered((result) => leavesIn(formula, stepsOf(result)));
  let cutter: Cutter | null = null;
  const bounded = openBounded(rooms, stepsOf);
  const search: Search = { rooms, stepsOf, bounded, cutter: () => (cutter ??= openCutter(formula, stepsOf)) };
  const lookAt = openLook(search, leavesOf);
  const seenOf = remembered((): Book => new Map());
  return {
    places,
    leavesOf,
    extreme: (result, leaves, sense, care) => {
      const look = (): void => lookAt(leaves, result);
      const found = foundFor(seenOf(result), leavesOf(result), leaves, sense);
      return turned(boundsOf({ search, result, leaves, sense, look }, found, care), sense);
    },
    along: (result, leaves) => {
      lookAt(leaves, result);
      return alongOf(search, result);
    },
  };
}

/** Encloses what a result rests on, as far as it is not enclosed for these ranges. */
function openLook(
  { rooms, stepsOf, bounded }: Search,
  leavesOf: (result: Step) => readonly number[],
): (leaves: readonly Interval[], result: Step) => void {
  const { formula, places } = rooms;
  const given: Interval[] = [];
  const isEnclosed = new Uint8Array(formula.ops.length);
  const restingOn = remembered((leaf) => stepsResting(formula, leaf));
  const pieces = Array.from({ length: places }, (_, place) => pieceOf(place, places));
  const ranges: Ranges = { leaf: (index) => given[index] as Interval, lane: (place) => pieces[place] as Interval };
  /** How often a range changed, and how often it had when a result was last looked at. */
  let changes = 0;
  const lookedAt: number[] = [];
  return (leaves, result) => {
    for (const leaf of leavesOf(result)) {
      const range = leaves[leaf] as Interval;
      if (isSame(given[leaf], range)) continue;
      given[leaf] = range;
      changes += 1;
      for (const step of restingOn(leaf)) isEnclosed[step] = 0;
    }
    if (lookedAt[result] === changes) return;
    lookedAt[result] = changes;
    const fresh = stepsOf(result).filter((step) => isEnclosed[step] === 0);
    encloseTightly(rooms, fresh, stepsOf, ranges);
    for (const step of fresh) {
      isEnclosed[step] = 1;
      bounded.forget(step);
    }
  };
}

/** What is asked of a bounder. */
interface Asked {
  readonly search: Search;
  readonly result: Step;
  readonly leaves: readonly Interval[];
  readonly sense: 1 | -1;
  readonly look: () => void;
}

/** The bounds asked for, turned: as of the least of the result, or of its opposite. */
function boundsOf(asked: Asked, found: Found, care: Care | undefined): Interval {
  if (care === undefined) return (found.tight ??= tightOf(asked, found));
  if (care === 'rough')
    return { low: firstOf(asked, found, 'outer').bound, high: -firstOf(asked, found, 'inner').bound };
  const { low: near, high: far } = turned(care.goal, asked.sense);
  if (care.side === 'outer') return { low: aimedAt(asked, found, 'outer', far), high: Infinity };
  return { low: -Infinity, high: -aimedAt(asked, found, 'inner', slackAt(near) - near) };
}

function firstOf({ search, result, sense, look }: Asked, found: Found, side: Aimed['side']): First {
  const known = found[side].first;
  if (known !== null) return known;
  look();
  return (found[side].first = firstBound(search, result, side === 'outer' ? outward(sense) : inward(sense)));
}

function tightOf(asked: Asked, found: Found): Interval {
  const [outer, inner] = [firstOf(asked, found, 'outer'), firstOf(asked, found, 'inner')];
  const wide = -inner.bound - outer.bound;
  const closer = (side: Aimed['side'], bound: number): number =>
    closerOf(asked, side, { enough: nearEnough(bound, wide), reach: Infinity, hopeless: -Infinity });
  return { low: closer('outer', outer.bound), high: -closer('inner', inner.bound) };
}

/** A bound from one side that is tightened only until it reaches a goal, or can't. */
function aimedAt(asked: Asked, found: Found, side: Aimed['side'], reach: number): number {
  const { bound, value } = firstOf(asked, found, side);
  // Nothing is left off that could tell the sign of a margin, even where it counts as zero.
  const hopeless = reach - 2 * slackAt(reach);
  if (bound >= reach || value < hopeless) return bound;
  const known = found[side];
  if (known.goal === reach) return known.bound;
  known.bound = closerOf(asked, side, { enough: nearEnough(bound, value - bound), reach, hopeless });
  known.goal = reach;
  return known.bound;
}

function closerOf({ search, result, leaves, sense, look }: Asked, side: Aimed['side'], aim: Omit<Aim, 'how'>): number {
  look();
  return closerBound(search, result, leaves, { ...aim, how: side === 'outer' ? outward(sense) : inward(sense) });
}

function slackAt(value: number): number {
  return 1e-6 * Math.max(1, Math.abs(value));
}

function turned({ low, high }: Interval, sense: 1 | -1): Interval {
  return sense === 1 ? { low, high } : { low: -high, high: -low };
}

/** Shares of the width between both bounds, and of the bound itself, that more work is not worth. */
const shareOfWidth = 0.05;
const shareOfBound = 1e-3;

function nearEnough(bound: number, wide: number): number {
  const size = Math.abs(bound);
  return Math.max(shareOfWidth * Math.min(wide, size), shareOfBound * size);
}

/** The ranges of what a result reads, with what was found over them, by sense. */
interface Seen {
  readonly box: readonly Interval[];
  readonly least: Found;
  readonly greatest: Found;
}

/** What was found over one box, turned: a bound never depends on what else was asked before. */
interface Found {
  tight: Interval | null;
  readonly outer: FoundAside;
  readonly inner: FoundAside;
}

/** The first bound from one side, and the goal that was last aimed at with what came of it. */
interface FoundAside {
  first: First | null;
  goal: number;
  bound: number;
}

/** Boxes that are remembered of each result: a decision comes back to the same, and so does that of a setup with one part changed. */
const mostSeen = 160;

/** Boxes that were seen, by a number made of their ranges, in the order in which they were first seen. */
type Book = Map<number, Seen>;

function foundFor(seen: Book, read: readonly number[], leaves: readonly Interval[], sense: 1 | -1): Found {
  const key = numberOf(read, leaves);
  let known = seen.get(key);
  if (known === undefined || !read.every((leaf, i) => isSame(known?.box[i], leaves[leaf] as Interval))) {
    known = { box: read.map((leaf) => leaves[leaf] as Interval), least: nothing(), greatest: nothing() };
    seen.delete(key);
    seen.set(key, known);
    const [oldest] = seen.keys();
    if (seen.size > mostSeen && oldest !== undefined) seen.delete(oldest);
  }
  return sense === 1 ? known.least : known.greatest;
}

/** Two boxes hardly ever have the same; where they do, the one that was seen last is remembered. */
function numberOf(read: readonly number[], leaves: readonly Interval[]): number {
  let sum = 0;
  for (const leaf of read) {
    const { low, high } = leaves[leaf] as Interval;
    sum = (sum * 31 + low) * 31 + high;
  }
  return sum;
}

function nothing(): Found {
  const aside = (): FoundAside => ({ first: null, goal: NaN, bound: NaN });
  return { tight: null, outer: aside(), inner: aside() };
}

function leavesIn({ ops, detail }: Formula, steps: Int32Array): number[] {
  return [...steps].filter((step) => ops[step] === Op.leaf).map((step) => detail[step] as number);
}

function remembered<T>(make: (key: number) => T): (key: number) => T {
  const made: (T | undefined)[] = [];
  return (key) => (made[key] ??= make(key));
}

function isSame(a: Interval | undefined, b: Interval): boolean {
  return a !== undefined && a.low === b.low && a.high === b.high;
}

/** Bounds of a result over each piece. */
function alongOf({ bounded }: Search, result: Step): Interval[] {
  const low = bounded.of(result, { side: 1, alongLift: true }).bounds;
  const high = bounded.of(result, { side: -1, alongLift: true }).bounds;
  return Array.from(low, (end, place) => ({ low: end, high: high[place] as number }));
}
