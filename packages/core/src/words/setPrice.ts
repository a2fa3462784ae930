import type { Cure } from '../engine/assess/index.ts';
import { priceText } from './cures.ts';

/**
 * What the smallest set of cures costs altogether: `What is counted on costs USD 323.00.`
 *
 * @param cures cures of an answer [list]
 * @returns one sentence; null where nothing in the set is bought, nothing is priced, or prices are in several currencies [text]
 */
export function setPriceText(cures: readonly Cure[]): string | null {
  const bought = cures.filter(({ inSmallestSet, part }) => inSmallestSet && part !== null);
  const priced = bought.flatMap(({ price, count }) => (price === null ? [] : [{ ...price, count }]));
  const [first] = priced;
  if (first === undefined || priced.some(({ currency }) => currency !== first.currency)) return null;
  const amount = priced.reduce((sum, one) => sum + one.amount * one.count, 0);
  const unpriced = bought.filter(({ price }) => price === null).length;
  const more = unpriced === 0 ? '' : `, and ${unpriced === 1 ? 'one part' : `${unpriced} parts`} without a price`;
  return `What is counted on costs ${priceText({ amount, currency: first.currency })}${more}.`;
}
