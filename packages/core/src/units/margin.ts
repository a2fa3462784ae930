import type { Dimension, UnitSystem } from './dimensions.ts';
import { ticksOf } from './grid.ts';
import { isPrintedTwice, otherSystem, partOf, partText } from './print.ts';
import { formOf } from './printing.ts';

/**
 * Prints a margin so that it never looks better than it is: both units are rounded toward −∞, so a room to spare shrinks and a shortfall grows. The sign never
 * changes: a margin too small to print is `less than 1/16 in`, and a shortfall keeps its minus sign and is at least one step. Where the brackets would add
 * nothing (exactly 0, or below a step in both units) they are left out.
 *
 * @param value margin, positive to spare and negative short [canonical unit of the dimension], finite; else a RangeError
 * @param dimension what it measures [name]
 * @param system the system printed first [us | metric]
 * @returns the margin in both units [text]
 * @example printMargin(6.5, 'length', 'us') // '1/4 in (6 mm)'
 * @example printMargin(-6.5, 'length', 'us') // '−5/16 in (−7 mm)'
 */
export function printMargin(value: number, dimension: Dimension, system: UnitSystem): string {
  return inBothUnits(value, dimension, system, marginText);
}

/**
 * The size of a margin without its sign, for a sentence that says "to spare" or "short" itself; rounded as in `printMargin`.
 *
 * @param value margin [canonical unit of the dimension], finite; else a RangeError
 * @param dimension what is measured [name]
 * @param system unit system to write in [us | metric]
 * @returns the size in both units [text]
 * @example printMarginSize(-6.5, 'length', 'us') // '5/16 in (7 mm)'
 */
export function printMarginSize(value: number, dimension: Dimension, system: UnitSystem): string {
  return inBothUnits(value, dimension, system, (...margin) => marginText(...margin).replace('−', ''));
}

type MarginWriter = (value: number, dimension: Dimension, system: UnitSystem) => string;

function inBothUnits(value: number, dimension: Dimension, system: UnitSystem, write: MarginWriter): string {
  const chosen = write(value, dimension, system);
  const other = otherSystem(system);
  const addsNothing = value >= 0 && !isPrintable(value, dimension, system) && !isPrintable(value, dimension, other);
  return addsNothing || !isPrintedTwice(dimension) ? chosen : `${chosen} (${write(value, dimension, other)})`;
}

function marginText(value: number, dimension: Dimension, system: UnitSystem): string {
  const form = formOf(dimension, system);
  const isHidden = value > 0 && !isPrintable(value, dimension, system);
  return isHidden
    ? `less than ${partText(partOf(1, form))}`
    : partText(partOf(ticksOf(value, form.grid, 'down'), form));
}

/** Whether at least one whole step of a margin to spare can be shown. */
function isPrintable(value: number, dimension: Dimension, system: UnitSystem): boolean {
  return ticksOf(value, formOf(dimension, system).grid, 'down') > 0;
}
