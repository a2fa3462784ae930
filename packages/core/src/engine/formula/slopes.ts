import { cosineOver, greatestProduct, leastProduct, type Enclosure, type Ends } from './enclose.ts';
import { Op, type Step } from './formula.ts';

/** The ranges of the slopes of a step by the first and by the second of the steps it reads. */
export interface Factors {
  readonly first: Ends;
  readonly second: Ends | null;
}

const unchanged: Ends = { low: Float64Array.of(1), high: Float64Array.of(1), stride: 0 };
const reversed: Ends = { low: Float64Array.of(-1), high: Float64Array.of(-1), stride: 0 };

/**
 * The slopes of one step by what it reads, for all values that an enclosure covers.
 *
 * @param over what the step and those it reads are enclosed in [enclosure]
 * @param step a step that reads others [step]
 * @returns ranges of its slopes at every place [units of the step by those of what it reads]
 */
export function factorsOf({ formula, ends }: Enclosure, step: Step): Factors {
  const op = formula.ops[step] as number;
  const a = ends[formula.first[step] as Step] as Ends;
  const b = ends[formula.second[step] as Step];
  if (b === undefined) return { first: ofOneRange(op, a), second: null };
  const out = ends[step] as Ends;
  switch (op) {
    case Op.add:
      return { first: unchanged, second: unchanged };
    case Op.subtract:
      return { first: unchanged, second: reversed };
    case Op.multiply:
      return { first: b, second: a };
    case Op.divide:
      return ofQuotient(out, b);
    default:
      return { first: shareOf(out, a, b, op === Op.lesser), second: shareOf(out, b, a, op === Op.lesser) };
  }
}

/** The slope of an operation on one range by that range; where a root or an arc sine is clipped it is flat. */
const slopeOfOne: Readonly<Record<number, (from: number, to: number) => readonly [number, number]>> = {
  [Op.square]: (from, to) => [2 * from, 2 * to],
  [Op.squareRoot]: (from, to) => {
    if (to < 0) return [0, 0];
    return [from < 0 ? 0 : 0.5 / Math.sqrt(to), from <= 0 ? Infinity : 0.5 / Math.sqrt(from)];
  },
  [Op.sine]: (from, to) => cosineOver(from, to),
  [Op.cosine]: (from, to) => cosineOver(from + Math.PI / 2, to + Math.PI / 2),
  [Op.arcTangent]: (from, to) => {
    const [least, most] = sizes(from, to);
    return [1 / (1 + most * most), 1 / (1 + least * least)];
  },
  [Op.arcSine]: (from, to) => {
    const [least, most] = sizes(from, to);
    if (least > 1) return [0, 0];
    return [most > 1 ? 0 : 1 / Math.sqrt(1 - least * least), most >= 1 ? Infinity : 1 / Math.sqrt(1 - most * most)];
  },
};

function sizes(from: number, to: number): readonly [number, number] {
  if (from > 0) return [from, to];
  return to < 0 ? [-to, -from] : [0, Math.max(-from, to)];
}

function ofOneRange(op: number, a: Ends): Ends {
  const slope = slopeOfOne[op] as (from: number, to: number) => readonly [number, number];
  return factorsOver(a, (i) => slope(a.low[i] as number, a.high[i] as number));
}

function factorsOver({ low, stride }: Ends, factor: (i: number) => readonly [number, number]): Ends {
  const factors = { low: new Float64Array(low.length), high: new Float64Array(low.length), stride };
  for (let i = 0; i < low.length; i += 1) {
    const range = factor(i);
    factors.low[i] = range[0];
    factors.high[i] = range[1];
  }
  return factors;
}

/** By the dividend 1/b, by the divisor −(a/b)/b. */
function ofQuotient(quotient: Ends, divisor: Ends): Factors {
  const inverse = inverseOf(divisor);
  return { first: inverse, second: byDivisor(quotient, inverse) };
}

function inverseOf(b: Ends): Ends {
  return factorsOver(b, (i) => {
    const from = b.low[i] as number;
    const to = b.high[i] as number;
    return from <= 0 && to >= 0 ? [-Infinity, Infinity] : [1 / to, 1 / from];
  });
}

function byDivisor(quotient: Ends, inverse: Ends): Ends {
  return factorsOver(quotient, (i) => {
    const q: readonly [number, number] = [-(quotient.high[i] as number), -(quotient.low[i] as number)];
    const k = i * inverse.stride;
    const [from, to] = [inverse.low[k] as number, inverse.high[k] as number];
    return [leastProduct(...q, from, to), greatestProduct(...q, from, to)];
  });
}

/** The lesser or greater of two has the slope of the one that is taken; where that is open, of both in part. */
function shareOf(out: Ends, mine: Ends, other: Ends, isLesser: boolean): Ends {
  const [near, far] = isLesser ? [mine, other] : [other, mine];
  return factorsOver(out, (i) => {
    const isTaken = (near.high[i * near.stride] as number) < (far.low[i * far.stride] as number);
    const isNever = (near.low[i * near.stride] as number) > (far.high[i * far.stride] as number);
    return [isTaken ? 1 : 0, isNever ? 0 : 1];
  });
}
