import type { Figure } from '../../src/tables/index.ts';

/** The only row of one source among figures of one field; fails loudly when the source has none or several. */
export function rowOf(figures: readonly Figure[], source: string): Figure {
  const found = figures.filter((figure) => figure.source === source && figure.status !== 'memory');
  const only = found[0];
  if (only === undefined || found.length > 1) throw new Error(`${found.length} rows of ${source}, expected one`);
  return only;
}

/** Values of one source's rows, in table order. */
export function valuesOf(figures: readonly Figure[], source: string): readonly number[] {
  return figures.filter((figure) => figure.source === source).map((figure) => figure.value);
}

/** Sum of numbers. */
export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** True when every number is larger than the one before it. */
export function rises(values: readonly number[]): boolean {
  return values.every((value, at) => at === 0 || value > (values[at - 1] ?? Infinity));
}
