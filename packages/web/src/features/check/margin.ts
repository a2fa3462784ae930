import type { Finding } from '@hitchwright/core/findings';
import { fieldRules } from '@hitchwright/core/records';
import { printBoth, printMarginSize, type UnitSystem } from '@hitchwright/core/units';
import { fieldOf } from '@hitchwright/core/words';

/** What the unit of a margin measures. */
const measuredIn = { mm: 'length', deg: 'angle', kg: 'mass', kW: 'power', 'N·m': 'torque' } as const;

/** `Margin: 2 in (51 mm) short`, or from worst to best where it is a range; null where nothing is measured. */
export function marginText({ margin, unit }: Finding, system: UnitSystem): string | null {
  if (margin === null || unit === null) return null;
  const { low, high } = margin;
  const end = (value: number): string => {
    const size = printMarginSize(value, measuredIn[unit], system);
    return value < 0 ? `${size} short` : `${size} to spare`;
  };
  if (low === null || high === null) return 'Margin: not bounded yet.';
  return end(low) === end(high) ? `Margin: ${end(low)}.` : `Margin: ${end(low)} at worst, ${end(high)} at best.`;
}

/** The range that an input was taken in, in both units; empty where it is no quantity. */
export function rangeText(path: string, { low, high }: { low: number; high: number }, system: UnitSystem): string {
  const rule = fieldRules.get(fieldOf(path));
  if (rule === undefined) return '';
  const print = (value: number): string => printBoth(value, rule.dimension, { system });
  const ends = [print(low), print(high)];
  return ends[0] === ends[1] ? print(low) : ends.join(' to ');
}
