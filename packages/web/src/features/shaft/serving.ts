import type { Outcome } from '@hitchwright/core/assess';
import type { ShaftViewProps } from './ShaftGrid.tsx';

type Replies = ShaftViewProps['replies'];

const ranks: readonly Outcome[] = ['works', 'withParts', 'measureFirst', 'willNot', 'notChecked', 'notNeeded'];

/** How the drive of one cell stands; null where it is still to come. */
function outcomeAt(replies: Replies, row: number, column: number): Outcome | null {
  const reply = replies[row]?.[column] ?? null;
  return reply?.kind === 'answer' ? reply.answer.outcomes.runs : null;
}

/** The rows of one implement, those that serve first; the rest in the order of the shelf. */
export function bestFirst(replies: Replies, column: number): number[] {
  const rank = (row: number): number => {
    const outcome = outcomeAt(replies, row, column);
    return outcome === null ? ranks.length : ranks.indexOf(outcome);
  };
  return replies.map((_, row) => row).sort((a, b) => rank(a) - rank(b) || a - b);
}

/** How many shafts serve one implement, serve it with parts, have to be measured first, and are still to be tried. */
export interface Tally {
  readonly works: number;
  readonly withParts: number;
  readonly measureFirst: number;
  readonly waiting: number;
}

/** The tally of one implement. */
export function tallyFor(replies: Replies, column: number): Tally {
  const outcomes = replies.map((_, row) => outcomeAt(replies, row, column));
  const count = (outcome: Outcome | null): number => outcomes.filter((one) => one === outcome).length;
  return {
    works: count('works'),
    withParts: count('withParts'),
    measureFirst: count('measureFirst'),
    waiting: count(null),
  };
}

/** `3 serve, 2 with parts`, as far as it is known. */
export function tallyWords({ works, withParts, measureFirst, waiting }: Tally): string {
  const found = [
    ...(works === 0 ? [] : [`${works} ${works === 1 ? 'serves' : 'serve'}`]),
    ...(withParts === 0 ? [] : [`${withParts} with parts`]),
  ];
  if (found.length > 0) return found.join(', ');
  if (measureFirst > 0) return 'measure first';
  return waiting > 0 ? '…' : 'none serves';
}
