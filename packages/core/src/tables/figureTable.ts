import { fullCategory, isNarrow, spanCategory, type Category } from './category.ts';
import type { Figure } from './figure.ts';

/** Rows by field and category, as printed: narrow variants only where a source prints them. */
export type FigureTable<Field extends string> = Readonly<
  Record<Field, Readonly<Partial<Record<Category, readonly Figure[]>>>>
>;

/** Printed rows of a category, then for a narrow variant those the narrow rule gives it. `spanLike` fields follow the smaller category. */
export function lookUp<Field extends string>(
  table: FigureTable<Field>,
  category: Category,
  field: Field,
  spanLike: boolean,
): readonly Figure[] {
  const printed = table[field][category] ?? [];
  return isNarrow(category) ? [...printed, ...ruled(table, category, field, spanLike)] : printed;
}

/** Only what the narrow rule gives, leaving out rows printed for the narrow variant itself. */
export function ruled<Field extends string>(
  table: FigureTable<Field>,
  category: Category,
  field: Field,
  spanLike: boolean,
): readonly Figure[] {
  const donor = spanLike ? spanCategory(category) : fullCategory(category);
  if (donor === null) return [];
  return (table[field][donor] ?? []).map((figure) => passedOn(figure, donor));
}

function passedOn(figure: Figure, donor: Category): Figure {
  const rule = `category ${donor} row, passed on by the narrow rule (ISO 730:2009, 3.1.5)`;
  const note = figure.note === undefined ? rule : `${rule}; ${figure.note}`;
  const wasSeen = figure.status === 'read' || figure.status === 'readSecondHand';
  return { ...figure, note, status: wasSeen ? 'derived' : figure.status };
}
