import type { Interval } from '../geometry/index.ts';
import { boundedFrom, opposite, type Side } from './corners.ts';
import type { Ranges } from './enclose.ts';
import { Op, stepsFor, type Formula, type Step } from './formula.ts';
import { laneOf } from './gradients.ts';
import { openCutter, partOf, refined, type Cutter, type Part } from './refine.ts';
import { openRooms, type Rooms } from './rooms.ts';
import { encloseTightly } from './tightly.ts';

/** Bounds the results of a formula over boxes, with the lift cut into a number of pieces. */
export interface Bounder {
  readonly places: number;
  /** Leaves that a result reads, by their number. */
  readonly leavesOf: (result: Step) => readonly number[];
  /**
   * The least (sense 1) or the greatest (sense −1) of a result along the lift, for every truth of a box: bounds that hold
   * it, sound and tight. Where the slope by an input keeps its sign all over the box, the bound is taken at the end of that
   * input that gives it; the other inputs are bounded by their slopes from a place between their ends (mean value form), and
   * the enclosure of the steps limits both. Rough bounds are left as they are first found.
   */
  readonly extreme: (result: Step, leaves: readonly Interval[], sense: 1 | -1, isRough?: boolean) => Interval;
  /** Bounds of a result over each piece of the lift, in order. */
  readonly along: (result: Step, leaves: readonly Interval[]) => readonly Interval[];
}

/**
 * Makes room to bound results of a formula.
 *
 * @param formula what is computed [formula]
 * @param places into how many pieces the lift is cut [count]
 * @returns the bounder; it remembers the boxes it saw last [bounder]
 */
export function openBounder(formula: Formula, places: number): Bounder {
  const rooms = openRooms(formula, places);
  const stepsOf = remembered((result: Step) => stepsFor(formula, [result]));
  let cutter: Cutter | null = null;
  const search: Search = { rooms, stepsOf, cutter: () => (cutter ??= openCutter(formula, stepsOf)) };
  let box: readonly Interval[] = [];
  const isEnclosed = new Uint8Array(formula.ops.length);
  const seen: Seen[] = [];
  const rangesOf = (leaves: readonly Interval[]): Ranges => ({
    leaf: (index) => leaves[index] as Interval,
    lane: (place) => pieceOf(place, places),
  });
  return {
    places,
    leavesOf: remembered((result) =>
      [...stepsOf(result)]
        .filter((step) => formula.ops[step] === Op.leaf)
        .map((step) => formula.detail[step] as number),
    ),
    extreme: (result, leaves, sense, isRough = false) => {
      const { found } = seenBefore(seen, leaves);
      const key = `${result} ${sense} ${isRough}`;
      const known = found.get(key);
      if (known !== undefined) return known;
      lookAt(leaves, result);
      const start = openingOf(search, result, leaves, sense);
      const bounds = isRough ? boundsOf(start, sense) : refinedFrom(search, result, start, sense);
      found.set(key, bounds);
      return bounds;
    },
    along: (result, leaves) => {
      lookAt(leaves, result);
      return alongOf(rooms, stepsOf(result));
    },
  };
  /** Encloses what a result rests on, as far as it is not enclosed for this box. */
  function lookAt(leaves: readonly Interval[], result: Step): void {
    if (!sameBox(box, leaves)) {
      box = leaves.slice();
      isEnclosed.fill(0);
    }
    const fresh = stepsOf(result).filter((step) => isEnclosed[step] === 0);
    encloseTightly(rooms, fresh, stepsOf, rangesOf(leaves));
    for (const step of fresh) isEnclosed[step] = 1;
  }
}

/** A box that was bounded, with what was found. */
interface Seen {
  readonly box: readonly Interval[];
  readonly found: Map<string, Interval>;
}

/** Boxes that are remembered: a decision comes back to the same few. */
const mostSeen = 12;

function seenBefore(seen: Seen[], leaves: readonly Interval[]): Seen {
  const known = seen.find(({ box }) => sameBox(box, leaves));
  if (known !== undefined) return known;
  const fresh = { box: leaves.slice(), found: new Map<string, Interval>() };
  seen.unshift(fresh);
  if (seen.length > mostSeen) seen.pop();
  return fresh;
}

function remembered<T>(make: (step: Step) => T): (step: Step) => T {
  const made = new Map<Step, T>();
  return (step) => {
    const known = made.get(step) ?? make(step);
    made.set(step, known);
    return known;
  };
}

function sameBox(a: readonly Interval[], b: readonly Interval[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) {
    const [one, other] = [a[i] as Interval, b[i] as Interval];
    if (one.low !== other.low || one.high !== other.high) return false;
  }
  return true;
}

/** Bounds of a result over each piece. */
function alongOf(rooms: Rooms, steps: Int32Array): Interval[] {
  const low = boundedFrom(rooms, steps, { side: 1, alongLift: true }).bounds;
  const high = boundedFrom(rooms, steps, { side: -1, alongLift: true }).bounds;
  return Array.from(low, (end, place) => ({ low: end, high: high[place] as number }));
}

/** Rooms in which an extreme is sought. */
interface Search {
  readonly rooms: Rooms;
  readonly stepsOf: (step: Step) => Int32Array;
  readonly cutter: () => Cutter;
}

/** The parts that both bounds of an extreme are sought from. */
interface Opening {
  readonly outer: readonly Part[];
  readonly inner: Part;
}

/**
 * The extreme along the lift lies between the outermost bound over any piece, and the innermost bound at one place of each
 * piece: whatever the truth, the result at that place is no better than the extreme.
 */
function openingOf(search: Search, result: Step, leaves: readonly Interval[], sense: 1 | -1): Opening {
  return {
    outer: outerParts(search, result, leaves, sense),
    inner: innerPart(search, result, leaves, opposite(sense)),
  };
}

function boundsOf({ outer, inner }: Opening, sense: 1 | -1): Interval {
  return turnedBounds(Math.min(...outer.map(({ bound }) => bound)), -inner.bound, sense);
}

/** Both bounds refined where they are far from any value that the result takes. */
function refinedFrom(search: Search, result: Step, { outer, inner }: Opening, sense: 1 | -1): Interval {
  const start = Math.min(...outer.map(({ bound }) => bound));
  const wide = -inner.bound - start;
  const from = refined(search.cutter, result, outer, { side: sense, alongLift: true }, nearEnough(start, wide));
  const innerSide: Side = { side: opposite(sense), alongLift: false };
  const to = -refined(search.cutter, result, [inner], innerSide, nearEnough(inner.bound, wide));
  return turnedBounds(from, to, sense);
}

function turnedBounds(from: number, to: number, sense: 1 | -1): Interval {
  return sense === 1 ? { low: from, high: to } : { low: -to, high: -from };
}

/** Shares of the width between both bounds, and of the bound itself, that more work is not worth. */
const shareOfWidth = 0.05;
const shareOfBound = 1e-3;

function nearEnough(bound: number, wide: number): number {
  const size = Math.abs(bound);
  return Math.max(shareOfWidth * Math.min(wide, size), shareOfBound * size);
}

/** Every piece of the lift, bounded from outside. */
function outerParts({ rooms, stepsOf }: Search, result: Step, leaves: readonly Interval[], side: 1 | -1): Part[] {
  const how: Side = { side, alongLift: true };
  const { bounds, values } = boundedFrom(rooms, stepsOf(result), how);
  return Array.from(bounds, (bound, place) => {
    const ranges = [...leaves, pieceOf(place, rooms.places)];
    return partOf(rooms, result, how, place, { ranges, bound: side * bound, value: side * (values[place] as number) });
  });
}

/** The whole box at the one place of the lift whose bound from inside says most. */
function innerPart({ rooms, stepsOf }: Search, result: Step, leaves: readonly Interval[], side: 1 | -1): Part {
  const how: Side = { side, alongLift: false };
  const { bounds, values } = boundedFrom(rooms, stepsOf(result), how);
  const best = bounds.reduce(
    (known, bound, place) => (side * bound > side * (bounds[known] as number) ? place : known),
    0,
  );
  const at = (rooms.spots[laneOf(rooms.formula)] as Float64Array)[best] as number;
  return partOf(rooms, result, how, best, {
    ranges: [...leaves, { low: at, high: at }],
    bound: side * (bounds[best] as number),
    value: side * (values[best] as number),
  });
}

function pieceOf(place: number, places: number): Interval {
  return { low: place / places, high: (place + 1) / places };
}
