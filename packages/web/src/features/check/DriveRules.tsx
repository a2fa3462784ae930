import type { Answer } from '@hitchwright/core/assess';
import type { Edit } from '@hitchwright/core/records';
import { driveRuleText, driveRuleWords, ruledWords } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';

type Ruled = Answer['otherRules'][number];

interface DriveRulesProps {
  readonly answer: Answer;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** What the drive comes to by every set of rules: sources disagree, and the one that is used can be changed here. */
export function DriveRules({ answer: { otherRules }, onEdit }: DriveRulesProps) {
  if (otherRules.length === 0) return null;
  return (
    <section className="rule-sets" aria-labelledby="rule-sets-title">
      <h2 id="rule-sets-title">The drive by each set of rules</h2>
      <p>{agreementOf(otherRules)} Makers and trade sources ask for different things; pick the one you go by.</p>
      <ul className="plain-list">
        {otherRules.map((ruled) => (
          <RuleSet key={ruled.rules} ruled={ruled} onEdit={onEdit} />
        ))}
      </ul>
    </section>
  );
}

function RuleSet({ ruled, onEdit }: { readonly ruled: Ruled } & Pick<DriveRulesProps, 'onEdit'>) {
  const { system } = usePreferences();
  const { rules, chosen, outcome } = ruled;
  const name = driveRuleWords[rules];
  const value = rules === 'usual' ? undefined : rules;
  return (
    <li className={chosen ? 'rule-set rule-set-chosen' : 'rule-set'} aria-current={chosen ? 'true' : undefined}>
      <VerdictMark outcome={outcome} />
      <p className="rule-name">{name}</p>
      <p className="rule-says">
        <Figures text={`${ruledWords(ruled, system)}.`} />
      </p>
      <p className="rule-wants">
        <Figures text={`${driveRuleText(rules, system)}.`} />
      </p>
      {chosen ? (
        <span className="rule-used">used here</span>
      ) : (
        <button type="button" className="quiet" onClick={() => onEdit([{ path: 'rules.driveShaft', value }])}>
          Use it<span className="unseen">: {name}</span>
        </button>
      )}
    </li>
  );
}

/** Whether sources that disagree come to the same here. */
function agreementOf(ruled: readonly Ruled[]): string {
  const running = ruled.filter(({ outcome }) => outcome === 'works').length;
  if (running === ruled.length) return `It runs by all ${running}.`;
  if (running === 0) return 'As it stands it runs by none of them.';
  return `As it stands it runs by ${running} of ${ruled.length}.`;
}
