import { ProblemNote } from './ProblemNote.tsx';
import type { Making } from './useMaker.ts';

/** That something is being made, or why it was not. */
export function MakingState({ desk }: { readonly desk: Pick<Making<unknown>, 'making' | 'problem'> }) {
  return (
    <>
      <div role="status" className="hand-over-state">
        {desk.making === null ? null : <p>It is being made…</p>}
      </div>
      <ProblemNote problem={desk.problem} />
    </>
  );
}
