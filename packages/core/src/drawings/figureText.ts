import { printQuantity, type Dimension, type UnitSystem } from '../units/index.ts';
import type { Shown } from './shown.ts';

export { printMarginSize, type UnitSystem } from '../units/index.ts';

/** A figure in words: in the chosen unit, and as a bare number in the other. */
export interface FigureText {
  readonly text: string;
  readonly second: string | null;
}

/** Below this spread the two ends of a figure are not told apart [mm, deg]. */
const sameFigure = 0.6;

/** Prints a figure for a drawing: measured plainly, a stand-in behind ≈, an unknown with a question mark. */
export function figureText(figure: Shown, system: UnitSystem, dimension: Dimension = 'length'): FigureText {
  if (figure.standing === 'unknown') return { text: '? not measured', second: null };
  const other = system === 'us' ? 'metric' : 'us';
  const mark = figure.standing === 'standIn' ? '≈ ' : '';
  const second = dimension === 'angle' ? null : withoutUnit(rangeText(figure, other, dimension));
  return { text: mark + rangeText(figure, system, dimension), second };
}

/** The figure in both units, for the description. */
export function figureSentence(figure: Shown, system: UnitSystem, dimension: Dimension = 'length'): string {
  if (figure.standing === 'unknown') return 'not measured';
  const other = system === 'us' ? 'metric' : 'us';
  const about = figure.standing === 'standIn' ? 'not measured, somewhere about ' : '';
  const both = dimension === 'angle' ? '' : ` (${rangeText(figure, other, dimension)})`;
  return about + rangeText(figure, system, dimension) + both;
}

/** A stand-in is a wide range and is printed in coarse steps, rounded outward: to half an inch or 5 mm. */
function rangeText({ low, high, value, standing }: Shown, system: UnitSystem, dimension: Dimension): string {
  if (high - low < sameFigure) return printQuantity(value, dimension, { system });
  const coarse = standing === 'standIn' && dimension === 'length' ? { step: system === 'us' ? 2 : 5 } : {};
  const from = printQuantity(low, dimension, { system, round: 'down', ...coarse });
  const to = printQuantity(high, dimension, { system, round: 'up', ...coarse });
  return `${withoutUnit(from)} to ${to}`;
}

/** A figure as a caliper gives it: to 1/64 in or a tenth of a millimetre. */
export function fineText(figure: Shown, system: UnitSystem): FigureText {
  if (figure.standing === 'unknown') return { text: '? not measured', second: null };
  const mark = figure.standing === 'standIn' ? '≈ ' : '';
  return {
    text: mark + fineRange(figure, system),
    second: withoutUnit(fineRange(figure, system === 'us' ? 'metric' : 'us')),
  };
}

/** The same in both units, for the description. */
export function fineSentence(figure: Shown, system: UnitSystem): string {
  if (figure.standing === 'unknown') return 'not measured';
  const about = figure.standing === 'standIn' ? 'not measured, somewhere about ' : '';
  return `${about}${fineRange(figure, system)} (${fineRange(figure, system === 'us' ? 'metric' : 'us')})`;
}

function fineRange({ low, high, value }: Shown, system: UnitSystem): string {
  const step = system === 'us' ? 64 : 0.1;
  if (high - low < 0.05) return printQuantity(value, 'length', { system, step });
  const from = printQuantity(low, 'length', { system, step, round: 'down' });
  return `${withoutUnit(from)} to ${printQuantity(high, 'length', { system, step, round: 'up' })}`;
}

function withoutUnit(text: string): string {
  return text.replace(/ (in|mm)$/, '').replace(/ (in|mm) /g, ' ');
}

/** What stands in brackets, or nothing. */
export function otherUnitsOf(text: string): string {
  return /\((.*)\)/.exec(text)?.[1] ?? '';
}
