import type { CureRecord } from '@hitchwright/core/records';
import type { Answered } from './useAssessment.ts';

/** An answer to machines with cures done to them: what works so, works with parts. */
export function countingOn(answered: Answered, chosen: readonly CureRecord[]): Answered {
  const { answer } = answered;
  if (chosen.length === 0 || answer.verdict !== 'works') return answered;
  return { ...answered, answer: { ...answer, verdict: 'withParts' } };
}
