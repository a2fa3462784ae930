/** A closed range of real numbers; `low` ≤ `high`. An end may be infinite while it is inside the engine. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The interval [low, high]. */
export function interval(low: number, high: number): Interval {
  return { low, high };
}

/** The degenerate interval that holds one number. */
export function exactly(value: number): Interval {
  return { low: value, high: value };
}

/** The whole real line. */
export const anything: Interval = { low: -Infinity, high: Infinity };

/** a + b. */
export function add(a: Interval, b: Interval): Interval {
  return { low: a.low + b.low, high: a.high + b.high };
}

/** a − b. */
export function subtract(a: Interval, b: Interval): Interval {
  return { low: a.low - b.high, high: a.high - b.low };
}

/** −a. */
export function negate(a: Interval): Interval {
  return { low: -a.high, high: -a.low };
}

/** factor · a for a plain number. */
export function scale(a: Interval, factor: number): Interval {
  return factor >= 0 ? { low: times(a.low, factor), high: times(a.high, factor) } : scale(negate(a), -factor);
}

/** a · b. */
export function multiply(a: Interval, b: Interval): Interval {
  const ends = [times(a.low, b.low), times(a.low, b.high), times(a.high, b.low), times(a.high, b.high)];
  return { low: Math.min(...ends), high: Math.max(...ends) };
}

/** |a|. */
export function absolute(a: Interval): Interval {
  if (a.low >= 0) return a;
  if (a.high <= 0) return negate(a);
  return { low: 0, high: Math.max(-a.low, a.high) };
}

/** a², tight: the same number is squared. */
export function square(a: Interval): Interval {
  const size = absolute(a);
  return { low: size.low * size.low, high: size.high * size.high };
}

/** √a; the part of `a` below zero is left out, so an interval wholly below gives [0, 0]. */
export function squareRoot(a: Interval): Interval {
  return { low: Math.sqrt(Math.max(0, a.low)), high: Math.sqrt(Math.max(0, a.high)) };
}

/** √(a² + b²), tight for independent a and b. */
export function hypotenuse(a: Interval, b: Interval): Interval {
  return squareRoot(add(square(a), square(b)));
}

/**
 * The angle of the point (x, z) from +x toward +z, for z ≥ 0 [rad].
 * Tight for independent x and z: the angle falls with x, and with z it rises where x > 0 and falls where x < 0.
 * A range of z that reaches below zero is cut at zero; a box that holds the origin gives [0, π].
 */
export function angleOf(x: Interval, z: Interval): Interval {
  const bottom = Math.max(0, z.low);
  const top = Math.max(0, z.high);
  return {
    low: Math.atan2(x.high >= 0 ? bottom : top, x.high),
    high: Math.atan2(x.low >= 0 ? top : bottom, x.low),
  };
}

/** cos a for a within [−π, π]. */
export function cosine(a: Interval): Interval {
  const ends = [Math.cos(a.low), Math.cos(a.high)];
  return { low: Math.min(...ends), high: a.low <= 0 && a.high >= 0 ? 1 : Math.max(...ends) };
}

/** sin a for a within [−π/2, π/2]. */
export function sine(a: Interval): Interval {
  return { low: Math.sin(a.low), high: Math.sin(a.high) };
}

/** The smaller of two independent quantities. */
export function lesser(a: Interval, b: Interval): Interval {
  return { low: Math.min(a.low, b.low), high: Math.min(a.high, b.high) };
}

/** The larger of two independent quantities. */
export function greater(a: Interval, b: Interval): Interval {
  return { low: Math.max(a.low, b.low), high: Math.max(a.high, b.high) };
}

/** The smallest interval that holds both. */
export function hull(a: Interval, b: Interval): Interval {
  return { low: Math.min(a.low, b.low), high: Math.max(a.high, b.high) };
}

/** high − low. */
export function width(a: Interval): number {
  return a.high - a.low;
}

/** The midpoint; a finite point of the interval where an end is infinite. */
export function middle(a: Interval): number {
  if (Number.isFinite(a.low) && Number.isFinite(a.high)) return (a.low + a.high) / 2;
  if (Number.isFinite(a.low)) return a.low;
  return Number.isFinite(a.high) ? a.high : 0;
}

/** Does `a` hold the number? */
export function holds(a: Interval, value: number): boolean {
  return a.low <= value && value <= a.high;
}

/** Zero times an unbounded end is zero: no such product leaves the engine as NaN. */
function times(a: number, b: number): number {
  return a === 0 || b === 0 ? 0 : a * b;
}
