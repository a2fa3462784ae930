import { waitsForDriven } from '@hitchwright/core/words';
import type { Finding } from '@hitchwright/core/findings';
import type { Answered } from './useAssessment.ts';

/** A finding with its number on the drawing; null where the drawing has no balloon for it. */
export interface Numbered {
  readonly number: number | null;
  readonly finding: Finding;
}

const unnumbered: readonly Finding['status'][] = ['fail', 'cured', 'undecided', 'pass', 'notChecked'];

/** The notes of an answer: numbered ones in the order of their balloons, then what has none. */
export function numberedFindings({ answer, drawings }: Answered): Numbered[] {
  const notes = answer.findings
    .filter((finding) => finding.status !== 'notNeeded' && !waitsForDriven(finding))
    .map((finding) => ({ finding, number: drawings?.balloons.get(finding.id) ?? null }));
  return notes.sort((a, b) => rankOf(a) - rankOf(b));
}

function rankOf({ number, finding }: Numbered): number {
  return number ?? 100 + unnumbered.indexOf(finding.status);
}
