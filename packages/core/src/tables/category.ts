/** The size classes of three-point hitches, smallest first; N marks a narrow variant. @source iso-730-2009 */
export const categories = ['0', '1N', '1', '2N', '2', '3N', '3', '4N', '4'] as const;

/** One size class of three-point hitch. A label, never proof of a fit. */
export type Category = (typeof categories)[number];

const nextSmaller: Partial<Record<Category, Category>> = { '2N': '1', '3N': '2', '4N': '3' };

const full: Partial<Record<Category, Category>> = { '1N': '1', '2N': '2', '3N': '3', '4N': '4' };

/**
 * True for 1N, 2N, 3N and 4N.
 *
 * @param category size class [name]
 * @returns true for an N category [boolean]
 */
export function isNarrow(category: Category): boolean {
  return full[category] !== undefined;
}

/**
 * The category whose pins, mast and balls a narrow variant keeps; the category itself when it is not narrow.
 *
 * @param category size class [name]
 * @returns the category without N [name]
 */
export function fullCategory(category: Category): Category {
  return full[category] ?? category;
}

/**
 * Whose lower span a category uses: the next smaller one's for a narrow variant, otherwise its own.
 * Null for 1N, which has no smaller neighbour in the standard.
 *
 * @param category size class [name]
 * @returns the category whose lower span it has, null where there is none [name]
 * @source iso-730-2009, clause 3.1.5
 */
export function spanCategory(category: Category): Category | null {
  return isNarrow(category) ? (nextSmaller[category] ?? null) : category;
}
