import { boundedFrom } from './corners.ts';
import { encloseStep, type Ends, type Ranges } from './enclose.ts';
import { evaluate } from './evaluate.ts';
import { Op, type Step } from './formula.ts';
import { derive, type Slopes } from './gradients.ts';
import type { Rooms } from './rooms.ts';

/**
 * Encloses steps in order, each as tightly as its own slopes allow before later ones read it: no step is farther from its
 * value at the middle than its steepest slopes times half of the ranges (mean value form). One that asks for it is bounded
 * at its corners as well.
 *
 * @param rooms rooms of the formula [rooms]
 * @param steps the steps to enclose; what they read is among them or enclosed already [steps]
 * @param stepsOf the steps that a step rests on, itself last [steps]
 * @param ranges ranges of leaves and places [canonical units; 0 to 1]
 */
export function encloseTightly(
  rooms: Rooms,
  steps: Int32Array,
  stepsOf: (step: Step) => Int32Array,
  ranges: Ranges,
): void {
  const { formula, enclosure, gradients, isOpen } = rooms;
  evaluate(rooms.middles, steps, {
    leaf: (index, place) => middle(ranges.leaf(index, place)),
    lane: (place) => middle(ranges.lane(place)),
  });
  for (const step of steps) {
    const op = formula.ops[step] as number;
    encloseStep(enclosure, step, ranges);
    if (op === Op.leaf || op === Op.lane) noteOpen(rooms, step);
    if (!isAnyOpen(gradients.inputs[step] as Int32Array, isOpen)) continue;
    derive(gradients, step, isOpen);
    if (op <= Op.lane) continue;
    narrow(rooms, step);
    if (formula.tight[step] === 1) narrowAtCorners(rooms, stepsOf(step));
  }
}

function middle({ low, high }: { readonly low: number; readonly high: number }): number {
  return (low + high) / 2;
}

function noteOpen({ gradients, enclosure, isOpen }: Rooms, step: Step): void {
  const { low, high } = enclosure.ends[step] as Ends;
  const input = gradients.inputs[step]?.[0] as number;
  isOpen[input] = 0;
  for (let i = 0; i < low.length; i += 1) if ((low[i] as number) < (high[i] as number)) isOpen[input] = 1;
}

function isAnyOpen(inputs: Int32Array, isOpen: Uint8Array): boolean {
  for (const input of inputs) if (isOpen[input] === 1) return true;
  return false;
}

/** Narrows a step to what its slopes from its value at the middle allow. */
function narrow(rooms: Rooms, step: Step): void {
  const { low, high, stride } = rooms.enclosure.ends[step] as Ends;
  const values = rooms.middles.values[step] as Float64Array;
  const away = awayFromMiddle(rooms, step);
  for (let i = 0; i < low.length; i += 1) {
    const value = values[i * stride] as number;
    const by = away[i] as number;
    if (value - by > (low[i] as number)) low[i] = value - by;
    if (value + by < (high[i] as number)) high[i] = value + by;
  }
}

/** How far a step can be from its value at the middle, by its slopes by every open input. */
function awayFromMiddle({ gradients, inputSteps, enclosure, isOpen, away }: Rooms, step: Step): Float64Array {
  const inputs = gradients.inputs[step] as Int32Array;
  const slopes = gradients.slopes[step] as Slopes;
  const n = slopes.count;
  away.fill(0);
  for (let k = 0; k < inputs.length; k += 1) {
    const input = inputs[k] as number;
    if (isOpen[input] !== 1 || slopes.isFlat[k] === 1) continue;
    const { low, high, stride } = enclosure.ends[inputSteps[input] as Step] as Ends;
    for (let i = 0, p = 0, q = k * n; i < n; i += 1, p += stride, q += 1) {
      const half = ((high[p] as number) - (low[p] as number)) / 2;
      if (half > 0) away[i] = (away[i] as number) + half * steepest(slopes.low[q] as number, slopes.high[q] as number);
    }
  }
  return away;
}

function steepest(low: number, high: number): number {
  return -low > high ? -low : high;
}

/** Narrows a step to its bounds at the corners of the ranges. */
function narrowAtCorners(rooms: Rooms, steps: Int32Array): void {
  const { low, high } = rooms.enclosure.ends[steps[steps.length - 1] as Step] as Ends;
  const from = boundedFrom(rooms, steps, { side: 1, alongLift: true }).bounds;
  const to = boundedFrom(rooms, steps, { side: -1, alongLift: true }).bounds;
  low.set(from.subarray(0, low.length));
  high.set(to.subarray(0, high.length));
}
