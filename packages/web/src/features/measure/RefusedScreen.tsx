import { labelOf } from '@hitchwright/core/words';
import type { FigureProps } from './FigureScreen.tsx';
import { ReadSoFar } from './ReadSoFar.tsx';
import { ScreenBar } from './ScreenBar.tsx';
import { ScreenHead } from './ScreenHead.tsx';
import type { Entry } from './session.ts';
import type { Phase } from './steps.ts';

interface RefusedScreenProps extends FigureProps {
  readonly entry: Entry;
  readonly refused: Extract<Phase, { kind: 'refused' }>;
}

/** A reading from which the figure does not follow: what to do instead. What was read may be the figure of another field. */
export function RefusedScreen({ desk, document, step, entry, refused: { hint, instead } }: RefusedScreenProps) {
  const { path } = step;
  const readAgain = (): void => desk.enter(path, { typed: [], way: null, draft: '' });
  const takeInstead = (other: string): void => {
    desk.enter(other, { typed: entry.typed, state: 'done' });
    readAgain();
  };
  return (
    <section className="measure-sheet" aria-labelledby="figure-title">
      <ScreenHead document={document} step={step} />
      <ReadSoFar entry={entry} />
      <p className="doubt" role="alert">
        {hint}
      </p>
      <ScreenBar>
        <button type="button" onClick={readAgain}>
          Read it again
        </button>
        {instead === null ? null : (
          <button type="button" className="button-solid" onClick={() => takeInstead(instead)}>
            Keep it as {labelOf(instead)}
          </button>
        )}
      </ScreenBar>
    </section>
  );
}
