import { cosineOver, greatestProduct, leastProduct, type Enclosure, type Ends } from './enclose.ts';
import { Op, type Step } from './formula.ts';

/** The range of the slope of one result by every step, at every place. */
export interface Slopes {
  readonly low: readonly Float64Array[];
  readonly high: readonly Float64Array[];
}

/** Room for the slopes of a formula. */
export function openSlopes({ formula, places }: Enclosure): Slopes {
  const room = (): Float64Array[] => Array.from(formula.ops, () => new Float64Array(places));
  return { low: room(), high: room() };
}

/**
 * Runs the steps of one result backward over an enclosure: the slope of the result by each step lies in the range found,
 * for all values that the enclosure covers (reverse accumulation by the chain rule, on intervals).
 *
 * @param room made for the formula [slopes]
 * @param over what the steps were enclosed in [enclosure]
 * @param steps the steps of the result, in order, the result last [steps]
 */
export function accumulate(room: Slopes, over: Enclosure, steps: Int32Array): void {
  for (const step of steps) {
    (room.low[step] as Float64Array).fill(0);
    (room.high[step] as Float64Array).fill(0);
  }
  const result = steps[steps.length - 1] as Step;
  (room.low[result] as Float64Array).fill(1);
  (room.high[result] as Float64Array).fill(1);
  for (let k = steps.length - 1; k >= 0; k -= 1) {
    const step = steps[k] as Step;
    const op = over.formula.ops[step] as number;
    if (op <= Op.lane) continue;
    const pass: Pass = { room, over, step, first: over.formula.first[step] as Step };
    if (over.formula.second[step] === -1) backOne(pass, op);
    else backTwo(pass, op, over.formula.second[step] as Step);
  }
}

/** One step whose slope is handed back to what it reads. */
interface Pass {
  readonly room: Slopes;
  readonly over: Enclosure;
  readonly step: Step;
  readonly first: Step;
}

function endsOf({ over }: Pass, step: Step): Ends {
  return over.ends[step] as Ends;
}

/**
 * Adds the slope of the step, times a range of factors, to the slope by one of the steps it reads. What is one number all
 * over the box rests on nothing that varies: no slope is asked of it.
 */
function give({ room, step, over }: Pass, to: Step, factors: Ends): void {
  const target = over.ends[to] as Ends;
  if (target.stride === 0 && target.low[0] === target.high[0]) return;
  const low = room.low[step] as Float64Array;
  const high = room.high[step] as Float64Array;
  const intoLow = room.low[to] as Float64Array;
  const intoHigh = room.high[to] as Float64Array;
  for (let i = 0, p = 0; i < over.places; i += 1, p += factors.stride) {
    const l = low[i] as number;
    const h = high[i] as number;
    if (l === 0 && h === 0) continue;
    const fl = factors.low[p] as number;
    const fh = factors.high[p] as number;
    intoLow[i] = (intoLow[i] as number) + leastProduct(l, h, fl, fh);
    intoHigh[i] = (intoHigh[i] as number) + greatestProduct(l, h, fl, fh);
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

/** The slopes of a step by what it reads: they hold for the box, whatever the result is. */
function factorOf(pass: Pass, which: 'first' | 'second', work: () => Ends): Ends {
  const known = pass.over.factors[pass.step] as { first: Ends | null; second: Ends | null };
  return (known[which] ??= work());
}

function backOne(pass: Pass, op: number): void {
  const a = endsOf(pass, pass.first);
  const slope = slopeOfOne[op] as (from: number, to: number) => readonly [number, number];
  const factor = (): Ends => factorsOver(a, (i) => slope(a.low[i] as number, a.high[i] as number));
  give(pass, pass.first, factorOf(pass, 'first', factor));
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

const unchanged: Ends = { low: Float64Array.of(1), high: Float64Array.of(1), stride: 0 };
const reversed: Ends = { low: Float64Array.of(-1), high: Float64Array.of(-1), stride: 0 };

function backTwo(pass: Pass, op: number, second: Step): void {
  const { first } = pass;
  switch (op) {
    case Op.add:
      give(pass, first, unchanged);
      return give(pass, second, unchanged);
    case Op.subtract:
      give(pass, first, unchanged);
      return give(pass, second, reversed);
    case Op.multiply:
      give(pass, first, endsOf(pass, second));
      return give(pass, second, endsOf(pass, first));
    case Op.divide:
      return backDivide(pass, second);
    default:
      return backChoice(pass, op, second);
  }
}

/** By the dividend 1/b, by the divisor −(a/b)/b. */
function backDivide(pass: Pass, second: Step): void {
  const inverse = factorOf(pass, 'first', () => inverseOf(endsOf(pass, second)));
  give(pass, pass.first, inverse);
  give(
    pass,
    second,
    factorOf(pass, 'second', () => byDivisor(endsOf(pass, pass.step), inverse)),
  );
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

/** The lesser or greater of two hands the slope to the one that is taken; where that is open, to both in part. */
function backChoice(pass: Pass, op: number, second: Step): void {
  const a = endsOf(pass, pass.first);
  const b = endsOf(pass, second);
  const out = endsOf(pass, pass.step);
  const share = (mine: Ends, other: Ends): Ends =>
    factorsOver(out, (i) => {
      const [ml, mh] = [mine.low[i * mine.stride] as number, mine.high[i * mine.stride] as number];
      const [ol, oh] = [other.low[i * other.stride] as number, other.high[i * other.stride] as number];
      const [isTaken, isNever] = op === Op.lesser ? [mh < ol, ml > oh] : [ml > oh, mh < ol];
      return [isTaken ? 1 : 0, isNever ? 0 : 1];
    });
  give(
    pass,
    pass.first,
    factorOf(pass, 'first', () => share(a, b)),
  );
  give(
    pass,
    second,
    factorOf(pass, 'second', () => share(b, a)),
  );
}
