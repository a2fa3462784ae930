import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { tallyOf } from './tally.ts';
import type { YardState } from './useYard.ts';
import { columnName, useYardInView } from './yardInView.ts';
import { YardProgress } from './YardProgress.tsx';

/** What the chosen coupler comes to, how far the work is, and what the marks mean. */
export function YardSummary({ yard, chosen }: { readonly yard: YardState; readonly chosen: number }) {
  const { columns } = useYardInView();
  const tally = tallyOf(yard.rows, chosen);
  const count = yard.rows.length;
  return (
    <div className="yard-summary">
      <section aria-label="Summary">
        <h2 className="yard-sum">
          {columnName(columns, chosen)} takes {tally.works} of {count} as they stand, {tally.withParts} with parts
        </h2>
        <p>
          {tally.measureFirst} to be measured first, {tally.willNot} will not.
        </p>
      </section>
      <YardProgress label="Progress" progress={yard} />
      <Legend />
    </div>
  );
}

function Legend() {
  const entries = [
    ['works', 'works: hooks up, runs, lifts and stays upright'],
    ['withParts', 'works with parts'],
    ['measureFirst', 'measure first'],
    ['willNot', 'will not, and why'],
  ] as const;
  return (
    <ul className="yard-legend" aria-label="The marks">
      {entries.map(([outcome, words]) => (
        <li key={outcome}>
          <VerdictMark outcome={outcome} /> {words}
        </li>
      ))}
    </ul>
  );
}
