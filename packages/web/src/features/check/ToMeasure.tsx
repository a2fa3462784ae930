import type { Suggestion } from '@hitchwright/core/advice';
import { asksOf, fieldOf, openFindings, restWords, suggestionDetails, suggestionText } from '@hitchwright/core/words';
import { linkOf } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { Answered } from './useAssessment.ts';

/** What is tried at the machine and has no figure to type. */
const triedByHand = 'shaft.triedByHand';

interface ToMeasureProps {
  readonly answered: Pick<Answered, 'answer' | 'advice' | 'document'>;
  readonly onMeasure: (field: string) => void;
}

/** What to measure, what settles most for its time first, with the figure that decides and the way to its field. */
export function ToMeasure({ answered, onMeasure }: ToMeasureProps) {
  const { system } = usePreferences();
  const items = itemsOf(answered, system);
  const rest = answered.advice === null ? [] : restWords(answered.advice);
  if (items.length === 0 && rest.length === 0) return null;
  return (
    <section className="to-measure" aria-labelledby="measure-title">
      <h3 id="measure-title">{answered.answer.verdict === 'measureFirst' ? 'Measure first' : 'Still open: measure'}</h3>
      {answered.advice === null || answered.advice.next.length === 0 ? null : (
        <WaysToMeasure document={answered.document} />
      )}
      <ol className="plain-list">
        {items.map(({ field, title, texts }) => (
          <li key={field}>
            <div>
              {title === null ? null : (
                <p>
                  <b>
                    <Figures text={title} />
                  </b>
                </p>
              )}
              {texts.map((text) => (
                <p key={text}>
                  <Figures text={text} />
                </p>
              ))}
            </div>
            {field === triedByHand ? null : (
              <button type="button" className="quiet" onClick={() => onMeasure(field)}>
                Type it<span className="unseen">: {title ?? texts[0]}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
      {rest.map((text) => (
        <p key={text}>
          <Figures text={text} />
        </p>
      ))}
    </section>
  );
}

/** At the machine with a phone, or by asking whoever stands there. */
function WaysToMeasure({ document }: { readonly document: SetupDocument }) {
  const begin = (): void => {
    void import('../measure/begin.ts').then(({ beginMeasuring }) => {
      location.hash = beginMeasuring(document);
    });
  };
  return (
    <div className="ways-to-measure">
      <button type="button" className="button-solid" onClick={begin}>
        Measure step by step
      </button>
      <a className="button" href={`#request=${linkOf(document)}`}>
        Ask the customer to measure
      </a>
    </div>
  );
}

interface Item {
  readonly field: string;
  readonly title: string | null;
  readonly texts: readonly string[];
}

/** One item for each figure: in the order of the advice, and as the findings ask where there is none. */
function itemsOf({ answer, advice }: ToMeasureProps['answered'], system: UnitSystem): Item[] {
  const asked = asksOf(openFindings(answer), system).map(({ path, text, how }) => ({
    field: fieldOf(path),
    text: `${text} ${how}`.trim(),
  }));
  const next = advice?.next ?? [];
  const textsFor = (field: string): string[] => [
    ...new Set(asked.filter((ask) => ask.field === field).map(({ text }) => text)),
  ];
  const ranked = next.map((suggestion: Suggestion): Item => {
    const field = fieldOf(suggestion.path);
    return { field, title: suggestionText(suggestion, system), texts: suggestionDetails(suggestion, system) };
  });
  const others = [...new Set(asked.map(({ field }) => field))].filter(
    (field) => !ranked.some((item) => item.field === field),
  );
  return [...ranked, ...others.map((field): Item => ({ field, title: null, texts: textsFor(field) }))];
}
