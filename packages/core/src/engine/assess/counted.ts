import { readSetup, withChosen, withChosenDone, type SetupDocument } from '../../records/index.ts';
import type { Depth, Finding } from '../findings/index.ts';
import type { Cure } from './answer.ts';
import { seekCures, type Cures } from './cures.ts';
import { judgeSetup, type SetupJudgement } from './judgeSetup.ts';
import { isMet, isToCure } from './trials.ts';

/** What stands of a setup, and what cures it, with the cures that were chosen among them. */
export interface Counted extends Cures {
  /** The setup that further cures are for. */
  readonly document: SetupDocument;
  readonly findings: readonly Finding[];
}

/**
 * Seeks cures beside those that were chosen. What fails and holds once they are done stays as it stands, to be told as cured;
 * what becomes worse by them, or is open with them, is told as it is then.
 *
 * @param document the setup as written [JSON]
 * @param judgement the same, judged as it stands [record]
 * @param depth how much to work out [flags]
 * @returns findings and cures, the chosen ones first [record]
 * @source docs/decisions/0017
 */
export function countedOn(document: SetupDocument, judgement: SetupJudgement, depth: Depth): Counted {
  const { chosen = [] } = judgement.question.joint.setup;
  const asItStands = withChosen(document, []);
  const done = withChosenDone(document);
  const reading = chosen.length === 0 ? null : readSetup(done);
  if (reading?.ok !== true)
    return { document: asItStands, findings: judgement.findings, ...seekCures(asItStands, judgement) };
  const after = judgeSetup(reading.setup, depth);
  const rest = seekCures(done, after);
  const isWhole = !after.findings.some(isToCure) || rest.cures.some(({ inSmallestSet }) => inSmallestSet);
  const cures = judgement.findings
    .filter((before, i) => isToCure(before) && isMet(after.findings[i]))
    .map(({ id }) => id);
  const counted = chosen.map((cure): Cure => ({ ...cure, cures, inSmallestSet: isWhole }));
  const findings = judgement.findings.map((before, i) => toldOf(before, after.findings[i] ?? before));
  const isNeeded = findings.some(isToCure);
  return { ...rest, document: done, findings, cures: [...(isNeeded ? counted : []), ...rest.cures] };
}

function toldOf(before: Finding, after: Finding): Finding {
  const isCured = isToCure(before) && isMet(after);
  return isCured || after.status === before.status ? before : after;
}
