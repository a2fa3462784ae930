import type { Answer, Outcome } from '@hitchwright/core/assess';
import type { Finding } from '@hitchwright/core/findings';
import type { Edit } from '@hitchwright/core/records';
import { steeredWords, steeringRuleText, steeringRuleWords } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { RuleSets, type Rule } from '../check/RuleSets.tsx';

interface SteeringRulesProps {
  readonly answer: Answer;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

const outcomes: Readonly<Record<Finding['status'], Outcome>> = {
  pass: 'works',
  cured: 'withParts',
  fail: 'willNot',
  undecided: 'measureFirst',
  notChecked: 'notChecked',
  notNeeded: 'notNeeded',
};

/** What the steering comes to by every rule. */
export function SteeringRules({ answer: { steeringRules }, onEdit }: SteeringRulesProps) {
  const { system } = usePreferences();
  const rules = steeringRules.map((steered): Rule => {
    const { rule: name, chosen, finding } = steered;
    return {
      name: steeringRuleWords[name],
      outcome: outcomes[finding.status],
      says: steeredWords(steered, system),
      wants: steeringRuleText(name),
      chosen,
      choice: { path: 'rules.steeringShare', value: name === 'ofTractor' ? undefined : name },
    };
  });
  return (
    <RuleSets
      id="steering-rules-title"
      title="The steering by each rule"
      intro={`${agreementOf(steeringRules)} Sources disagree about what the front axle’s share is taken of; pick the rule you go by.`}
      rules={rules}
      onEdit={onEdit}
    />
  );
}

/** Whether rules that disagree come to the same here. */
function agreementOf(steered: Answer['steeringRules']): string {
  const kept = steered.filter(({ finding }) => finding.status === 'pass').length;
  if (kept === steered.length) return `It keeps its steering by all ${kept}.`;
  if (kept === 0) return 'As it stands none of them is surely kept.';
  return `As it stands ${kept} of ${steered.length} ${kept === 1 ? 'is' : 'are'} kept.`;
}
