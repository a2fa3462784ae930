import type { Category } from './category.ts';
import { memory } from './citations.ts';
import type { Figure } from './figure.ts';

/** Usual sizes inside a linkage. */
export type LinkageField =
  'lowerLinkLength' | 'liftRodPointShare' | 'liftArmLength' | 'liftRodLength' | 'upperPivotAboveLower';

const low = memory('low');

const compactRows: Readonly<Record<LinkageField, Figure>> = {
  lowerLinkLength: low(600, '600–800', 'mm', { high: 800 }),
  liftRodPointShare: low(0.5, '50–60', '% of the lower link', { high: 0.6 }),
  liftArmLength: low(180, '180–250', 'mm', { high: 250 }),
  liftRodLength: low(350, '350–600', 'mm', { high: 600 }),
  upperPivotAboveLower: low(350, '350–450', 'mm', { high: 450 }),
};

/**
 * Usual linkage sizes of a compact, category 1 tractor. [mm]; `liftRodPointShare` is the lift-rod point's distance from
 * the front pivot over the link's length. No source was read for any of them and none is known for other categories.
 *
 * @param category size class [name]
 * @param field the dimension [name]
 * @returns one row for category 1, none otherwise [rows]
 * @example linkageFigures('1', 'lowerLinkLength')[0]?.high; // 800
 * @source memory
 */
export function linkageFigures(category: Category, field: LinkageField): readonly Figure[] {
  return category === '1' ? [compactRows[field]] : [];
}
