import { isNarrow, type Category } from './category.ts';
import { bestFigure, type Figure } from './figure.ts';
import { lookUp } from './figureTable.ts';
import { implementFigures } from './implementSide.ts';
import { ballCentreSpan } from './spanConventions.ts';
import { tractorRows, type TractorField } from './tractorRows.ts';

export type { TractorField } from './tractorRows.ts';

const spanLike: readonly TractorField[] = ['convergenceHorizontal', 'linkFrontSpacing'];

/**
 * What the published tables say of a tractor's linkage, every known row, disagreeing ones included. Distances [mm],
 * angles [rad]; heights above the ground; `ballSpan` between ball centres; `powerRange` is the vertical stroke through
 * which the lift works, not power; `verticalConvergencePerWheelbase` is a plain ratio.
 * Narrow variants follow the narrow rule; their ball span is worked out as shoulder span + ball width.
 *
 * @param category size class [name]
 * @param field the dimension [name]
 * @returns rows in table order; empty where nothing is known [rows]
 * @example tractorFigures('2', 'lowerBallBore')[0]?.value; // 28.7
 * @source din-iso-730-1-shop-summary, manual-specialist-tractor, manual-draft-links, manual-seed-drill, manual-plough,
 * forum-mast-adjustment, hitch-width-pages, encyclopedia-category-table, manual-rear-linkage, memory
 */
export function tractorFigures(category: Category, field: TractorField): readonly Figure[] {
  if (field === 'ballSpan' && isNarrow(category)) return narrowBallSpan(category);
  return lookUp(tractorRows, category, field, spanLike.includes(field));
}

function narrowBallSpan(category: Category): readonly Figure[] {
  const span = bestFigure(implementFigures(category, 'shoulderSpan'));
  const width = bestFigure(tractorFigures(category, 'lowerBallWidth'));
  if (span === null || width === null) return [];
  return [sumOf(span, width)];
}

function sumOf(span: Figure, width: Figure): Figure {
  const sum = {
    value: ballCentreSpan(span.value, width.value),
    printed: `${span.printed} ${span.printedUnit} + ${width.printed} ${width.printedUnit}`,
    printedUnit: 'sum',
    source: span.source,
    locator: span.locator,
    note: 'shoulder span plus ball width',
  } as const;
  const fromMemory = span.status === 'memory' || width.status === 'memory';
  return fromMemory ? { ...sum, status: 'memory', confidence: 'low' } : { ...sum, status: 'derived' };
}
