import { linkOf } from '@hitchwright/core/exchange';
import { fieldOfPart } from '@hitchwright/core/readings';
import type { SetupDocument } from '@hitchwright/core/records';
import { becauseOf, cautionWords, labelOf, restWords, sentenceCase, verdictWords } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { ErrorList } from '../check/ErrorList.tsx';
import { ReadingList } from './ReadingList.tsx';
import { SendAnswers } from './SendAnswers.tsx';
import { readCount } from './progress.ts';
import type { Step } from './steps.ts';
import { figurePlace, goTo } from './usePlace.ts';
import type { Advised, Following } from './useAdvice.ts';
import type { SessionDesk } from './useSession.ts';

interface DoneProps {
  readonly desk: SessionDesk;
  readonly document: SetupDocument;
  readonly following: Following;
  /** What is still to be read, where somebody stops before the end. */
  readonly steps: readonly Step[];
}

/** Nothing left to ask, or no time for it: the verdict, what was read, what was left, and where it goes. */
export function DoneScreen({ desk, document, following: { reply }, steps }: DoneProps) {
  const isEarly = steps.length > 0;
  if (reply === null && !isEarly) return null;
  const reopen = (path: string): void => {
    const entry = [...desk.entries.keys()].find((one) => fieldOfPart(one) === fieldOfPart(path));
    if (entry !== undefined) goTo(figurePlace(entry));
  };
  return (
    <section className="measure-sheet done">
      {reply?.kind === 'errors' ? (
        <>
          <h2>These figures can’t all be true</h2>
          <p className="pad">Read again what is named here, or what it is compared with.</p>
          <ErrorList errors={reply.errors} onShow={reopen} />
        </>
      ) : null}
      {reply?.kind === 'fault' ? (
        <p className="doubt" role="alert">
          Something inside broke on these figures ({reply.message}). They are kept; send them as they are.
        </p>
      ) : null}
      {isEarly ? <SoFar desk={desk} steps={steps} /> : null}
      {reply?.kind === 'advice' ? <Outcome advised={reply} request={desk.session.request} isEarly={isEarly} /> : null}
      {isEarly ? <SendAnswers desk={desk} /> : null}
      <ReadingList desk={desk} steps={steps} />
      {isEarly ? null : <SendAnswers desk={desk} />}
      <div className="done-actions done-last">
        <a className="button" href={`#${linkOf(document)}`}>
          Open the check with these figures
        </a>
        <a className="button" href="#measure">
          Other measurings on this device
        </a>
      </div>
    </section>
  );
}

/** What there is before everything was read; it can be gone on with at any time. */
function SoFar({ desk, steps }: Pick<DoneProps, 'desk' | 'steps'>) {
  const read = readCount(desk.entries);
  const left = new Set(steps.map(({ path }) => fieldOfPart(path))).size;
  const rest = `${left === 1 ? 'One figure is' : `${left} figures are`} still to be read.`;
  return (
    <p role="status">
      {read === 0
        ? `Nothing is read yet, so there is no figure to send. ${rest}`
        : `${read === 1 ? 'One figure is read and can go as it is' : `${read} figures are read and can go as they are`}. ${rest} All of it stays on this device, so you can go on later.`}
    </p>
  );
}

interface OutcomeProps {
  readonly advised: Advised;
  readonly request: SessionDesk['session']['request'];
  readonly isEarly: boolean;
}

/** What it came to. Where somebody asked, the verdict is theirs to give: they know which parts there are. */
function Outcome({ advised, request, isEarly }: OutcomeProps) {
  if (request !== null && isEarly) return null;
  return request === null ? <Verdict advised={advised} /> : <AllAsked asks={request.asks ?? 'whoever asked'} />;
}

function AllAsked({ asks }: { readonly asks: string }) {
  return (
    <div className="done-verdict">
      <h2>That is all that was asked</h2>
      <p>
        Send it back: {asks} works out the answer, with the parts that there are. Hook nothing up on these figures
        alone.
      </p>
      <p className="done-caution">{sentenceCase(cautionWords.standClear)}</p>
    </div>
  );
}

function Verdict({ advised: { advice, setup } }: { readonly advised: Advised }) {
  const { system } = usePreferences();
  const { answer, settled, next } = advice;
  const because = becauseOf(answer, setup, system);
  const open = next.map(({ path }) => labelOf(path));
  return (
    <div className="done-verdict">
      <h2 className="verdict">
        <VerdictMark outcome={answer.verdict} />
        <span className="verdict-words">{verdictWords(answer)}</span>
      </h2>
      {because === null ? null : (
        <p className="because">
          <Figures text={because} />
        </p>
      )}
      {restWords(advice).map((text) => (
        <p key={text}>
          <Figures text={text} />
        </p>
      ))}
      {settled || open.length === 0 ? null : (
        <p>
          <Figures text={`Still open: ${open.join(', ')}. Until that is known, nobody can say that it works.`} />
        </p>
      )}
      <p className="done-caution">{sentenceCase(cautionWords.standClear)}</p>
    </div>
  );
}
