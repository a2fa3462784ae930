import { pointName } from '../dimensions/plainChoices.ts';
import type { Ask } from './importTypes.ts';

interface QuestionsProps {
  readonly asks: readonly Ask[];
  readonly isBusy: boolean;
  /** An empty text leaves the column out. */
  readonly onAnswer: (ask: Ask, value: string) => void;
}

/** What a person has to say, because two things may be meant: nothing of it is guessed. */
export function Questions({ asks, isBusy, onAnswer }: QuestionsProps) {
  if (asks.length === 0) return null;
  return (
    <section className="imp-part imp-questions" aria-labelledby="imp-questions">
      <h3 id="imp-questions">{asks.length === 1 ? 'One question' : `${asks.length} questions`} before the rest</h3>
      {asks.map((ask) => (
        <fieldset key={`${ask.about} ${ask.column}`} disabled={isBusy}>
          <legend>
            {ask.column === null ? '' : `Column ${ask.column}: `}
            {ask.question}
          </legend>
          <div className="imp-options">
            {ask.options.map(({ value, label }) => (
              <button key={value} type="button" onClick={() => onAnswer(ask, value)}>
                {ask.about === 'from' ? pointName('', value) : label}
                {value === ask.suggested ? <span className="imp-likely">likely</span> : null}
              </button>
            ))}
            {ask.about === 'field' ? (
              <button type="button" onClick={() => onAnswer(ask, '')}>
                leave it out
              </button>
            ) : null}
          </div>
        </fieldset>
      ))}
    </section>
  );
}
