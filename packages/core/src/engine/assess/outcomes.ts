import type { Finding } from '../findings/index.ts';
import type { Outcome } from './answer.ts';

/**
 * The precedence of decision 0002: an uncured failure, then what is open, then what is cured. Nothing decided decides nothing.
 * A failure that parts may cure, as far as anybody knows, is open.
 */
export function outcomeOf(findings: readonly Finding[], mayBeCured = false): Outcome {
  const core = findings.filter((finding) => finding.core);
  const has = (status: Finding['status']): boolean => core.some((finding) => finding.status === status);
  if (has('fail')) return mayBeCured ? 'measureFirst' : 'willNot';
  if (has('undecided')) return 'measureFirst';
  if (has('cured')) return 'withParts';
  if (has('pass')) return 'works';
  return core.length > 0 ? 'notNeeded' : 'notChecked';
}

/** The finding that gives an outcome its reason: the first that fails, else the first that is open, else the first that is cured. */
export function leadOf(findings: readonly Finding[]): Finding | null {
  const first = (status: Finding['status']): Finding | undefined =>
    findings.find((finding) => finding.core && finding.status === status);
  return first('fail') ?? first('undecided') ?? first('cured') ?? null;
}
