import type { Bound, Value } from './value.ts';

/**
 * The range in which a figure lies that somebody gave, of what can be set its whole range; a figure that only stands in for one is none.
 *
 * @param value a value as it was read [canonical unit]
 * @returns its ends; null where nobody gave it [canonical unit]
 */
export function givenRange(value: Value | undefined): Bound | null {
  switch (value?.kind) {
    case 'stated':
    case 'uncertain':
      return value.bound;
    case 'adjustable':
      return { low: value.lowest.low, high: value.highest.high };
    case 'stops':
      return { low: Math.min(...value.at.map(({ low }) => low)), high: Math.max(...value.at.map(({ high }) => high)) };
    default:
      return null;
  }
}
