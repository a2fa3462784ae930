import { steeringRuleNames } from '../../tables/index.ts';
import { balanceLines, openBalance } from '../balance/index.ts';
import { judgeLines, openQuestion, type Finding } from '../findings/index.ts';
import type { SteeredOutcome } from './answer.ts';
import type { SetupJudgement } from './judgeSetup.ts';

const id: Finding['id'] = 'balance.frontShare';

/**
 * What the steering comes to by itself under every rule; sources disagree about what the share is taken of, and a person
 * should see by how much.
 *
 * @param judgement the setup, judged by the chosen rule [record]
 * @returns one finding for each rule, none where the tractor is not weighed [list]
 */
export function steeringByRules({ question, findings }: SetupJudgement): SteeredOutcome[] {
  const chosen = findings.find((finding) => finding.id === id);
  if (chosen?.margin == null) return [];
  return steeringRuleNames.map((rule): SteeredOutcome => {
    if (rule === question.balance.structure.rule) return { rule, chosen: true, finding: chosen };
    const lines = balanceLines(openBalance(question.lift, rule)).filter((line) => line.id === id);
    const [finding] = judgeLines(openQuestion(question.ledger, lines), { thresholds: false }).findings;
    return { rule, chosen: false, finding: finding ?? chosen };
  });
}
