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
  for (const step of steps) {
    const out = values[step] as Float64Array;
    const op = formula.ops[step] as number;
    if (op <= Op.lane) fill(out, op, formula.detail[step] as number, given);
    else if (formula.second[step] === -1) runOne(op, values[formula.first[step] as Step] as Float64Array, out);
    else {
      const a = values[formula.first[step] as Step] as Float64Array;
      runTwo(op, a, values[formula.second[step] as Step] as Float64Array, out);
    }
  }
}

function fill(out: Float64Array, op: number, detail: number, given: Given): void {
  for (let i = 0; i < out.length; i += 1) {
    if (op === Op.constant) out[i] = detail;
    else out[i] = op === Op.leaf ? given.leaf(detail, i) : given.lane(i);
  }
}

/** Every step of the same kind is one plain loop: the engine of the language turns it into straight code. */
function runTwo(op: number, a: Float64Array, b: Float64Array, out: Float64Array): void {
  const n = out.length;
  const p = a.length === 1 ? 0 : 1;
  const q = b.length === 1 ? 0 : 1;
  switch (op) {
    case Op.add:
      for (let i = 0; i < n; i += 1) out[i] = (a[i * p] as number) + (b[i * q] as number);
      break;
    case Op.subtract:
      for (let i = 0; i < n; i += 1) out[i] = (a[i * p] as number) - (b[i * q] as number);
      break;
    case Op.multiply:
      for (let i = 0; i < n; i += 1) out[i] = (a[i * p] as number) * (b[i * q] as number);
      break;
    case Op.divide:
      for (let i = 0; i < n; i += 1) out[i] = (a[i * p] as number) / (b[i * q] as number);
      break;
    case Op.lesser:
      for (let i = 0; i < n; i += 1) out[i] = Math.min(a[i * p] as number, b[i * q] as number);
      break;
    default:
      for (let i = 0; i < n; i += 1) out[i] = Math.max(a[i * p] as number, b[i * q] as number);
  }
}

function runOne(op: number, a: Float64Array, out: Float64Array): void {
  const n = out.length;
  const p = a.length === 1 ? 0 : 1;
  switch (op) {
    case Op.square:
      for (let i = 0; i < n; i += 1) out[i] = (a[i * p] as number) ** 2;
      break;
    case Op.squareRoot:
      for (let i = 0; i < n; i += 1) out[i] = Math.sqrt(Math.max(0, a[i * p] as number));
      break;
    case Op.sine:
      for (let i = 0; i < n; i += 1) out[i] = Math.sin(a[i * p] as number);
      break;
    case Op.cosine:
      for (let i = 0; i < n; i += 1) out[i] = Math.cos(a[i * p] as number);
      break;
    case Op.arcTangent:
      for (let i = 0; i < n; i += 1) out[i] = Math.atan(a[i * p] as number);
      break;
    default:
      for (let i = 0; i < n; i += 1) out[i] = Math.asin(Math.min(1, Math.max(-1, a[i * p] as number)));
  }
}

/** The value of a step at a place. */
export function valueAt({ values }: Workspace, step: Step, place: number): number {
  const of = values[step] as Float64Array;
  return of[of.length === 1 ? 0 : place] as number;
}
