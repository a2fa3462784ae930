/** What a step of a formula does. */
export const Op = {
  constant: 0,
  leaf: 1,
  lane: 2,
  add: 3,
  subtract: 4,
  multiply: 5,
  divide: 6,
  square: 7,
  squareRoot: 8,
  sine: 9,
  cosine: 10,
  arcTangent: 11,
  arcSine: 12,
  lesser: 13,
  greater: 14,
} as const;

/** The place of a step in its formula. */
export type Step = number;

/**
 * A computation written down once as a list of steps, so that the same steps can be run on plain numbers, on intervals and
 * for slopes, each for many places along the lift at once (docs/decisions/0007). A step reads earlier steps only.
 */
export interface Formula {
  readonly ops: Uint8Array;
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Value of a constant, number of a leaf; zero elsewhere. */
  readonly detail: Float64Array;
  /** 1 where a step changes along the lift. */
  readonly laned: Uint8Array;
  /** 1 where a step is bounded tightly before later steps read it. */
  readonly tight: Uint8Array;
  readonly leaves: readonly string[];
}

/** Writes a formula step by step. */
export interface Writer {
  readonly constant: (value: number) => Step;
  /** An input by name; the same name is the same leaf. */
  readonly leaf: (name: string) => Step;
  /** The place along the lift, 0 at its foot and 1 at its top. */
  readonly lane: () => Step;
  readonly add: (a: Step, b: Step) => Step;
  readonly subtract: (a: Step, b: Step) => Step;
  readonly multiply: (a: Step, b: Step) => Step;
  readonly divide: (a: Step, b: Step) => Step;
  readonly square: (a: Step) => Step;
  /** √a; below zero counts as zero. */
  readonly squareRoot: (a: Step) => Step;
  readonly sine: (a: Step) => Step;
  readonly cosine: (a: Step) => Step;
  readonly arcTangent: (a: Step) => Step;
  /** asin a; beyond ±1 counts as ±1. */
  readonly arcSine: (a: Step) => Step;
  readonly lesser: (a: Step, b: Step) => Step;
  readonly greater: (a: Step, b: Step) => Step;
  /** Asks for the step to be bounded tightly before later steps read it: worth its cost where much rests on it. */
  readonly tighten: (a: Step) => Step;
  readonly finish: () => Formula;
}

const none = -1;

/** An empty formula to write. */
export function openFormula(): Writer {
  const ops: number[] = [];
  const first: number[] = [];
  const second: number[] = [];
  const detail: number[] = [];
  const leaves: string[] = [];
  const tight = new Set<Step>();
  const known = new Map<string, Step>();
  const write = (op: number, a: Step, b: Step, value: number): Step => {
    const key = `${op} ${a} ${b} ${value}`;
    const same = known.get(key);
    if (same !== undefined) return same;
    known.set(key, ops.length);
    first.push(a);
    second.push(b);
    detail.push(value);
    return ops.push(op) - 1;
  };
  const two = (op: number) => (a: Step, b: Step) => write(op, a, b, 0);
  const one = (op: number) => (a: Step) => write(op, a, none, 0);
  const leaf = (name: string): Step => {
    const place = leaves.indexOf(name);
    return write(Op.leaf, none, none, place >= 0 ? place : leaves.push(name) - 1);
  };
  const constant = (value: number): Step => write(Op.constant, none, none, value);
  const is = (a: Step, value: number): boolean => ops[a] === Op.constant && detail[a] === value;
  const [add, subtract, multiply] = [two(Op.add), two(Op.subtract), two(Op.multiply)];
  // What changes nothing is not written: every step costs time at every place.
  return {
    constant,
    leaf,
    lane: () => write(Op.lane, none, none, 0),
    add: (a, b) => (is(a, 0) ? b : is(b, 0) ? a : add(a, b)),
    subtract: (a, b) => (is(b, 0) ? a : subtract(a, b)),
    multiply: (a, b) => (is(a, 1) ? b : is(b, 1) ? a : is(a, 0) || is(b, 0) ? constant(0) : multiply(a, b)),
    divide: two(Op.divide),
    square: one(Op.square),
    squareRoot: one(Op.squareRoot),
    sine: one(Op.sine),
    cosine: one(Op.cosine),
    arcTangent: one(Op.arcTangent),
    arcSine: one(Op.arcSine),
    lesser: two(Op.lesser),
    greater: two(Op.greater),
    tighten: (a) => {
      tight.add(a);
      return a;
    },
    finish: () => ({
      ops: Uint8Array.from(ops),
      first: Int32Array.from(first),
      second: Int32Array.from(second),
      detail: Float64Array.from(detail),
      laned: lanedOf(ops, first, second),
      tight: Uint8Array.from(ops, (_, i) => (tight.has(i) ? 1 : 0)),
      leaves: [...leaves],
    }),
  };
}

function lanedOf(ops: readonly number[], first: readonly Step[], second: readonly Step[]): Uint8Array {
  const laned = new Uint8Array(ops.length);
  ops.forEach((op, i) => {
    const reads = [first[i] as Step, second[i] as Step].filter((step) => step !== none);
    laned[i] = op === Op.lane || reads.some((step) => laned[step] === 1) ? 1 : 0;
  });
  return laned;
}

/** The steps that some results rest on, in order. */
export function stepsFor(formula: Formula, results: readonly Step[]): Int32Array {
  const wanted = new Uint8Array(formula.ops.length);
  for (const result of results) wanted[result] = 1;
  for (let i = formula.ops.length - 1; i >= 0; i -= 1) {
    if (wanted[i] !== 1) continue;
    for (const step of [formula.first[i] as Step, formula.second[i] as Step]) if (step !== none) wanted[step] = 1;
  }
  return Int32Array.from([...wanted.keys()].filter((i) => wanted[i] === 1));
}
