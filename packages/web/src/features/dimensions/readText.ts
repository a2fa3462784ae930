import type { Bound, FieldRule, Value } from '@hitchwright/core/records';
import { printBoth, printQuantity, type UnitSystem } from '@hitchwright/core/units';

/** How a value was read, in both units: `= 26 7/8 in (683 mm) ± 1/16 in`; empty where nothing was given. */
export function readText(read: unknown, rule: FieldRule, system: UnitSystem): string {
  const value = read as Value | undefined;
  if (value === undefined || value.kind === 'unknown') return '';
  const both = (figure: number): string => printBoth(figure, rule.dimension, { system });
  const ends = ({ low, high }: Bound): string => (low === high ? both(low) : `${both(low)} to ${both(high)}`);
  if (value.kind === 'stated') return `= ${both(value.value)}${tolerance(value.bound, rule, system)}`;
  if (value.kind === 'adjustable') return `= ${both(value.lowest.low)} to ${both(value.highest.high)}`;
  if (value.kind === 'stops') return `= ${value.at.map(ends).join('; ')}`;
  return `= ${ends(value.bound)}`;
}

function tolerance({ low, high }: Bound, rule: FieldRule, system: UnitSystem): string {
  return low === high ? '' : ` ± ${toleranceText((high - low) / 2, rule, system)}`;
}

/** What differs by less comes from reckoning with limits, not from a tape [part of the whole]. */
const noise = 1e-9;

/** The size of a tolerance in the chosen unit: rounded up in fine steps, so that it never looks smaller, least of all like none. */
export function toleranceText(size: number, { dimension }: FieldRule, system: UnitSystem): string {
  const step = dimension === 'length' && system === 'us' ? 64 : 0.1;
  return printQuantity(size * (1 - noise), dimension, { system, round: 'up', step });
}
