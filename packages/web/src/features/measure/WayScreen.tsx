import type { WayQuestion } from '@hitchwright/core/readings';
import type { FigureProps } from './FigureScreen.tsx';
import { ReadSoFar } from './ReadSoFar.tsx';
import { ScreenBar } from './ScreenBar.tsx';
import { ScreenHead } from './ScreenHead.tsx';
import type { Entry } from './session.ts';

interface WayScreenProps extends FigureProps {
  readonly entry: Entry;
  readonly question: WayQuestion;
}

/** Between which points it was read: the usual mistakes stand beside the right way. */
export function WayScreen({ desk, document, step, entry, question }: WayScreenProps) {
  const { path } = step;
  return (
    <section className="measure-sheet" aria-labelledby="figure-title">
      <ScreenHead document={document} step={step} />
      <ReadSoFar entry={entry} />
      <fieldset className="way-list">
        <legend>{question.ask}</legend>
        {question.ways.map(({ key, words }) => (
          <button key={key} type="button" className="big-choice" onClick={() => desk.enter(path, { way: key })}>
            {words}
          </button>
        ))}
      </fieldset>
      <ScreenBar>
        <button type="button" onClick={() => desk.enter(path, { typed: [], draft: '' })}>
          Read it again
        </button>
      </ScreenBar>
    </section>
  );
}
