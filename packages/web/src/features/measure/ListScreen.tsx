import { fieldOfPart } from '@hitchwright/core/readings';
import { ReadingList } from './ReadingList.tsx';
import { readCount } from './progress.ts';
import type { Step } from './steps.ts';
import type { SessionDesk } from './useSession.ts';

interface ListScreenProps {
  readonly desk: SessionDesk;
  readonly steps: readonly Step[];
}

/** Every figure of the measuring: what is still to be read, what was read and what was left out. */
export function ListScreen({ desk, steps }: ListScreenProps) {
  const left = new Set(steps.map(({ path }) => fieldOfPart(path))).size;
  return (
    <section className="measure-sheet done" aria-label="All the figures">
      <p>
        {readCount(desk.entries)} read, {left} to read. Open any of them, in any order; what is read stays as it is
        until you read it again.
      </p>
      <ReadingList desk={desk} steps={steps} />
    </section>
  );
}
