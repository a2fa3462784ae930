import type { Answer } from '@hitchwright/core/assess';
import type { Finding } from '@hitchwright/core/hookup';

/** Findings as notes: misfits first, then what is open, what holds, and what was not checked; numbered as on the drawing. */
export interface Numbered {
  readonly number: number;
  readonly finding: Finding;
}

const order: readonly Finding['status'][] = ['fail', 'cured', 'undecided', 'pass', 'notChecked'];

/** The notes of an answer in the order of their numbers. */
export function numberedFindings(answer: Answer): Numbered[] {
  return order
    .flatMap((status) => answer.findings.filter((finding) => finding.status === status))
    .map((finding, i) => ({ finding, number: i + 1 }));
}
