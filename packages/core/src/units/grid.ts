/** The values that can be printed: whole multiples of `up / per` in a unit of size `factor` [canonical unit]. */
export interface Grid {
  readonly up: number;
  readonly per: number;
  readonly factor: number;
}

/** Which way a value between two printable ones goes: nearest, toward −∞ or toward +∞. */
export type Rounding = 'nearest' | 'down' | 'up';

/** The count of steps that stands for a value; the canonical value it reads back as is never beyond the one given when rounding down or up. */
export function ticksOf(value: number, grid: Grid, rounding: Rounding): number {
  const ticks = ((value / grid.factor) * grid.per) / grid.up;
  if (!(Math.abs(ticks) < Number.MAX_SAFE_INTEGER)) throw new RangeError(`${value} can't be printed`);
  if (rounding === 'nearest') return Math.sign(ticks) * Math.round(Math.abs(ticks)) + 0;
  return rounding === 'down' ? ticksBelow(value, ticks, grid) : -ticksBelow(-value, -ticks, grid) + 0;
}

/** Compares values as they are read back, so that a stored 26 7/8 in doesn't slip to 26 13/16 by a rounding error. */
function ticksBelow(value: number, ticks: number, grid: Grid): number {
  const highest = Math.floor(ticks) + 1;
  return [highest, highest - 1].find((count) => valueAt(count, grid) <= value) ?? highest - 2;
}

/** Size of a count of steps in the grid's own unit. */
export function figureAt(ticks: number, grid: Grid): number {
  return (ticks * grid.up) / grid.per;
}

/** Size of a count of steps [canonical unit], computed as reading does. */
function valueAt(ticks: number, grid: Grid): number {
  return figureAt(ticks, grid) * grid.factor;
}

/** Parts of a mixed number with a reduced fraction; a part that is nought is empty, but 0 itself is `0`. */
export interface MixedNumber {
  readonly whole: string;
  readonly numerator: string;
  readonly denominator: string;
}

/** ticks / per in lowest terms, for ticks ≥ 0. */
export function mixedNumber(ticks: number, per: number): MixedNumber {
  const rest = ticks % per;
  const whole = (ticks - rest) / per;
  if (rest === 0) return { whole: String(whole), numerator: '', denominator: '' };
  const divisor = greatestDivisor(rest, per);
  return {
    whole: whole === 0 ? '' : String(whole),
    numerator: String(rest / divisor),
    denominator: String(per / divisor),
  };
}

/** ticks / per as text, e.g. `26 7/8`, for ticks ≥ 0. */
export function fractionText(ticks: number, per: number): string {
  const { whole, numerator, denominator } = mixedNumber(ticks, per);
  if (numerator === '') return whole;
  return whole === '' ? `${numerator}/${denominator}` : `${whole} ${numerator}/${denominator}`;
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}
