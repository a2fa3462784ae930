import type { Setup, Value } from '../../records/index.ts';
import {
  categories,
  implementFigures,
  lowestOf,
  highestOf,
  type Category,
  type ImplementField,
} from '../../tables/index.ts';

/** What the implement's own figures say of its category. A summary only: no check reads it, and power plays no part. */
export interface CategorySummary {
  readonly stamped: Category | null;
  readonly byPins: readonly Category[];
  readonly bySpan: readonly Category[];
  readonly byMast: readonly Category[];
}

/** How near a figure must come to a table row to be taken for it [mm]. */
const nearness: Readonly<Record<'lowerPinDiameter' | 'shoulderSpan' | 'mastHeight', number>> = {
  lowerPinDiameter: 0.8,
  shoulderSpan: 6,
  mastHeight: 8,
};

/**
 * Reads the implement against every category's rows.
 *
 * @returns categories by pins, span and mast [names]
 */
export function summariseCategory({ implement }: Setup): CategorySummary {
  const matches = (field: keyof typeof nearness): Category[] =>
    categories.filter((category) => isNear(implement[field], category, field));
  return {
    stamped: implement.category ?? null,
    byPins: matches('lowerPinDiameter'),
    bySpan: matches('shoulderSpan'),
    byMast: matches('mastHeight'),
  };
}

function isNear(value: Value | undefined, category: Category, field: keyof typeof nearness & ImplementField): boolean {
  if (value?.kind !== 'stated') return false;
  return implementFigures(category, field).some(
    (figure) =>
      value.bound.high >= lowestOf(figure) - nearness[field] && value.bound.low <= highestOf(figure) + nearness[field],
  );
}
