import type { Outcome } from '@hitchwright/core/assess';
import type { Edit } from '@hitchwright/core/records';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';

/** One rule that sources disagree on: what it comes to here, what it asks for, and what chooses it. */
export interface Rule {
  readonly name: string;
  readonly outcome: Outcome;
  readonly says: string;
  readonly wants: string;
  readonly chosen: boolean;
  readonly choice: Edit;
}

interface RuleSetsProps {
  /** Names the heading among those of the page. */
  readonly id: string;
  readonly title: string;
  readonly intro: string;
  readonly rules: readonly Rule[];
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** Rules that sources disagree on side by side with what each comes to; the one that is used can be changed here. */
export function RuleSets({ id, title, intro, rules, onEdit }: RuleSetsProps) {
  if (rules.length === 0) return null;
  return (
    <section className="rule-sets" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <p>{intro}</p>
      <ul className="plain-list">
        {rules.map((rule) => (
          <RuleSet key={rule.name} rule={rule} onEdit={onEdit} />
        ))}
      </ul>
    </section>
  );
}

function RuleSet({ rule, onEdit }: { readonly rule: Rule } & Pick<RuleSetsProps, 'onEdit'>) {
  const { name, outcome, says, wants, chosen, choice } = rule;
  return (
    <li className={chosen ? 'rule-set rule-set-chosen' : 'rule-set'} aria-current={chosen ? 'true' : undefined}>
      <VerdictMark outcome={outcome} />
      <p className="rule-name">{name}</p>
      <p className="rule-says">
        <Figures text={`${says}.`} />
      </p>
      <p className="rule-wants">
        <Figures text={`${wants}.`} />
      </p>
      {chosen ? (
        <span className="rule-used">used here</span>
      ) : (
        <button type="button" className="quiet" onClick={() => onEdit([choice])}>
          Use it<span className="unseen">: {name}</span>
        </button>
      )}
    </li>
  );
}
