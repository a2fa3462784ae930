import type { Category } from './category.ts';
import type { Figure, MastGeneration } from './figure.ts';
import { lookUp } from './figureTable.ts';
import { implementRows, type ImplementField } from './implementRows.ts';

export type { ImplementField } from './implementRows.ts';

/**
 * What the published tables ask of an implement, every row that is known, disagreeing ones included.
 * Distances [mm]; spans between the shoulders, mast height from lower to upper pin centre, setback positive rearward.
 * Narrow variants come from the rows printed for them and from the narrow rule.
 *
 * @param category - size class [name]
 * @param field - the dimension [name]
 * @param generation - mast heights only: rows of this family and rows that name no family; all rows when left out [name]
 * @returns rows in table order; empty where nothing is known [rows]
 * @example implementFigures('2', 'mastHeight', 'older').map((figure) => figure.value); // [482.6, 485, 460, 500]
 * @source din-iso-730-1-shop-summary, manual-seed-drill, manual-plough, manual-compact-category-1,
 * manual-utility-category-1-2, manual-utility-category-2, manual-utility-category-2-later, hitch-width-pages, memory
 */
export function implementFigures(
  category: Category,
  field: ImplementField,
  generation?: MastGeneration,
): readonly Figure[] {
  const figures = lookUp(implementRows, category, field, field === 'shoulderSpan');
  if (generation === undefined) return figures;
  return figures.filter((figure) => figure.generation === undefined || figure.generation === generation);
}
