import type { Step, Writer } from '../formula/index.ts';

/** A point or an arrow of the side view, x rearward and z up [mm]. */
export interface Arrow {
  readonly x: Step;
  readonly z: Step;
}

/** A direction, or a turn from +x toward +z: its cosine and sine. */
export interface Turn {
  readonly cos: Step;
  readonly sin: Step;
}

/** Plane geometry written into a formula. */
export interface Plane extends Writer {
  readonly arrow: (x: Step, z: Step) => Arrow;
  readonly plus: (a: Arrow, b: Arrow) => Arrow;
  readonly minus: (a: Arrow, b: Arrow) => Arrow;
  readonly times: (a: Arrow, factor: Step) => Arrow;
  /** a_x·b_z − a_z·b_x: positive where b lies to the left of a. */
  readonly cross: (a: Arrow, b: Arrow) => Step;
  readonly dot: (a: Arrow, b: Arrow) => Step;
  readonly lengthSquared: (a: Arrow) => Step;
  readonly length: (a: Arrow) => Step;
  /** The arrow turned a quarter from +x toward +z. */
  readonly quarter: (a: Arrow) => Arrow;
  readonly turned: (a: Arrow, by: Turn) => Arrow;
  /** One turn after another. */
  readonly then: (a: Turn, b: Turn) => Turn;
  readonly back: (a: Turn) => Turn;
  readonly turnOf: (angle: Step) => Turn;
  readonly scaled: (a: Step, factor: number) => Step;
  readonly half: (a: Step) => Step;
}

/** Plane geometry over a writer. */
export function planeOf(w: Writer): Plane {
  const arrow = (x: Step, z: Step): Arrow => ({ x, z });
  const dot = (a: Arrow, b: Arrow): Step => w.add(w.multiply(a.x, b.x), w.multiply(a.z, b.z));
  const cross = (a: Arrow, b: Arrow): Step => w.subtract(w.multiply(a.x, b.z), w.multiply(a.z, b.x));
  const lengthSquared = (a: Arrow): Step => w.add(w.square(a.x), w.square(a.z));
  const scaled = (a: Step, factor: number): Step => w.multiply(a, w.constant(factor));
  const turned = (a: Arrow, { cos, sin }: Turn): Arrow =>
    arrow(w.subtract(w.multiply(a.x, cos), w.multiply(a.z, sin)), w.add(w.multiply(a.x, sin), w.multiply(a.z, cos)));
  return {
    ...w,
    arrow,
    dot,
    cross,
    lengthSquared,
    turned,
    scaled,
    half: (a) => scaled(a, 0.5),
    plus: (a, b) => arrow(w.add(a.x, b.x), w.add(a.z, b.z)),
    minus: (a, b) => arrow(w.subtract(a.x, b.x), w.subtract(a.z, b.z)),
    times: (a, factor) => arrow(w.multiply(a.x, factor), w.multiply(a.z, factor)),
    length: (a) => w.squareRoot(lengthSquared(a)),
    quarter: (a) => arrow(scaled(a.z, -1), a.x),
    then: (a, b) => {
      const { x, z } = turned(arrow(a.cos, a.sin), b);
      return { cos: x, sin: z };
    },
    back: (a) => ({ cos: a.cos, sin: scaled(a.sin, -1) }),
    turnOf: (angle) => ({ cos: w.cosine(angle), sin: w.sine(angle) }),
  };
}

/**
 * Sine of the angle by which a rod leans from square to the line between two points, where it and a second rod join them:
 * ((first² − second²)/apart + apart) / (2·first), from the law of cosines. Beyond ±1 the rods do not close.
 */
export function leanOf(p: Plane, apart: Step, first: Step, second: Step): Step {
  const difference = p.subtract(p.square(first), p.square(second));
  return p.half(p.divide(p.add(p.divide(difference, apart), apart), first));
}

/**
 * What is left before two rods that join two points are straight or folded flat: ≥ 0 where they close [mm].
 */
export function closing(p: Plane, apart: Step, first: Step, second: Step): Step {
  const difference = p.subtract(first, second);
  const folded = p.greater(difference, p.scaled(difference, -1));
  return p.lesser(p.subtract(p.add(first, second), apart), p.subtract(apart, folded));
}
