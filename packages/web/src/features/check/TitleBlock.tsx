import type { Printed } from '@hitchwright/core/exchange';
import type { CureRecord } from '@hitchwright/core/records';
import { becauseOf, cureText, verdictWords, uncheckedText } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import type { Reply } from './assessor.ts';
import { PrintedNote } from './PrintedNote.tsx';
import type { Answered } from './useAssessment.ts';

interface TitleBlockProps {
  readonly answered: Answered | null;
  /** The cures that it is shown with. */
  readonly chosen: readonly CureRecord[];
  readonly reply: Reply | null;
  /** What the sheet said that led here. */
  readonly printed: Printed | null;
  /** The answer shown belongs to earlier figures. */
  readonly isOlder: boolean;
}

/** The verdict as the title block of the sheet. */
export function TitleBlock({ answered, chosen, reply, printed, isOlder }: TitleBlockProps) {
  return (
    <section className="title-block" aria-label="Verdict">
      {isOlder ? <OlderNote reply={reply} /> : null}
      {printed === null || answered === null ? null : <PrintedNote printed={printed} answered={answered} />}
      {answered === null ? <NoVerdict reply={reply} /> : <Verdict answered={answered} chosen={chosen} />}
    </section>
  );
}

interface VerdictProps {
  readonly answered: Answered;
  readonly chosen: readonly CureRecord[];
}

function Verdict({ answered: { answer, setup }, chosen }: VerdictProps) {
  const { system } = usePreferences();
  const because = becauseOf(answer, setup, system);
  const unchecked = uncheckedText(answer.findings);
  return (
    <>
      <h2 className="verdict">
        <VerdictMark outcome={answer.verdict} />
        <span className="verdict-words">{verdictWords(answer)}</span>
      </h2>
      {because === null ? null : (
        <p className="because">
          <Figures text={because} />
        </p>
      )}
      {chosen.length === 0 ? null : (
        <p className="because because-shown">
          <Figures text={`Shown with: ${chosen.map((cure) => cureText(cure, system)).join(' ')}`} />
        </p>
      )}
      {unchecked === null ? null : (
        <p className="unchecked">
          <VerdictMark outcome="notChecked" />
          <span className="unchecked-words">{unchecked}</span>
        </p>
      )}
    </>
  );
}

function OlderNote({ reply }: { readonly reply: Reply | null }) {
  const why = reply?.kind === 'fault' ? 'the new figures could not be worked out' : 'a figure can’t be read yet';
  return <p className="older">Older answer: {why}. It shows what held before the last change.</p>;
}

function NoVerdict({ reply }: { readonly reply: Reply | null }) {
  if (reply?.kind === 'fault') {
    return (
      <>
        <h2 className="verdict">
          <span className="verdict-words">No answer</span>
        </h2>
        <p className="because">Something inside broke on these figures ({reply.message}).</p>
        <p>Your figures are kept. Change or add one and it is tried again; the link holds them if you report it.</p>
      </>
    );
  }
  return (
    <h2 className="verdict">
      <VerdictMark outcome="notChecked" />
      <span className="verdict-words">{reply?.kind === 'errors' ? 'Can’t be read yet' : 'Working it out…'}</span>
    </h2>
  );
}
