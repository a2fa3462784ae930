import { driveRuleNames, type DriveRuleName } from '../../tables/index.ts';
import { judgeLines, openQuestion, topicOf, type Finding } from '../findings/index.ts';
import { linesUnder } from '../shaft/index.ts';
import type { RuledOutcome } from './answer.ts';
import type { SetupJudgement } from './judgeSetup.ts';
import { leadOf, outcomeOf } from './outcomes.ts';

/**
 * What the drive comes to by itself under every set of rules; sources disagree, and a person should see by how much.
 *
 * @param judgement the setup, judged by the chosen rules [record]
 * @returns one outcome for each set, none where nothing is driven [list]
 */
export function outcomesByRules({ question, findings }: SetupJudgement): RuledOutcome[] {
  const { shaft, ledger } = question;
  if (shaft.driven !== true) return [];
  const ofDrive = findings.filter(({ id }) => topicOf(id) === 'runs');
  const findingsUnder = (rules: DriveRuleName): readonly Finding[] => {
    if (rules === shaft.rules.name) return ofDrive;
    const ruled = judgeLines(openQuestion(ledger, linesUnder(shaft, rules)), { thresholds: false }).findings;
    return ofDrive.map((finding) => ruled.find(({ id }) => id === finding.id) ?? finding);
  };
  return driveRuleNames.map((rules): RuledOutcome => {
    const all = findingsUnder(rules);
    return { rules, chosen: rules === shaft.rules.name, outcome: outcomeOf(all), lead: leadOf(all) };
  });
}
