import { greatestProduct, leastProduct, type Enclosure, type Ends } from './enclose.ts';
import { Op, type Formula, type Step } from './formula.ts';
import { factorsOf, openFactors, type FactorRoom } from './slopes.ts';

/**
 * The slopes of steps by the inputs they rest on, over all that an enclosure covers. Inputs are the leaves by their number
 * and, after them, the place along the lift.
 */
export interface Gradients extends Inputs {
  readonly over: Enclosure;
  /** By step, room for the slopes by each of its inputs, one input after the other; null until it is asked for. */
  readonly slopes: (Slopes | null)[];
  readonly factors: FactorRoom;
}

/** Lower and upper ends of slopes, place by place, of the first input, then of the next. */
export interface Slopes {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Places of each input: one where the step is the same at all of them. */
  readonly count: number;
  /** 1 for each input by which the slope is nothing at every place. */
  readonly isFlat: Uint8Array;
}

/** What each step of a formula rests on. */
interface Inputs {
  /** The inputs that each step rests on, in order. */
  readonly inputs: readonly Int32Array[];
  /** By step and input, in that order: where the input stands among those of the first, and of the second, step that is read; −1 where it does not. */
  readonly throughFirst: readonly Int32Array[];
  readonly throughSecond: readonly Int32Array[];
}

const known = new WeakMap<Formula, Inputs>();

/** Room for the slopes of what is enclosed. */
export function openGradients(over: Enclosure): Gradients {
  const { formula } = over;
  const read = known.get(formula) ?? readInputs(formula);
  known.set(formula, read);
  return { ...read, over, slopes: Array.from(formula.ops, () => null), factors: openFactors(over.places) };
}

/** The number of the place along the lift among the inputs. */
export function laneOf(formula: Formula): number {
  return formula.leaves.length;
}

function readInputs(formula: Formula): Inputs {
  const inputs: Int32Array[] = [];
  const throughFirst: Int32Array[] = [];
  const throughSecond: Int32Array[] = [];
  const none = new Int32Array(0);
  formula.ops.forEach((op, step) => {
    const own = op === Op.leaf ? (formula.detail[step] as number) : laneOf(formula);
    const [a, b] = [inputs[formula.first[step] as Step] ?? none, inputs[formula.second[step] as Step] ?? none];
    const all = op === Op.leaf || op === Op.lane ? Int32Array.of(own) : merged(a, b);
    inputs.push(all);
    throughFirst.push(all.map((input) => a.indexOf(input)));
    throughSecond.push(all.map((input) => b.indexOf(input)));
  });
  return { inputs, throughFirst, throughSecond };
}

/** Two lists in order as one; a list that holds the other is handed back as it is. */
function merged(a: Int32Array, b: Int32Array): Int32Array {
  const more = b.filter((input) => !a.includes(input));
  if (more.length === 0) return a;
  return more.length === b.length && a.length === 0 ? b : Int32Array.of(...a, ...more).sort();
}

/**
 * Works out the slopes of one step by every open input, from those of the steps it reads: the chain rule, forward, on
 * intervals.
 *
 * @param room where the slopes of the steps it reads stand [slopes]
 * @param step a step that is enclosed [step]
 * @param isOpen 1 for every input that is more than one number [flags]
 */
export function derive(room: Gradients, step: Step, isOpen: Uint8Array): void {
  const { ops, first, second } = room.over.formula;
  const out = slopesOf(room, step);
  const op = ops[step] as number;
  if (op <= Op.lane) {
    out.low.fill(1);
    out.high.fill(1);
    out.isFlat[0] = 0;
    return;
  }
  const a = room.slopes[first[step] as Step] ?? null;
  const b = room.slopes[second[step] as Step] ?? null;
  const isSum = op === Op.add || op === Op.subtract;
  const factors = isSum ? null : factorsOf(room.over, step, room.factors);
  const isChosen = op === Op.lesser || op === Op.greater;
  const byA = factors === null ? plus : isChosen ? plainly(factors.first) : factors.first;
  const byB = factors === null ? (op === Op.add ? plus : minus) : isChosen ? plainly(factors.second) : factors.second;
  const inputs = room.inputs[step] as Int32Array;
  const [byFirst, bySecond] = [room.throughFirst[step] as Int32Array, room.throughSecond[step] as Int32Array];
  for (let k = 0; k < inputs.length; k += 1) {
    if (isOpen[inputs[k] as number] !== 1) continue;
    out.isFlat[k] = 1;
    take(out, k, a, byFirst[k] as number, byA);
    take(out, k, b, bySecond[k] as number, byB);
  }
}

const plus: Ends = { low: Float64Array.of(1), high: Float64Array.of(1), stride: 0 };
const minus: Ends = { low: Float64Array.of(-1), high: Float64Array.of(-1), stride: 0 };

/** What is taken at every place, or at none, needs no multiplying. */
function plainly(factor: Ends | null): Ends | null {
  if (factor === null || factor.high.every((end) => end === 0)) return null;
  return factor.low.every((end) => end === 1) ? plus : factor;
}

/** Takes the slopes of a step that is read into those of the step that reads it, by one input. */
function take(out: Slopes, k: number, of: Slopes | null, at: number, factor: Ends | null): void {
  if (of === null || factor === null || at < 0 || of.isFlat[at] === 1) {
    if (out.isFlat[k] === 1) clear(out, k);
    return;
  }
  const isFirst = out.isFlat[k] === 1;
  out.isFlat[k] = 0;
  if (isPlain(factor)) {
    if (isFirst) clear(out, k);
    addAll(factor, of, at, out, k);
  } else if (isFirst) multiplied(factor, of, at, out, k);
  else addMultiplied(factor, of, at, out, k);
}

function clear({ low, high, count }: Slopes, k: number): void {
  low.fill(0, k * count, (k + 1) * count);
  high.fill(0, k * count, (k + 1) * count);
}

function slopesOf({ over, slopes, inputs }: Gradients, step: Step): Slopes {
  const known = slopes[step] ?? null;
  if (known !== null) return known;
  const count = (over.ends[step] as Ends).low.length;
  const { length } = inputs[step] as Int32Array;
  const size = count * length;
  const isFlat = new Uint8Array(length);
  return (slopes[step] = { low: new Float64Array(size), high: new Float64Array(size), count, isFlat });
}

function isPlain(factor: Ends): boolean {
  return factor === plus || factor === minus;
}

/** Slopes of a step by one input as they are, or turned, onto those of the step that reads it. */
function addAll(factor: Ends, slopes: Slopes, from: number, out: Slopes, into: number): void {
  const stride = slopes.count === 1 ? 0 : 1;
  const [lows, highs, sign] = factor === plus ? [slopes.low, slopes.high, 1] : [slopes.high, slopes.low, -1];
  const { low, high, count } = out;
  for (let i = 0, q = from * slopes.count, o = into * count; i < count; i += 1, o += 1, q += stride) {
    low[o] = (low[o] as number) + sign * (lows[q] as number);
    high[o] = (high[o] as number) + sign * (highs[q] as number);
  }
}

/** Slopes of a step by one input times its factor, into the slopes by that input of the step that reads it. */
function multiplied(factor: Ends, slopes: Slopes, from: number, { low, high, count }: Slopes, into: number): void {
  const stride = slopes.count === 1 ? 0 : 1;
  for (let i = 0, p = 0, q = from * slopes.count, o = into * count; i < count; i += 1, o += 1) {
    const fl = factor.low[p] as number;
    const fh = factor.high[p] as number;
    const sl = slopes.low[q] as number;
    const sh = slopes.high[q] as number;
    low[o] = leastProduct(sl, sh, fl, fh);
    high[o] = greatestProduct(sl, sh, fl, fh);
    p += factor.stride;
    q += stride;
  }
}

function addMultiplied(factor: Ends, slopes: Slopes, from: number, { low, high, count }: Slopes, into: number): void {
  const stride = slopes.count === 1 ? 0 : 1;
  for (let i = 0, p = 0, q = from * slopes.count, o = into * count; i < count; i += 1, o += 1) {
    const fl = factor.low[p] as number;
    const fh = factor.high[p] as number;
    const sl = slopes.low[q] as number;
    const sh = slopes.high[q] as number;
    low[o] = (low[o] as number) + leastProduct(sl, sh, fl, fh);
    high[o] = (high[o] as number) + greatestProduct(sl, sh, fl, fh);
    p += factor.stride;
    q += stride;
  }
}
