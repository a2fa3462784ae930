import type { Category } from './category.ts';
import type { Figure } from './figure.ts';
import { ruled } from './figureTable.ts';
import { implementRows } from './implementRows.ts';

/**
 * Lower shoulder spans [mm] by the narrow rule alone: an N variant keeps everything of its category but the lower span,
 * which is the next smaller category's. A full category gives its own rows. Rows printed for the N variant itself are
 * left out, so the rule can be held against them.
 *
 * @param category size class [name]
 * @returns empty for 1N, which has no smaller neighbour [rows]
 * @example narrowSpan('3N')[0]?.value; // 825
 * @source iso-730-2009, clause 3.1.5
 */
export function narrowSpan(category: Category): readonly Figure[] {
  return ruled(implementRows, category, 'shoulderSpan', true);
}
