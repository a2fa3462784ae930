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
        {advised === null ? 'Working it out…' : <Follows desk={desk} advised={advised} />}
      </div>
    </Header>
  );
}

/** The verdict; where somebody asked, it is theirs to give, with the parts that they have. */
function Follows({ desk: { session }, advised }: { readonly desk: SessionDesk; readonly advised: Advised }) {
  if (session.request !== null) return <span>{`Asked by ${session.request.asks ?? 'somebody'}`}</span>;
  const { answer } = advised.advice;
  return (
    <>
      <VerdictMark outcome={answer.verdict} />
      <span>{verdictWords(answer)}</span>
    </>
  );
}

function countWords({ entries }: SessionDesk, left: number): string {
  const done = [...entries.values()].filter(({ state }) => state === 'done').length;
  if (left === 0) return 'Nothing left to read';
  return `${done + 1} of ${done + left} that matter${left === 1 && done === 0 ? 's' : ''}`;
}
