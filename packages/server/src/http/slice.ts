import type { Page } from '@hitchwright/store';
import { inputRefusal } from './refusal.ts';

/** One page of a list that is there as a whole: its cursor is the place where the next page begins. */
export function slice<T>(
  items: readonly T[],
  { cursor, limit = 100 }: { readonly cursor?: string; readonly limit?: number },
): Page<T> {
  const start = cursor === undefined ? 0 : Number(/^at(\d{1,9})$/.exec(cursor)?.[1] ?? NaN);
  if (Number.isNaN(start))
    throw inputRefusal({
      code: 'not-a-choice',
      path: 'query.cursor',
      expected: 'the cursor of a page before',
      got: 'another',
      hint: 'Start from the first page.',
    });
  const end = start + limit;
  return { items: items.slice(start, end), next: end < items.length ? `at${end}` : null };
}
