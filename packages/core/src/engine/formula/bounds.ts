import type { Interval } from '../geometry/index.ts';
import { accumulate, openSlopes, type Slopes } from './slopes.ts';
import { enclose, openEnclosure, type Enclosure, type Ends } from './enclose.ts';
import { evaluate, openWorkspace, valueAt, type Workspace } from './evaluate.ts';
import { Op, stepsFor, type Formula, type Step } from './formula.ts';

/** Bounds the results of a formula over boxes, with the lift cut into a number of pieces. */
export interface Bounder {
  readonly places: number;
  /** Leaves that a result reads, by their number. */
  readonly leavesOf: (result: Step) => readonly number[];
  /**
   * The least (sense 1) or the greatest (sense −1) of a result along the lift, for every truth of a box: bounds that hold
   * it, sound and tight. Where the slope by an input keeps its sign all over the box, the bound is taken at the end of that
   * input that gives it; the other inputs are bounded by their slopes from their middles (mean value form), and the plain
   * enclosure limits both.
   */
  readonly extreme: (result: Step, leaves: readonly Interval[], sense: 1 | -1) => Interval;
  /** Bounds of a result over each piece of the lift, in order. */
  readonly along: (result: Step, leaves: readonly Interval[]) => readonly Interval[];
}

/** Everything that is made once for a formula and used for every box. */
interface Rooms {
  readonly places: number;
  readonly enclosure: Enclosure;
  readonly slopes: Slopes;
  readonly corner: Workspace;
  readonly leafSteps: readonly Step[];
  readonly laneStep: Step | null;
}

/**
 * Makes room to bound results of a formula.
 *
 * @param formula what is computed [formula]
 * @param places into how many pieces the lift is cut [count]
 * @returns the bounder; it remembers the boxes it saw last [bounder]
 */
export function openBounder(formula: Formula, places: number): Bounder {
  const at = (op: number): Step[] => [...formula.ops.keys()].filter((step) => formula.ops[step] === op);
  const enclosure = openEnclosure(formula, places);
  const rooms: Rooms = {
    places,
    enclosure,
    slopes: openSlopes(enclosure),
    corner: openWorkspace(formula, places, true),
    leafSteps: at(Op.leaf).sort((a, b) => (formula.detail[a] as number) - (formula.detail[b] as number)),
    laneStep: at(Op.lane)[0] ?? null,
  };
  const lane = (i: number): Interval => ({ low: i / places, high: (i + 1) / places });
  const stepsOf = remembered((result: Step) => stepsFor(formula, [result]));
  let box: readonly Interval[] = [];
  const isEnclosed = new Uint8Array(formula.ops.length);
  const seen: Seen[] = [];
  return {
    places,
    leavesOf: remembered((result) =>
      [...stepsOf(result)]
        .filter((step) => formula.ops[step] === Op.leaf)
        .map((step) => formula.detail[step] as number),
    ),
    extreme: (result, leaves, sense) => {
      const { found } = seenBefore(seen, leaves);
      const key = `${result} ${sense}`;
      const known = found.get(key);
      if (known !== undefined) return known;
      lookAt(leaves, result);
      const bounds = extremeOf(rooms, stepsOf(result), { leaves, lane }, sense);
      found.set(key, bounds);
      return bounds;
    },
    along: (result, leaves) => {
      lookAt(leaves, result);
      return alongOf(rooms, stepsOf(result), { leaves, lane });
    },
  };
  /** Encloses what a result rests on, as far as it is not enclosed for this box. */
  function lookAt(leaves: readonly Interval[], result: Step): void {
    if (!sameBox(box, leaves)) {
      box = leaves.slice();
      isEnclosed.fill(0);
    }
    const fresh = stepsOf(result).filter((step) => isEnclosed[step] === 0);
    encloseTightly(rooms, fresh, stepsOf, { leaves, lane });
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
  return a.length === b.length && a.every((range, i) => range.low === b[i]?.low && range.high === b[i]?.high);
}

interface BoxOfPlaces {
  readonly leaves: readonly Interval[];
  readonly lane: (place: number) => Interval;
}

/** Bounds of a result over each piece. */
function alongOf(rooms: Rooms, steps: Int32Array, box: BoxOfPlaces): Interval[] {
  accumulate(rooms.slopes, rooms.enclosure, steps);
  const low = oneSide(rooms, steps, box, { side: 1, alongLift: true });
  const high = oneSide(rooms, steps, box, { side: -1, alongLift: true });
  return Array.from(low, (end, place) => ({ low: end, high: high[place] as number }));
}

/** Encloses steps in order; one that asks for it is bounded by its slopes before the next ones read it. */
function encloseTightly(rooms: Rooms, fresh: Int32Array, stepsOf: (step: Step) => Int32Array, box: BoxOfPlaces): void {
  const { enclosure } = rooms;
  const ranges = { leaf: (index: number) => box.leaves[index] as Interval, lane: box.lane };
  let from = 0;
  fresh.forEach((step, i) => {
    if (enclosure.formula.tight[step] !== 1) return;
    enclose(enclosure, fresh.subarray(from, i + 1), ranges);
    from = i + 1;
    const ends = enclosure.ends[step] as Ends;
    alongOf(rooms, stepsOf(step), box).forEach(({ low, high }, place) => {
      ends.low[place] = low;
      ends.high[place] = high;
    });
  });
  enclose(enclosure, fresh.subarray(from), ranges);
}

/**
 * The extreme along the lift lies between the outermost bound over any piece, and the innermost bound at one place of each
 * piece: whatever the truth, the result at that place is no better than the extreme.
 */
function extremeOf(rooms: Rooms, steps: Int32Array, box: BoxOfPlaces, sense: 1 | -1): Interval {
  accumulate(rooms.slopes, rooms.enclosure, steps);
  const outer = oneSide(rooms, steps, box, { side: sense, alongLift: true });
  const inner = oneSide(rooms, steps, box, { side: sense === 1 ? -1 : 1, alongLift: false });
  return sense === 1
    ? { low: Math.min(...outer), high: Math.min(...inner) }
    : { low: Math.max(...inner), high: Math.max(...outer) };
}

/** The lower bound (side 1) or the upper bound (side −1), all along each piece or at the place that is best for the other side. */
interface Side {
  readonly side: 1 | -1;
  readonly alongLift: boolean;
}

function oneSide(rooms: Rooms, steps: Int32Array, box: BoxOfPlaces, { side, alongLift }: Side): Float64Array {
  const { places, corner, enclosure, leafSteps, laneStep, slopes } = rooms;
  const result = steps[steps.length - 1] as Step;
  const slack = new Float64Array(places);
  const take = (step: Step, range: Interval, place: number, toward: 1 | -1, isFixed: boolean): number => {
    const low = (slopes.low[step] as Float64Array)[place] as number;
    const high = (slopes.high[step] as Float64Array)[place] as number;
    if (range.low === range.high || low >= 0) return toward === 1 ? range.low : range.high;
    if (high <= 0) return toward === 1 ? range.high : range.low;
    if (isFixed) return (range.low + range.high) / 2;
    const share = high === Infinity ? (low === -Infinity ? 0.5 : 0) : low === -Infinity ? 1 : -low / (high - low);
    const off = share * (range.high - range.low);
    slack[place] = (slack[place] as number) + (high === Infinity ? -low * (range.high - range.low) : high * off);
    return toward === 1 ? range.low + off : range.high - off;
  };
  evaluate(corner, steps, {
    leaf: (index, place) => take(leafSteps[index] as Step, box.leaves[index] as Interval, place, side, false),
    lane: (place) => take(laneStep as Step, box.lane(place), place, alongLift ? side : opposite(side), !alongLift),
  });
  const { low, high, stride } = enclosure.ends[result] as Ends;
  const bounds = new Float64Array(places);
  for (let i = 0; i < places; i += 1) {
    const plain = (side === 1 ? low : high)[i * stride] as number;
    const centred = valueAt(corner, result, i) - side * (slack[i] as number);
    bounds[i] = Number.isNaN(centred) ? plain : side === 1 ? Math.max(plain, centred) : Math.min(plain, centred);
  }
  return bounds;
}

function opposite(side: 1 | -1): 1 | -1 {
  return side === 1 ? -1 : 1;
}
