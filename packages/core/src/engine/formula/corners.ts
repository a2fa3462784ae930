import type { Ends } from './enclose.ts';
import { evaluate, valueAt } from './evaluate.ts';
import type { Step } from './formula.ts';
import { laneOf } from './gradients.ts';
import type { Rooms } from './rooms.ts';

/** The lower bound (side 1) or the upper bound (side −1) of a result, all along each piece of the lift or at one place of it. */
export interface Side {
  readonly side: 1 | -1;
  readonly alongLift: boolean;
}

/** Bounds of a result at every place, and what it comes to where they were taken: values that it does have. */
export interface Bounded {
  readonly bounds: Float64Array;
  readonly values: Float64Array;
  /** Where along the lift they were taken, 0 to 1. */
  readonly lanes: Float64Array;
}

/**
 * Bounds a result from one side at every place. An input whose slope keeps its sign is put at the end that gives the bound;
 * one whose slope may have either sign is put where the steepest slopes to both of its ends cost the same, which is the best
 * place for it, and that cost is taken off. The enclosure limits the bound as well.
 *
 * @param rooms rooms in which the steps are enclosed [rooms]
 * @param steps the steps of the result, in order, the result last [steps]
 * @param how which bound [side]
 * @returns bounds and the values behind them [units of the result]
 */
export function boundedFrom(rooms: Rooms, steps: Int32Array, how: Side): Bounded {
  const { places, corners, enclosure, spots } = rooms;
  const result = steps[steps.length - 1] as Step;
  const costs = putAtCorners(rooms, result, how);
  evaluate(corners, steps, { ...unasked, rows: spots });
  const { low, high, stride } = enclosure.ends[result] as Ends;
  const bounds = new Float64Array(places);
  const values = new Float64Array(places);
  for (let i = 0; i < places; i += 1) {
    const value = valueAt(corners, result, i);
    const cost = costs[i] as number;
    values[i] = value;
    bounds[i] =
      how.side === 1
        ? innermost(low[i * stride] as number, value - cost, Math.max)
        : innermost(high[i * stride] as number, value + cost, Math.min);
  }
  return { bounds, values, lanes: (spots[laneOf(rooms.formula)] as Float64Array).slice() };
}

/** Where rows are given, nothing else is asked for. */
const unasked = { leaf: (): number => NaN, lane: (): number => NaN };

function innermost(enclosed: number, centred: number, pick: (a: number, b: number) => number): number {
  return Number.isNaN(centred) ? enclosed : pick(enclosed, centred);
}

/** Puts every input of a result where its bound is taken, and says what that costs, by place. */
function putAtCorners(rooms: Rooms, result: Step, { side, alongLift }: Side): Float64Array {
  const costs = new Float64Array(rooms.places);
  const lane = laneOf(rooms.formula);
  (rooms.gradients.inputs[result] as Int32Array).forEach((input, k) => {
    const isPlaced = input === lane && !alongLift;
    put(rooms, result, k, isPlaced ? opposite(side) : side, isPlaced ? null : costs);
  });
  return costs;
}

function put(rooms: Rooms, result: Step, k: number, toward: 1 | -1, costs: Float64Array | null): void {
  const input = rooms.gradients.inputs[result]?.[k] as number;
  const { low, high, stride } = rooms.enclosure.ends[rooms.inputSteps[input] as Step] as Ends;
  const spot = rooms.spots[input] as Float64Array;
  const slopes = rooms.isOpen[input] === 1 ? (rooms.gradients.slopes[result] ?? null) : null;
  const isPlain = slopes === null || slopes.isFlat[k] === 1;
  for (let i = 0; i < rooms.places; i += 1) {
    const [from, to] = [low[i * stride] as number, high[i * stride] as number];
    spot[i] = from;
    if (from === to || isPlain) continue;
    const at = k * slopes.count + (slopes.count === 1 ? 0 : i);
    const [least, most] = [slopes.low[at] as number, slopes.high[at] as number];
    const share = costs === null ? nearestHalf(shareAt(least, most)) : shareAt(least, most);
    spot[i] = between(from, to, toward === 1 ? share : 1 - share);
    if (costs !== null) costs[i] = (costs[i] as number) + costAt(least, most) * (to - from);
  }
}

/** Where an input is put in its range, as a share of it, for the lower bound of a result whose slope lies in a range. */
function shareAt(least: number, most: number): number {
  if (least >= 0) return 0;
  if (most <= 0) return 1;
  if (most === Infinity) return least === -Infinity ? 0.5 : 0;
  return least === -Infinity ? 1 : -least / (most - least);
}

/** At one place of a piece any place will do: its ends and its middle come near enough to the best. */
function nearestHalf(share: number): number {
  return Math.round(2 * share) / 2;
}

/** What the result may be lower elsewhere in the range, for each unit of it; nothing where its slope keeps its sign. */
export function costAt(least: number, most: number): number {
  if (least >= 0 || most <= 0) return 0;
  if (most === Infinity) return -least;
  return least === -Infinity ? most : (-least / (most - least)) * most;
}

function between(from: number, to: number, share: number): number {
  if (share === 0) return from;
  return share === 1 ? to : from + share * (to - from);
}

/** The other side. */
export function opposite(side: 1 | -1): 1 | -1 {
  return side === 1 ? -1 : 1;
}
