import { Op, type Formula, type Step } from './formula.ts';

/** Room for the value of every step at every place along the lift; a step that does not change along it has one entry. */
export interface Workspace {
  readonly formula: Formula;
  readonly places: number;
  readonly values: readonly Float64Array[];
}

/** Room to evaluate a formula at a number of places; with `wide`, leaves too may differ from place to place. */
export function openWorkspace(formula: Formula, places: number, wide = false): Workspace {
  const values = Array.from(formula.laned, (laned) => new Float64Array(wide || laned === 1 ? places : 1));
  return { formula, places, values };
}

/** What the leaves are: one number each, or one for each place in a wide workspace; and the places themselves, 0 to 1. */
export interface Given {
  readonly leaf: (index: number, place: number) => number;
  readonly lane: (place: number) => number;
  /** The leaves by their number and the places after them, each as it is at every place; asked for in place of both where it is given. */
  readonly rows?: readonly Float64Array[];
}

/**
 * Runs the steps on plain numbers, each for all places before the next. Results stay in the workspace until it is run again.
 *
 * @param space room made for the formula [workspace]
 * @param steps the steps to run, in order [steps]
 * @param given leaves and places [canonical units; 0 to 1]
 */
export function evaluate(space: Workspace, steps: Int32Array, given: Given): void {
  const { formula, values } = space;
  const { ops, first, second, detail } = formula;
  for (const step of steps) {
    const out = values[step] as Float64Array;
    const op = ops[step] as number;
    if (op <= Op.lane) fill(out, op, detail[step] as number, given);
    else {
      const a = values[first[step] as Step] as Float64Array;
      const isOfOne = second[step] === -1;
      const b = isOfOne ? a : (values[second[step] as Step] as Float64Array);
      if (out.length === 1) out[0] = once(op, a[0] as number, b[0] as number);
      else if (isOfOne) runOne(op, a, out);
      else runTwo(op, a, b, out);
    }
  }
}

function fill(out: Float64Array, op: number, detail: number, { leaf, lane, rows }: Given): void {
  if (op === Op.constant) {
    if (out[0] !== detail) out.fill(detail);
  } else if (rows !== undefined) out.set(rows[op === Op.leaf ? detail : rows.length - 1] as Float64Array);
  else for (let i = 0; i < out.length; i += 1) out[i] = op === Op.leaf ? leaf(detail, i) : lane(i);
}

/** Every step of the same kind is one plain loop: the engine of the language turns it into straight code. */
function runTwo(op: number, a: Float64Array, b: Float64Array, out: Float64Array): void {
  const n = out.length;
  const p = a.length === 1 ? 0 : 1;
  const q = b.length === 1 ? 0 : 1;
  switch (op) {
    case Op.add:
      for (let i = 0, j = 0, k = 0; i < n; i += 1, j += p, k += q) out[i] = (a[j] as number) + (b[k] as number);
      break;
    case Op.subtract:
      for (let i = 0, j = 0, k = 0; i < n; i += 1, j += p, k += q) out[i] = (a[j] as number) - (b[k] as number);
      break;
    case Op.multiply:
      for (let i = 0, j = 0, k = 0; i < n; i += 1, j += p, k += q) out[i] = (a[j] as number) * (b[k] as number);
      break;
    case Op.divide:
      for (let i = 0, j = 0, k = 0; i < n; i += 1, j += p, k += q) out[i] = (a[j] as number) / (b[k] as number);
      break;
    case Op.lesser:
      for (let i = 0, j = 0, k = 0; i < n; i += 1, j += p, k += q) out[i] = Math.min(a[j] as number, b[k] as number);
      break;
    default:
      for (let i = 0, j = 0, k = 0; i < n; i += 1, j += p, k += q) out[i] = Math.max(a[j] as number, b[k] as number);
  }
}

/** A step that is the same at all places. */
function once(op: number, a: number, b: number): number {
  switch (op) {
    case Op.add:
      return a + b;
    case Op.subtract:
      return a - b;
    case Op.multiply:
      return a * b;
    case Op.divide:
      return a / b;
    case Op.lesser:
      return Math.min(a, b);
    case Op.greater:
      return Math.max(a, b);
    default:
      return onceOfOne(op, a);
  }
}

function onceOfOne(op: number, a: number): number {
  switch (op) {
    case Op.square:
      return a * a;
    case Op.squareRoot:
      return Math.sqrt(Math.max(0, a));
    case Op.sine:
      return Math.sin(a);
    case Op.cosine:
      return Math.cos(a);
    case Op.arcTangent:
      return Math.atan(a);
    default:
      return Math.asin(Math.min(1, Math.max(-1, a)));
  }
}

function runOne(op: number, a: Float64Array, out: Float64Array): void {
  const n = out.length;
  switch (op) {
    case Op.square:
      for (let i = 0; i < n; i += 1) out[i] = (a[i] as number) ** 2;
      break;
    case Op.squareRoot:
      for (let i = 0; i < n; i += 1) out[i] = Math.sqrt(Math.max(0, a[i] as number));
      break;
    case Op.sine:
      for (let i = 0; i < n; i += 1) out[i] = Math.sin(a[i] as number);
      break;
    case Op.cosine:
      for (let i = 0; i < n; i += 1) out[i] = Math.cos(a[i] as number);
      break;
    case Op.arcTangent:
      for (let i = 0; i < n; i += 1) out[i] = Math.atan(a[i] as number);
      break;
    default:
      for (let i = 0; i < n; i += 1) out[i] = Math.asin(Math.min(1, Math.max(-1, a[i] as number)));
  }
}

/** The value of a step at a place. */
export function valueAt({ values }: Workspace, step: Step, place: number): number {
  const of = values[step] as Float64Array;
  return of[of.length === 1 ? 0 : place] as number;
}
