import { verdictWords } from '@hitchwright/core/words';
import { Header } from '../../app/Header.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import type { Step } from './steps.ts';
import type { Advised } from './useAdvice.ts';
import type { SessionDesk } from './useSession.ts';

interface MeasureHeadProps {
  readonly desk: SessionDesk;
  readonly steps: readonly Step[];
  readonly advised: Advised | null;
  /** The verdict shown belongs to earlier figures. */
  readonly isStale: boolean;
}

/** How far the measuring is, and the verdict as it follows. */
export function MeasureHead({ desk, steps, advised, isStale }: MeasureHeadProps) {
  return (
    <Header>
      <h1 className="measure-title">{advised === null ? 'Measure' : countWords(desk, steps.length)}</h1>
      <div className="measure-verdict" aria-live="polite" aria-busy={isStale}>
        {advised === null ? (
          'Working it out…'
        ) : (
          <>
            <VerdictMark outcome={advised.advice.answer.verdict} />
            <span>{verdictWords(advised.advice.answer)}</span>
          </>
        )}
      </div>
    </Header>
  );
}

function countWords({ entries }: SessionDesk, left: number): string {
  const done = [...entries.values()].filter(({ state }) => state === 'done').length;
  if (left === 0) return 'Nothing left to read';
  return `${done + 1} of ${done + left} that matter${left === 1 && done === 0 ? 's' : ''}`;
}
