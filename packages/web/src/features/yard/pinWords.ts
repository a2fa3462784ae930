import type { Bound } from '@hitchwright/core/records';
import { printBoth, type UnitSystem } from '@hitchwright/core/units';
import type { DrawnLowerPin, DrawnUpperPin } from './pinFigures.ts';

/** The lower pin's drawing in words. */
export function lowerPinWords(
  pin: DrawnLowerPin,
  hatched: readonly Bound[],
  system: UnitSystem,
  against: string,
): string {
  const own = `Lower pin from ${length(pin.shoulder, system)} to ${length(pin.tip, system)} off the centre line`;
  return `${own}; ${reach(hatched, system, against)}.`;
}

/** The upper pin's drawing in words. */
export function upperPinWords(
  pin: DrawnUpperPin,
  hatched: readonly Bound[],
  system: UnitSystem,
  against: string,
): string {
  const heights = pin.heights.map((height) => length(height, system)).join(' or ');
  return `Upper pin ${heights} above the lower pins; ${reach(hatched, system, against)}.`;
}

function reach(hatched: readonly Bound[], system: UnitSystem, against: string): string {
  if (hatched.length === 0) return `${against}: nothing drawn to meet it`;
  const places = hatched.map(({ low, high }) => `${length(low, system)} to ${length(high, system)}`).join(', ');
  return `${against}: ${places}`;
}

function length(mm: number, system: UnitSystem): string {
  return printBoth(mm, 'length', { system });
}
