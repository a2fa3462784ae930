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
import type { Advised, Following } from './useAdvice.ts';
import type { SessionDesk } from './useSession.ts';

interface DoneProps {
  readonly desk: SessionDesk;
  readonly document: SetupDocument;
  readonly following: Following;
}

/** Nothing left to ask: the verdict, what was read, what was left, and where it goes. */
export function DoneScreen({ desk, document, following }: DoneProps) {
  const { reply } = following;
  if (reply === null) return null;
  const reopen = (path: string): void => {
    for (const entry of desk.entries.values()) {
      if (fieldOfPart(entry.path) === fieldOfPart(path))
        desk.enter(entry.path, { state: 'open', typed: [], way: null, sure: [], draft: '' });
    }
  };
  return (
    <section className="measure-sheet done">
      {reply.kind === 'errors' ? (
        <>
          <h2>These figures can’t all be true</h2>
          <p className="pad">Read again what is named here, or what it is compared with.</p>
          <ErrorList errors={reply.errors} onShow={reopen} />
        </>
      ) : null}
      {reply.kind === 'fault' ? (
        <p className="doubt" role="alert">
          Something inside broke on these figures ({reply.message}). They are kept; send them as they are.
        </p>
      ) : null}
      {reply.kind === 'advice' ? <Outcome advised={reply} request={desk.session.request} /> : null}
      <ReadingList desk={desk} onReopen={reopen} />
      <SendAnswers desk={desk} />
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

interface OutcomeProps {
  readonly advised: Advised;
  readonly request: SessionDesk['session']['request'];
}

/** What it came to. Where somebody asked, the verdict is theirs to give: they know which parts there are. */
function Outcome({ advised, request }: OutcomeProps) {
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
