import { VerdictMark } from '../../marks/VerdictMark.tsx';
import type { Progress } from '../yard/useGrid.ts';
import { YardProgress } from '../yard/YardProgress.tsx';
import type { ShaftViewProps } from './ShaftGrid.tsx';
import { tallyFor } from './serving.ts';

interface ShaftSummaryProps extends Pick<ShaftViewProps, 'driven' | 'replies'> {
  /** What stands between tractor and implements. */
  readonly name: string;
  readonly progress: Progress;
}

/** How many implements find a shaft, how far the work is, and what the marks mean. */
export function ShaftSummary({ name, driven, replies, progress }: ShaftSummaryProps) {
  const tallies = driven.implements.map((_, column) => tallyFor(replies, column));
  const served = tallies.filter(({ works }) => works > 0).length;
  const withParts = tallies.filter(({ works, withParts }) => works === 0 && withParts > 0).length;
  return (
    <div className="yard-summary">
      <section aria-label="Summary of the shafts">
        <h2 className="yard-sum">
          {name}: {served} of {driven.implements.length} driven implements find a shaft that serves
        </h2>
        <p>
          {withParts} more with parts. A shaft that serves does so at every height of the lift; whether the implement
          hooks up, lifts and stays upright stands in the other table.
        </p>
      </section>
      <YardProgress label="How far the shafts are" progress={progress} />
      <ul className="yard-legend" aria-label="The marks of the shafts">
        {legend.map(([outcome, words]) => (
          <li key={outcome}>
            <VerdictMark outcome={outcome} /> {words}
          </li>
        ))}
      </ul>
    </div>
  );
}

const legend = [
  ['works', 'serves'],
  ['withParts', 'serves with parts, or cut'],
  ['measureFirst', 'measure first'],
  ['willNot', 'no, and why'],
] as const;
