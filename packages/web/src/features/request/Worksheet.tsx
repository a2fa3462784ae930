import type { Suggestion } from '@hitchwright/core/advice';
import { requestLinkOf } from '@hitchwright/core/exchange';
import { sceneToSvg, tapeDrawing } from '@hitchwright/core/drawings';
import { partsOf, wayQuestion } from '@hitchwright/core/readings';
import type { MeasuringRequest } from '@hitchwright/core/records';
import { cautionWords, howToMeasure, labelOf, sentenceCase } from '@hitchwright/core/words';
import { sharedAddressOf } from '../../app/address.ts';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { QrCode } from '../../marks/QrCode.tsx';
import { choiceAt } from '../measure/steps.ts';
import { safetyRules } from '../measure/safety.ts';

interface WorksheetProps {
  readonly suggestions: readonly Suggestion[];
  readonly request: MeasuringRequest;
  readonly title: string;
}

/** The same on paper: safety first, then one box for each figure with the drawing of where the tape goes, and room for two readings. */
export function Worksheet({ suggestions, request, title }: WorksheetProps) {
  const address = sharedAddressOf(requestLinkOf(request));
  return (
    <article className="worksheet" aria-labelledby="worksheet-title">
      <header className="worksheet-head">
        <h2 id="worksheet-title">Measuring sheet: {title}</h2>
        <p>
          {request.asks === undefined ? '' : `Asked by ${request.asks}. `}
          {request.of === undefined ? '' : `For ${request.of}. `}
          {request.when.slice(0, 10)}. No. {request.id}
        </p>
        <ol className="safety-rules">
          {safetyRules.map((rule) => (
            <li key={rule}>{rule}</li>
          ))}
        </ol>
      </header>
      {suggestions.map((suggestion, i) => (
        <WorksheetBox key={suggestion.path} suggestion={suggestion} request={request} number={i + 1} />
      ))}
      <footer className="worksheet-foot">
        <div>
          <p>Read by ______________________ on ______________ Tractor on level ground: yes ☐ not sure ☐</p>
          <p>{sentenceCase(cautionWords.standClear)} The operator’s manuals come first.</p>
        </div>
        {address === null ? null : <QrCode text={address} label="The same as a link" />}
      </footer>
    </article>
  );
}

function WorksheetBox({
  suggestion: { path },
  request,
  number,
}: {
  readonly suggestion: Suggestion;
  readonly request: MeasuringRequest;
  readonly number: number;
}) {
  const { system } = usePreferences();
  const scene = tapeDrawing(path, { system, format: 'print', reading: null });
  const ways = wayQuestion(path);
  const choice = choiceAt(path);
  return (
    <section className="worksheet-box">
      <div>
        <h3>
          {number}. {sentenceCase(labelOf(path))}
        </h3>
        <p>
          <Figures text={howToMeasure(path)} />
        </p>
        {partsOf(request.setup, path).map((part, _, parts) => (
          <p key={part} className="worksheet-blank">
            {parts.length > 1 ? `${sentenceCase(labelOf(part))}: ` : ''}
            {choice === null ? 'first ____________ again ____________ in / mm' : ''}
          </p>
        ))}
        {choice === null ? null : <Ticks words={choice.options.map(([, words]) => words)} />}
        {ways === null ? null : <Ticks words={ways.ways.map(({ words }) => words)} />}
      </div>
      {scene === null ? null : (
        <div
          className="worksheet-picture"
          dangerouslySetInnerHTML={{ __html: sceneToSvg(scene, { idPrefix: `sheet-${number}` }) }}
        />
      )}
    </section>
  );
}

function Ticks({ words }: { readonly words: readonly string[] }) {
  return (
    <ul className="worksheet-ticks">
      {words.map((each) => (
        <li key={each}>☐ {each}</li>
      ))}
    </ul>
  );
}
