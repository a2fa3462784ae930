import type { FieldRule } from '@hitchwright/core/records';
import { readQuantity, unitNameIn, type UnitSystem } from '@hitchwright/core/units';
import { isPlainObject } from './paths.ts';

/**
 * A leaf with its units written out, so that it means the same wherever it is read: `26 7/8` becomes `26 7/8 in` where
 * it was typed in US units. What can’t be read stays as it is, for the reader of setups to refuse.
 *
 * @param leaf as a setup document has it [JSON]
 * @param rule what its field accepts [canonical unit]
 * @param units what a text without a unit was typed in [us | metric]
 * @returns the leaf [JSON]
 */
export function withUnits(leaf: unknown, rule: FieldRule, units: UnitSystem): unknown {
  const write: Writer = (node, key) => (typeof node === 'string' ? written(node, rangeOf(rule, key), units) : node);
  if (!isPlainObject(leaf)) return write(leaf, 'value');
  if (!isPlainObject(leaf['adjustable'])) return figures(leaf, write);
  const limit = (node: unknown): unknown => (isPlainObject(node) ? figures(node, write) : write(node, 'value'));
  const ends = Object.entries(leaf['adjustable']).map(([key, list]) => [
    key,
    Array.isArray(list) ? list.map(limit) : list,
  ]);
  return { ...leaf, adjustable: Object.fromEntries(ends) as unknown };
}

type Writer = (node: unknown, key: 'value' | 'plusMinus') => unknown;

/** The figures of a leaf or of a limit; everything else in it is words. */
function figures(form: Record<string, unknown>, write: Writer): Record<string, unknown> {
  const entries = Object.entries(form).map(([key, value]): [string, unknown] => {
    if (key === 'value' || key === 'plusMinus') return [key, write(value, key)];
    return [key, key === 'between' && Array.isArray(value) ? value.map((end) => write(end, 'value')) : value];
  });
  return Object.fromEntries(entries);
}

interface Wanted {
  readonly dimension: FieldRule['dimension'];
  readonly range: { readonly min: number; readonly max: number };
}

function rangeOf({ dimension, min, max }: FieldRule, key: 'value' | 'plusMinus'): Wanted {
  return { dimension, range: key === 'value' ? { min, max } : { min: 0, max: (max - min) / 2 } };
}

function written(text: string, { dimension, range }: Wanted, units: UnitSystem): string | number {
  const read = (given: string, assume: UnitSystem): number | null => {
    const reading = readQuantity(given, { dimension, range, assume });
    return reading.ok ? reading.value : null;
  };
  const meant = read(text, units);
  const means = (given: string): boolean => read(given, 'us') === meant && read(given, 'metric') === meant;
  if (meant === null || means(text)) return text;
  const spelt = `${text.trim()} ${unitNameIn(units, dimension)}`;
  return means(spelt) ? spelt : meant;
}
