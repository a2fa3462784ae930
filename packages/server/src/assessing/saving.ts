import { Refused, type CheckResult, type YardSetup } from '@hitchwright/store';
import type { Kept, Worked } from './work.ts';

/** What a saved answer keeps of a setup that was worked out; throws Refused where the setup can’t be read. */
export function resultOf({ setup, uses }: YardSetup, worked: Worked): CheckResult {
  if (!worked.ok) throw new Refused(worked.errors);
  const { verdict, reason, summary } = JSON.parse(worked.text) as Kept;
  return { verdict, reason, summary, thresholds: { setup }, uses };
}
