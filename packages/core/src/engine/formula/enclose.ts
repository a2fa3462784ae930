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

/** The ranges of the leaves, and of the lift between neighbouring places. */
export interface Ranges {
  readonly leaf: (index: number) => Interval;
  readonly lane: (place: number) => Interval;
}

/** Room to enclose a formula at a number of places. */
export function openEnclosure(formula: Formula, places: number): Enclosure {
  const ends = Array.from(formula.laned, (laned): Ends => {
    const count = laned === 1 ? places : 1;
    return { low: new Float64Array(count), high: new Float64Array(count), stride: laned === 1 ? 1 : 0 };
  });
  return { formula, places, ends };
}

/**
 * Runs the steps on intervals: every step then holds all values it can take over the ranges, often with slack.
 *
 * @param room made for the formula [enclosure]
 * @param steps the steps to run, in order [steps]
 * @param ranges ranges of leaves and places [canonical units; 0 to 1]
 */
export function enclose(room: Enclosure, steps: Int32Array, ranges: Ranges): void {
  const { formula, ends } = room;
  for (const step of steps) {
    const op = formula.ops[step] as number;
    const out = ends[step] as Ends;
    if (op <= Op.lane) start(out, op, formula.detail[step] as number, ranges);
    else if (formula.second[step] === -1) one(op, ends[formula.first[step] as Step] as Ends, out);
    else two(op, ends[formula.first[step] as Step] as Ends, ends[formula.second[step] as Step] as Ends, out);
  }
}

function start({ low, high }: Ends, op: number, detail: number, ranges: Ranges): void {
  for (let i = 0; i < low.length; i += 1) {
    const range = op === Op.leaf ? ranges.leaf(detail) : op === Op.lane ? ranges.lane(i) : null;
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
  const holds = (angle: number): boolean => Math.floor((to - angle) / (2 * Math.PI)) * 2 * Math.PI + angle >= from;
  const [a, b] = [Math.cos(from), Math.cos(to)];
  return [holds(Math.PI) ? -1 : Math.min(a, b), holds(0) ? 1 : Math.max(a, b)];
}

function one(op: number, a: Ends, { low, high }: Ends): void {
  const of = ofOne[op] as (from: number, to: number) => readonly [number, number];
  for (let i = 0, p = 0; i < low.length; i += 1, p += a.stride) {
    const range = of(a.low[p] as number, a.high[p] as number);
    low[i] = range[0];
    high[i] = range[1];
  }
}

/** Ends of a step from the ends of two others, at one place: [al, ah] with [bl, bh]. */
type Pair = (al: number, ah: number, bl: number, bh: number) => number;

/** What an operation makes of the ends of two ranges: its lower end, and its upper end. */
const ofTwo: Readonly<Record<number, readonly [Pair, Pair]>> = {
  [Op.add]: [(al, _ah, bl) => al + bl, (_al, ah, _bl, bh) => ah + bh],
  [Op.subtract]: [(al, _ah, _bl, bh) => al - bh, (_al, ah, bl) => ah - bl],
  [Op.multiply]: [leastProduct, (al, ah, bl, bh) => -leastProduct(-ah, -al, bl, bh)],
  [Op.divide]: [
    (al, ah, bl, bh) => (bl <= 0 && bh >= 0 ? -Infinity : leastProduct(al, ah, 1 / bh, 1 / bl)),
    (al, ah, bl, bh) => (bl <= 0 && bh >= 0 ? Infinity : -leastProduct(-ah, -al, 1 / bh, 1 / bl)),
  ],
  [Op.lesser]: [(al, _ah, bl) => Math.min(al, bl), (_al, ah, _bl, bh) => Math.min(ah, bh)],
  [Op.greater]: [(al, _ah, bl) => Math.max(al, bl), (_al, ah, _bl, bh) => Math.max(ah, bh)],
};

function two(op: number, a: Ends, b: Ends, { low, high }: Ends): void {
  const [lower, upper] = ofTwo[op] as readonly [Pair, Pair];
  for (let i = 0, p = 0, q = 0; i < low.length; i += 1, p += a.stride, q += b.stride) {
    const al = a.low[p] as number;
    const ah = a.high[p] as number;
    const bl = b.low[q] as number;
    const bh = b.high[q] as number;
    low[i] = lower(al, ah, bl, bh);
    high[i] = upper(al, ah, bl, bh);
  }
}

/** The least product of two ranges; zero times an unbounded end is zero. */
export function leastProduct(al: number, ah: number, bl: number, bh: number): number {
  const least = Math.min(al * bl, al * bh, ah * bl, ah * bh);
  return Number.isNaN(least) ? leastOfUnbounded(al, ah, bl, bh) : least;
}

function leastOfUnbounded(al: number, ah: number, bl: number, bh: number): number {
  const times = (x: number, y: number): number => (x === 0 || y === 0 ? 0 : x * y);
  return Math.min(times(al, bl), times(al, bh), times(ah, bl), times(ah, bh));
}
