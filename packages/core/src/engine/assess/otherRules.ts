import { driveRuleNames, type DriveRuleName } from '../../tables/index.ts';
import { allHoldAt, judgeLines, openQuestion, topicOf, type Finding } from '../findings/index.ts';
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
export function outcomesByRules({ question, findings, setting }: SetupJudgement): RuledOutcome[] {
  const { shaft, ledger } = question;
  if (shaft.driven !== true) return [];
  const ofDrive = findings.filter(({ id }) => topicOf(id) === 'runs');
  const findingsUnder = (rules: DriveRuleName): readonly Finding[] => {
    const lines = rules === shaft.rules.name ? [] : linesUnder(shaft, rules);
    const isRuled = ({ id }: Finding): boolean => lines.some((line) => line.id === id);
    if (lines.length === 0 || failsBefore(ofDrive, isRuled)) return ofDrive;
    const ruled = openQuestion(ledger, lines);
    // Where all hold at the setting that is reported anyway, no other one is sought.
    if (allHoldAt(ruled, setting)) return ofDrive.map((one) => (isRuled(one) ? { ...one, status: 'pass' } : one));
    const judged = judgeLines(ruled, { thresholds: false }).findings;
    return ofDrive.map((finding) => judged.find(({ id }) => id === finding.id) ?? finding);
  };
  return driveRuleNames.map((rules): RuledOutcome => {
    const all = findingsUnder(rules);
    return { rules, chosen: rules === shaft.rules.name, outcome: outcomeOf(all), lead: leadOf(all) };
  });
}

/** Does something fail, and lead, that comes before all that a set of rules has a say in? */
function failsBefore(ofDrive: readonly Finding[], isRuled: (finding: Finding) => boolean): boolean {
  const failing = ofDrive.findIndex(({ core, status }) => core && status === 'fail');
  return failing >= 0 && failing < ofDrive.findIndex(isRuled);
}
