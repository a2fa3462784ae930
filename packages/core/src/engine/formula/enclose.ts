import type { Interval } from '../geometry/index.ts';
import { Op, type Formula, type Step } from './formula.ts';

/** The lower and upper ends of one step, at every place or the same at all. */
export interface Ends {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** How far to go on for the next place: 0 where the step is the same at all. */
  readonly stride: 0 | 1;
}

/** Room for the ends of every step. */
export interface Enclosure {
  readonly formula: Formula;
  readonly places: number;
  readonly ends: readonly Ends[];
}

/** The ranges of the leaves, which in a wide enclosure may differ from place to place, and of the lift at each place. */
export interface Ranges {
  readonly leaf: (index: number, place: number) => Interval;
  readonly lane: (place: number) => Interval;
}

/** Room to enclose a formula at a number of places; with `wide`, leaves too may differ from place to place. */
export function openEnclosure(formula: Formula, places: number, wide = false): Enclosure {
  const ends = Array.from(formula.laned, (laned) => openEnds(wide || laned === 1 ? places : 1, wide || laned === 1));
  return { formula, places, ends };
}

/** Room for lower and upper ends. */
export function openEnds(count: number, isLaned: boolean): Ends {
  return { low: new Float64Array(count), high: new Float64Array(count), stride: isLaned ? 1 : 0 };
}

/**
 * Runs the steps on intervals: every step then holds all values it can take over the ranges, often with slack.
 *
 * @param room made for the formula [enclosure]
 * @param steps the steps to run, in order [steps]
 * @param ranges ranges of leaves and places [canonical units; 0 to 1]
 */
export function enclose(room: Enclosure, steps: Int32Array, ranges: Ranges): void {
  for (const step of steps) encloseStep(room, step, ranges);
}

/** Runs one step on intervals, after those it reads. */
export function encloseStep({ formula, ends }: Enclosure, step: Step, ranges: Ranges): void {
  const op = formula.ops[step] as number;
  const out = ends[step] as Ends;
  if (op <= Op.lane) start(out, op, formula.detail[step] as number, ranges);
  else if (formula.second[step] === -1) one(op, ends[formula.first[step] as Step] as Ends, out);
  else two(op, ends[formula.first[step] as Step] as Ends, ends[formula.second[step] as Step] as Ends, out);
}

function start({ low, high }: Ends, op: number, detail: number, ranges: Ranges): void {
  for (let i = 0; i < low.length; i += 1) {
    const range = op === Op.leaf ? ranges.leaf(detail, i) : op === Op.lane ? ranges.lane(i) : null;
    low[i] = range === null ? detail : range.low;
    high[i] = range === null ? detail : range.high;
  }
}

/** What an operation makes of the ends of one range; the second entry is the upper end. */
const ofOne: Readonly<Record<number, (from: number, to: number) => readonly [number, number]>> = {
  [Op.square]: (from, to) => [from > 0 ? from * from : to < 0 ? to * to : 0, Math.max(from * from, to * to)],
  [Op.squareRoot]: (from, to) => [Math.sqrt(Math.max(0, from)), Math.sqrt(Math.max(0, to))],
  [Op.sine]: (from, to) => cosineOver(from - Math.PI / 2, to - Math.PI / 2),
  [Op.cosine]: (from, to) => cosineOver(from, to),
  [Op.arcTangent]: (from, to) => [Math.atan(from), Math.atan(to)],
  [Op.arcSine]: (from, to) => [clippedArcSine(from), clippedArcSine(to)],
};

function clippedArcSine(value: number): number {
  return Math.asin(Math.min(1, Math.max(-1, value)));
}

/** cos over [from, to]: its ends, and 1 or −1 where a multiple of π lies between. */
export function cosineOver(from: number, to: number): readonly [number, number] {
  const a = Math.cos(from);
  const b = Math.cos(to);
  return [holdsTurn(from, to, Math.PI) ? -1 : Math.min(a, b), holdsTurn(from, to, 0) ? 1 : Math.max(a, b)];
}

/** Does a range hold an angle, or the same a number of full turns on? */
function holdsTurn(from: number, to: number, angle: number): boolean {
  return Math.floor((to - angle) / (2 * Math.PI)) * 2 * Math.PI + angle >= from;
}

function one(op: number, a: Ends, { low, high }: Ends): void {
  const of = ofOne[op] as (from: number, to: number) => readonly [number, number];
  for (let i = 0, p = 0; i < low.length; i += 1, p += a.stride) {
    const range = of(a.low[p] as number, a.high[p] as number);
    low[i] = range[0];
    high[i] = range[1];
  }
}

function two(op: number, a: Ends, b: Ends, out: Ends): void {
  switch (op) {
    case Op.add:
      return sum(a, b, out);
    case Op.subtract:
      return difference(a, b, out);
    case Op.multiply:
      return product(a, b, out);
    case Op.divide:
      return quotient(a, b, out);
    default:
      return chosen(op === Op.lesser ? Math.min : Math.max, a, b, out);
  }
}

function sum(a: Ends, b: Ends, { low, high }: Ends): void {
  for (let i = 0, p = 0, q = 0; i < low.length; i += 1, p += a.stride, q += b.stride) {
    low[i] = (a.low[p] as number) + (b.low[q] as number);
    high[i] = (a.high[p] as number) + (b.high[q] as number);
  }
}

function difference(a: Ends, b: Ends, { low, high }: Ends): void {
  for (let i = 0, p = 0, q = 0; i < low.length; i += 1, p += a.stride, q += b.stride) {
    low[i] = (a.low[p] as number) - (b.high[q] as number);
    high[i] = (a.high[p] as number) - (b.low[q] as number);
  }
}

function product(a: Ends, b: Ends, { low, high }: Ends): void {
  for (let i = 0, p = 0, q = 0; i < low.length; i += 1, p += a.stride, q += b.stride) {
    const al = a.low[p] as number;
    const ah = a.high[p] as number;
    const bl = b.low[q] as number;
    const bh = b.high[q] as number;
    low[i] = leastProduct(al, ah, bl, bh);
    high[i] = greatestProduct(al, ah, bl, bh);
  }
}

function quotient(a: Ends, b: Ends, { low, high }: Ends): void {
  for (let i = 0, p = 0, q = 0; i < low.length; i += 1, p += a.stride, q += b.stride) {
    const bl = b.low[q] as number;
    const bh = b.high[q] as number;
    const isOpen = bl <= 0 && bh >= 0;
    low[i] = isOpen ? -Infinity : leastProduct(a.low[p] as number, a.high[p] as number, 1 / bh, 1 / bl);
    high[i] = isOpen ? Infinity : greatestProduct(a.low[p] as number, a.high[p] as number, 1 / bh, 1 / bl);
  }
}

function chosen(pick: (x: number, y: number) => number, a: Ends, b: Ends, { low, high }: Ends): void {
  for (let i = 0, p = 0, q = 0; i < low.length; i += 1, p += a.stride, q += b.stride) {
    low[i] = pick(a.low[p] as number, b.low[q] as number);
    high[i] = pick(a.high[p] as number, b.high[q] as number);
  }
}

/** The least product of two ranges; zero times an unbounded end is zero. */
export function leastProduct(al: number, ah: number, bl: number, bh: number): number {
  const least =
    bl >= 0
      ? al * (al >= 0 ? bl : bh)
      : bh <= 0
        ? ah * (ah >= 0 ? bl : bh)
        : al >= 0
          ? ah * bl
          : ah <= 0
            ? al * bh
            : Math.min(al * bh, ah * bl);
  return Number.isNaN(least) ? leastOfUnbounded(al, ah, bl, bh) : least;
}

/** The greatest product of two ranges. */
export function greatestProduct(al: number, ah: number, bl: number, bh: number): number {
  const greatest =
    bl >= 0
      ? ah * (ah >= 0 ? bh : bl)
      : bh <= 0
        ? al * (al >= 0 ? bh : bl)
        : al >= 0
          ? ah * bh
          : ah <= 0
            ? al * bl
            : Math.max(al * bl, ah * bh);
  return Number.isNaN(greatest) ? -leastOfUnbounded(-ah, -al, bl, bh) : greatest;
}

function times(x: number, y: number): number {
  return x === 0 || y === 0 ? 0 : x * y;
}

function leastOfUnbounded(al: number, ah: number, bl: number, bh: number): number {
  return Math.min(times(al, bl), times(al, bh), times(ah, bl), times(ah, bh));
}
