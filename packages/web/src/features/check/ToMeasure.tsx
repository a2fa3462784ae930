import type { Answer } from '@hitchwright/core/assess';
import { askOf, fieldOf, openFindings } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';

/** What is tried at the machine and has no figure to type. */
const triedByHand = 'shaft.triedByHand';

interface ToMeasureProps {
  readonly answer: Answer;
  readonly onMeasure: (field: string) => void;
}

/** What to measure, with the figure that decides, and the way to its field. */
export function ToMeasure({ answer, onMeasure }: ToMeasureProps) {
  const { system } = usePreferences();
  const asks = openFindings(answer).flatMap((finding) => {
    const text = askOf(finding, system);
    const path = finding.asks[0]?.path;
    return text === null || path === undefined ? [] : [{ id: finding.id, text, field: fieldOf(path) }];
  });
  if (asks.length === 0) return null;
  return (
    <section className="to-measure" aria-labelledby="measure-title">
      <h3 id="measure-title">{answer.verdict === 'measureFirst' ? 'Measure first' : 'Still open: measure'}</h3>
      <ul className="plain-list">
        {asks.map(({ id, text, field }) => (
          <li key={id}>
            <p>
              <Figures text={text} />
            </p>
            {field === triedByHand ? null : (
              <button type="button" className="quiet" onClick={() => onMeasure(field)}>
                Type it<span className="unseen">: {text}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
