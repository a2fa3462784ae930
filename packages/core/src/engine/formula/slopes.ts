import { cosineOver, greatestProduct, leastProduct, openEnds, type Enclosure, type Ends } from './enclose.ts';
import { Op, type Step } from './formula.ts';

/** The ranges of the slopes of a step by the first and by the second of the steps it reads. */
export interface Factors {
  readonly first: Ends;
  readonly second: Ends | null;
}

/** Room for factors that are worked out, and used before the next are: those of a step that changes along the lift, or not. */
export interface FactorRoom {
  readonly laned: readonly [Ends, Ends];
  readonly same: readonly [Ends, Ends];
}

/** Room for the factors of one step at a time. */
export function openFactors(places: number): FactorRoom {
  const two = (count: number, isLaned: boolean): readonly [Ends, Ends] => [
    openEnds(count, isLaned),
    openEnds(count, isLaned),
  ];
  return { laned: two(places, true), same: two(1, false) };
}

/**
 * The slopes of one step by what it reads, for all values that an enclosure covers; not of sums and differences, which are
 * ±1 anywhere.
 *
 * @param over what the step and those it reads are enclosed in [enclosure]
 * @param step a step that reads others [step]
 * @param room where they are worked out [room]
 * @returns ranges of its slopes at every place, until the room is used again [units of the step by those of what it reads]
 */
export function factorsOf({ formula, ends }: Enclosure, step: Step, room: FactorRoom): Factors {
  const op = formula.ops[step] as number;
  const a = ends[formula.first[step] as Step] as Ends;
  const b = ends[formula.second[step] as Step];
  const out = ends[step] as Ends;
  if (b !== undefined && op === Op.multiply) return { first: b, second: a };
  const [first, second] = out.stride === 1 ? room.laned : room.same;
  if (b === undefined) {
    ofOneRange(op, a, first);
    return { first, second: null };
  }
  if (op === Op.divide) ofQuotient(out, b, first, second);
  else ofChosen(a, b, op === Op.lesser, first, second);
  return { first, second };
}

/** The slope of an operation on one range by that range; where a root or an arc sine is clipped it is flat. */
function ofOneRange(op: number, a: Ends, into: Ends): void {
  const write = slopeOfOne[op] as (from: number, to: number, into: Ends, i: number) => void;
  for (let i = 0, p = 0; i < into.low.length; i += 1, p += a.stride) {
    write(a.low[p] as number, a.high[p] as number, into, i);
  }
}

const slopeOfOne: Readonly<Record<number, (from: number, to: number, into: Ends, i: number) => void>> = {
  [Op.square]: (from, to, into, i) => {
    into.low[i] = 2 * from;
    into.high[i] = 2 * to;
  },
  [Op.squareRoot]: (from, to, into, i) => {
    into.low[i] = from < 0 || to < 0 ? 0 : 0.5 / Math.sqrt(to);
    into.high[i] = to < 0 ? 0 : from <= 0 ? Infinity : 0.5 / Math.sqrt(from);
  },
  [Op.sine]: (from, to, into, i) => {
    [into.low[i], into.high[i]] = cosineOver(from, to);
  },
  [Op.cosine]: (from, to, into, i) => {
    [into.low[i], into.high[i]] = cosineOver(from + Math.PI / 2, to + Math.PI / 2);
  },
  [Op.arcTangent]: (from, to, into, i) => {
    const least = leastSize(from, to);
    const most = Math.max(-from, to);
    into.low[i] = 1 / (1 + most * most);
    into.high[i] = 1 / (1 + least * least);
  },
  [Op.arcSine]: (from, to, into, i) => {
    const least = leastSize(from, to);
    const most = Math.max(-from, to);
    into.low[i] = most > 1 ? 0 : 1 / Math.sqrt(1 - least * least);
    into.high[i] = least > 1 ? 0 : most >= 1 ? Infinity : 1 / Math.sqrt(1 - most * most);
  },
};

function leastSize(from: number, to: number): number {
  if (from > 0) return from;
  return to < 0 ? -to : 0;
}

/** By the dividend 1/b, by the divisor −(a/b)/b. */
function ofQuotient(quotient: Ends, b: Ends, byDividend: Ends, byDivisor: Ends): void {
  for (let i = 0, p = 0; i < byDividend.low.length; i += 1, p += b.stride) {
    const isOpen = (b.low[p] as number) <= 0 && (b.high[p] as number) >= 0;
    const from = isOpen ? -Infinity : 1 / (b.high[p] as number);
    const to = isOpen ? Infinity : 1 / (b.low[p] as number);
    byDividend.low[i] = from;
    byDividend.high[i] = to;
    byDivisor.low[i] = leastProduct(-(quotient.high[i] as number), -(quotient.low[i] as number), from, to);
    byDivisor.high[i] = greatestProduct(-(quotient.high[i] as number), -(quotient.low[i] as number), from, to);
  }
}

/** The lesser or greater of two has the slope of the one that is taken; where that is open, of both in part. */
function ofChosen(a: Ends, b: Ends, isLesser: boolean, byFirst: Ends, bySecond: Ends): void {
  for (let i = 0, p = 0, q = 0; i < byFirst.low.length; i += 1, p += a.stride, q += b.stride) {
    const isUnder = (a.high[p] as number) < (b.low[q] as number);
    const isOver = (a.low[p] as number) > (b.high[q] as number);
    const isTaken = isLesser ? isUnder : isOver;
    const isOther = isLesser ? isOver : isUnder;
    byFirst.low[i] = isTaken ? 1 : 0;
    byFirst.high[i] = isOther ? 0 : 1;
    bySecond.low[i] = isOther ? 1 : 0;
    bySecond.high[i] = isTaken ? 0 : 1;
  }
}
