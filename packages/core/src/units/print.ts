import { unitNameIn, type Dimension, type UnitSystem } from './dimensions.ts';
import { figureAt, mixedNumber, ticksOf, type Rounding } from './grid.ts';
import { formOf, type Form } from './printing.ts';

/** How a quantity is printed. */
export interface PrintOptions {
  readonly system: UnitSystem;
  /** `nearest` unless given; `down` is toward −∞ and `up` toward +∞. */
  readonly round?: Rounding;
  /** For inches the denominator (16 unless given, or 32); for every other unit the smallest step printed in that unit, such as 1, 0.1 or 0.5. */
  readonly step?: number;
}

/** A printed quantity in parts, so that a page can set a real fraction. `whole` carries the minus sign and is empty, or the bare sign, below one. */
export interface QuantityPart {
  readonly whole: string;
  readonly numerator?: string;
  readonly denominator?: string;
  readonly unit: string;
}

/**
 * Splits a quantity into the parts of its printed text.
 *
 * @param value [canonical unit of the dimension], finite and below 2⁵³ printed steps; else a RangeError
 * @param dimension what is measured [name]
 * @param options how to print [options]
 * @returns whole, fraction and unit apart [text]
 * @example splitQuantity(682.625, 'length', { system: 'us' }) // { whole: '26', numerator: '7', denominator: '8', unit: 'in' }
 */
export function splitQuantity(value: number, dimension: Dimension, options: PrintOptions): QuantityPart {
  const form = formOf(dimension, options.system, options.step);
  return partOf(ticksOf(value, form.grid, options.round ?? 'nearest'), form);
}

/** The parts of a count of the form's steps. */
export function partOf(ticks: number, form: Form): QuantityPart {
  const minus = ticks < 0 ? '−' : '';
  const size = Math.abs(ticks);
  if (form.style !== 'fraction') return { whole: minus + decimalText(size, form), unit: form.unit };
  const { whole, numerator, denominator } = mixedNumber(size, form.grid.per);
  if (numerator === '') return { whole: minus + whole, unit: form.unit };
  return { whole: minus + whole, numerator, denominator, unit: form.unit };
}

function decimalText(ticks: number, form: Form): string {
  const text = figureAt(ticks, form.grid).toFixed(form.decimals);
  if (form.style !== 'grouped') return text;
  const [units = '', decimals] = text.split('.');
  const grouped = units.replace(/\B(?=(\d{3})+$)/g, ',');
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}

/**
 * The parts as one line, e.g. `26 7/8 in`, `−7/8 in`, `12.5°`.
 *
 * @returns the parts put together [text]
 */
export function partText({ whole, numerator, denominator, unit }: QuantityPart): string {
  const gap = /\d$/.test(whole) ? ' ' : '';
  const figure = numerator === undefined ? whole : `${whole}${gap}${numerator}/${denominator}`;
  return unit === '°' ? figure + unit : `${figure} ${unit}`;
}

/**
 * Prints a quantity in one system: inches as a whole number and a reduced fraction (never feet), all else as a decimal; thousands are set apart by a
 * comma only in US units other than lengths, where nothing else can be meant. What is printed reads back with `readQuantity`.
 *
 * @param value [canonical unit of the dimension], finite and below 2⁵³ printed steps; else a RangeError
 * @param dimension what is measured [name]
 * @param options how to print [options]
 * @returns the figure with its unit [text]
 * @example printQuantity(682.625, 'length', { system: 'us' }) // '26 7/8 in'
 */
export function printQuantity(value: number, dimension: Dimension, options: PrintOptions): string {
  return partText(splitQuantity(value, dimension, options));
}

/**
 * Prints a quantity in the chosen system with the other in brackets, e.g. `26 7/8 in (683 mm)`. The rounding holds for both, the step for the first only.
 *
 * @param value [canonical unit of the dimension], finite; else a RangeError
 * @param dimension what is measured [name]
 * @param options how to print [options]
 * @returns the chosen unit first, the other in brackets [text]
 */
export function printBoth(value: number, dimension: Dimension, options: PrintOptions): string {
  const chosen = printQuantity(value, dimension, options);
  const other = otherSystem(options.system);
  if (!isPrintedTwice(dimension)) return chosen;
  return `${chosen} (${printQuantity(value, dimension, { system: other, round: options.round ?? 'nearest' })})`;
}

/** The system that stands in brackets. */
export function otherSystem(system: UnitSystem): UnitSystem {
  return system === 'us' ? 'metric' : 'us';
}

/** Whether the two systems print a dimension in different units. */
export function isPrintedTwice(dimension: Dimension): boolean {
  return unitNameIn('us', dimension) !== unitNameIn('metric', dimension);
}
