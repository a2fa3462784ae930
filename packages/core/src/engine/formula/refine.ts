import type { Interval } from '../geometry/index.ts';
import { boundedFrom, costAt, type Side } from './corners.ts';
import type { Ranges } from './enclose.ts';
import type { Formula, Step } from './formula.ts';
import { laneOf } from './gradients.ts';
import { openRooms, type Rooms } from './rooms.ts';
import { encloseTightly } from './tightly.ts';

/** A part of a box and of the lift: the range of every input, the place along the lift last. */
interface Ranged {
  readonly ranges: readonly Interval[];
  /** The bound over the part, turned so that less is farther out: as the lower bound of the result, or of its opposite. */
  readonly bound: number;
}

/** A part that was looked at: its ranges are those that its bound hangs on. */
export interface Part extends Ranged {
  /** A value that the result takes in the part, turned like the bound. */
  readonly value: number;
  /** The input that costs most, along which it is halved; null where nothing costs anything. */
  readonly cut: number | null;
}

/** Looks at many parts of a box at once. */
export interface Cutter {
  readonly rooms: Rooms;
  readonly stepsOf: (step: Step) => Int32Array;
}

/** Parts that are looked at together. */
const atOnce = 24;
/** Times that the worst parts are halved. */
const mostRounds = 4;
/** The share of what could be gained under which a round counts as idle, and idle rounds in a row after which it is left. */
const worthwhile = 0.05;
const mostIdle = 2;

/** Makes room to look at parts of boxes of a formula. */
export function openCutter(formula: Formula, stepsOf: (step: Step) => Int32Array): Cutter {
  return { rooms: openRooms(formula, atOnce, true), stepsOf };
}

/** Which bound is sought, how near to a value that the result takes it has to be, and what would settle it. */
export interface Aim {
  readonly how: Side;
  /** A distance between the bound and a value that the result takes that is near enough [units of the result]. */
  readonly enough: number;
  /** A bound that is as good as any, and a value that the result takes under which no bound is good for anything, both turned. */
  readonly reach: number;
  readonly hopeless: number;
}

/**
 * Cuts the parts of a box that a bound hangs on, the worst first, until it stops getting better.
 *
 * @param open opens the rooms, where there is anything to cut [cutter]
 * @param result the step that is bounded [step]
 * @param start parts that cover the box [parts]
 * @param aim which bound, and what is enough of it [aim]
 * @returns the bound, turned as in the parts [units of the result]
 */
export function refined(open: () => Cutter, result: Step, start: readonly Part[], aim: Aim): number {
  let parts = start;
  let idle = 0;
  for (let round = 0; round < mostRounds && idle < mostIdle; round += 1) {
    const [bound, value] = [farthest(parts), nearest(parts)];
    if (bound >= aim.reach || value < aim.hopeless) break;
    const worst = parts
      .filter((part) => value - part.bound > aim.enough && part.cut !== null)
      .sort((a, b) => a.bound - b.bound)
      .slice(0, atOnce / 2);
    if (worst.length === 0) break;
    const halves = lookAt(open(), result, worst.flatMap(halved), aim.how);
    parts = [...halves, ...parts.filter((part) => !worst.includes(part))];
    idle = farthest(parts) - bound > worthwhile * (value - bound) ? 0 : idle + 1;
  }
  return farthest(parts);
}

/** The bound that some parts give together. */
function farthest(parts: readonly Part[]): number {
  return Math.min(...parts.map(({ bound }) => bound));
}

/** The least value that the result is known to take in them. */
function nearest(parts: readonly Part[]): number {
  return Math.min(...parts.map(({ value }) => value));
}

function halved({ ranges, bound, cut }: Part): Ranged[] {
  const { low, high } = ranges[cut as number] as Interval;
  const middle = (low + high) / 2;
  const halves = [
    { low, high: middle },
    { low: middle, high },
  ];
  return halves.map((half) => ({ bound, ranges: ranges.map((range, input) => (input === cut ? half : range)) }));
}

/** Bounds parts all at once; no part is worse than what it was cut from. */
function lookAt({ rooms, stepsOf }: Cutter, result: Step, parts: readonly Ranged[], how: Side): Part[] {
  const steps = stepsOf(result);
  const last = parts.length - 1;
  const rangeOf = (input: number, place: number): Interval =>
    (parts[Math.min(place, last)] as Ranged).ranges[input] as Interval;
  const lane = laneOf(rooms.formula);
  const ranges: Ranges = { leaf: rangeOf, lane: (place) => rangeOf(lane, place) };
  encloseTightly(rooms, steps, stepsOf, ranges);
  const { bounds, values } = boundedFrom(rooms, steps, how);
  return parts.map((part, place) => {
    const bound = Math.max(part.bound, how.side * (bounds[place] as number));
    return partOf(rooms, result, how, place, {
      ranges: part.ranges,
      bound,
      value: how.side * (values[place] as number),
    });
  });
}

/**
 * A part as its slopes show it: an input whose slope keeps its sign all over it is put at the end that gives the bound, for
 * the bound over that face is the bound over the part.
 */
export function partOf(
  { formula, gradients }: Rooms,
  result: Step,
  { side, alongLift }: Side,
  place: number,
  { ranges, bound, value }: Ranged & { readonly value: number },
): Part {
  const faces = ranges.slice();
  let cut: number | null = null;
  let most = 0;
  const slopes = gradients.slopes[result] ?? null;
  gradients.inputs[result]?.forEach((input, k) => {
    const { low, high } = ranges[input] as Interval;
    if (slopes === null || low === high || (input === laneOf(formula) && !alongLift)) return;
    const at = k * slopes.count + (slopes.count === 1 ? 0 : place);
    const [least, greatest] = [slopes.low[at] as number, slopes.high[at] as number];
    const cost = costAt(least, greatest) * (high - low);
    if (least >= 0 || greatest <= 0) faces[input] = endOf(ranges[input] as Interval, least >= 0 === (side === 1));
    if (cost > most) [cut, most] = [input, cost];
  });
  return { ranges: faces, bound, value: Number.isNaN(value) ? Infinity : value, cut };
}

function endOf({ low, high }: Interval, isLow: boolean): Interval {
  return isLow ? { low, high: low } : { low: high, high };
}
