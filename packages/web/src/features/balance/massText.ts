import { printQuantity, type Rounding, type UnitSystem } from '@hitchwright/core/units';

/** A mass as a cell shows it: the chosen unit, and the other for the line below. */
export function massCell(value: number, system: UnitSystem, round: Rounding): readonly [string, string] {
  const other: UnitSystem = system === 'us' ? 'metric' : 'us';
  return [printQuantity(value, 'mass', { system, round }), printQuantity(value, 'mass', { system: other, round })];
}

/** A share to a tenth of a per cent, never better than it is: `25.7 %`. */
export function shareText(share: number): string {
  return `${(Math.floor(share * 1000) / 10).toFixed(1)} %`.replace('-', '−');
}
