import { verdictWords } from '@hitchwright/core/words';
import { Header } from '../../app/Header.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { countOf, lastBefore } from './progress.ts';
import type { Step } from './steps.ts';
import { figureAt, figurePlace, goTo, type Place } from './usePlace.ts';
import type { Advised } from './useAdvice.ts';
import type { SessionDesk } from './useSession.ts';

interface MeasureHeadProps {
  readonly desk: SessionDesk;
  readonly place: Place;
  readonly steps: readonly Step[];
  /** The figure on the screen. */
  readonly step: Step | null;
  readonly advised: Advised | null;
  /** The verdict shown belongs to earlier figures. */
  readonly isStale: boolean;
}

/** How far the measuring is, the verdict as it follows, and the ways back, to the list and out of it. */
export function MeasureHead(props: MeasureHeadProps) {
  const { desk, advised, isStale } = props;
  return (
    <Header>
      <h1 className="measure-title">
        <Title {...props} />
      </h1>
      <div className="measure-verdict" aria-live="polite" aria-busy={isStale}>
        {advised === null ? 'Working it out…' : <Follows desk={desk} advised={advised} />}
      </div>
      <Ways {...props} />
    </Header>
  );
}

/** The count, with the list of all figures behind it. */
function Title({ desk, place, steps, advised }: MeasureHeadProps) {
  const opened = figureAt(place);
  if (place === 'list') return 'All the figures';
  if (place === 'send') return 'What there is so far';
  if (opened === null && advised === null) return 'Measure';
  if (opened === null && steps.length === 0) return 'Nothing left to read';
  const { nth, total } = countOf(desk, steps, opened);
  return (
    <button type="button" className="measure-count" onClick={() => goTo('list')}>
      {nth} of {total}
      {desk.session.request === null ? <span className="measure-why"> that matter{total === 1 ? 's' : ''}</span> : null}
      <span className="unseen">: show the list</span>
    </button>
  );
}

function Ways({ desk, place, steps, step }: MeasureHeadProps) {
  const isBeside = place === 'list' || place === 'send';
  const isDone = step === null && !isBeside;
  return (
    <nav className="measure-ways" aria-label="Within the measuring">
      {isBeside ? (
        <button type="button" className="way-back" onClick={() => goTo('next')}>
          {steps.length === 0 ? 'To the end' : 'Go on reading'}
        </button>
      ) : (
        <WayBack desk={desk} step={step} />
      )}
      {isDone || place === 'send' ? null : (
        <button type="button" onClick={() => goTo('send')}>
          {desk.session.request === null ? 'Stop here' : 'Send what I have'}
        </button>
      )}
    </nav>
  );
}

/** To the figure before, as it was read; before the first to what has to be safe. */
function WayBack({ desk, step }: Pick<MeasureHeadProps, 'desk' | 'step'>) {
  const before = lastBefore(desk.entries, step?.path ?? null);
  return (
    <button type="button" className="way-back" onClick={() => goTo(before === null ? 'safety' : figurePlace(before))}>
      {before === null ? 'Safety first' : 'Last reading'}
    </button>
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
