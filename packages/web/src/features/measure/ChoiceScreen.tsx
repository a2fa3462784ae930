import { Figures } from '../../marks/Figures.tsx';
import { saidBy, type PlainChoice } from '../dimensions/plainChoices.ts';
import type { FigureProps } from './FigureScreen.tsx';
import { ScreenBar } from './ScreenBar.tsx';
import { ScreenHead } from './ScreenHead.tsx';
import { optionSaid } from './steps.ts';

interface ChoiceScreenProps extends FigureProps {
  readonly choice: PlainChoice;
}

/** Something to look at and say, not to measure. */
export function ChoiceScreen({ desk, document, step, choice }: ChoiceScreenProps) {
  const { path } = step;
  const entry = desk.entries.get(path);
  const said = entry?.state === 'done' ? optionSaid(choice, entry.chosen) : null;
  return (
    <section className="measure-sheet" aria-labelledby="figure-title">
      <ScreenHead document={document} step={step} />
      <div className="way-list" role="group" aria-labelledby="figure-title">
        {choice.options.map(([value, words]) => (
          <button
            key={value}
            type="button"
            className="big-choice"
            aria-pressed={said === null ? undefined : said === value}
            onClick={() => desk.enter(path, { chosen: saidBy(choice, value) ?? value, state: 'done' })}
          >
            <Figures text={words} />
          </button>
        ))}
      </div>
      <ScreenBar>
        <button type="button" onClick={() => desk.enter(path, { state: 'skipped' })}>
          Can’t tell
        </button>
        {said === null ? null : (
          <button
            type="button"
            className="button-solid"
            onClick={() => desk.enter(path, { chosen: entry?.chosen, state: 'done' })}
          >
            Keep it
          </button>
        )}
      </ScreenBar>
    </section>
  );
}
