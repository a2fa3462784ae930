import type { Outcome } from '@hitchwright/core/assess';
import type { YardRow } from './useYard.ts';

/** How many implements come to each verdict with one coupler. */
export function tallyOf(rows: readonly YardRow[], column: number): Readonly<Record<Outcome, number>> {
  const tally: Record<Outcome, number> = {
    works: 0,
    withParts: 0,
    measureFirst: 0,
    willNot: 0,
    notChecked: 0,
    notNeeded: 0,
  };
  for (const { replies } of rows) {
    const reply = replies[column];
    if (reply?.kind === 'answer') tally[reply.answer.verdict] += 1;
  }
  return tally;
}
