import type { Answer } from '@hitchwright/core/assess';
import type { Edit } from '@hitchwright/core/records';
import { driveRuleText, driveRuleWords, ruledWords } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { RuleSets, type Rule } from './RuleSets.tsx';

interface DriveRulesProps {
  readonly answer: Answer;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** What the drive comes to by every set of rules. */
export function DriveRules({ answer: { otherRules }, onEdit }: DriveRulesProps) {
  const { system } = usePreferences();
  const rules = otherRules.map((ruled): Rule => {
    const { rules: name, chosen, outcome } = ruled;
    return {
      name: driveRuleWords[name],
      outcome,
      says: ruledWords(ruled, system),
      wants: driveRuleText(name, system),
      chosen,
      choice: { path: 'rules.driveShaft', value: name === 'usual' ? undefined : name },
    };
  });
  return (
    <RuleSets
      id="drive-rules-title"
      title="The drive by each set of rules"
      intro={`${agreementOf(otherRules)} Makers and trade sources ask for different things; pick the one you go by.`}
      rules={rules}
      onEdit={onEdit}
    />
  );
}

/** Whether sources that disagree come to the same here. */
function agreementOf(ruled: Answer['otherRules']): string {
  const running = ruled.filter(({ outcome }) => outcome === 'works').length;
  if (running === ruled.length) return `It runs by all ${running}.`;
  if (running === 0) return 'As it stands it runs by none of them.';
  return `As it stands it runs by ${running} of ${ruled.length}.`;
}
