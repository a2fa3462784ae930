import type { CautionId } from '@hitchwright/core/assess';
import { topicOf } from '@hitchwright/core/findings';
import type { Setup } from '@hitchwright/core/records';
import { cautionWords, remarksBesideAxles, sentenceOf, titleOf } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { FindingNote } from './FindingNote.tsx';
import { numberedFindings, type Numbered } from './numbering.ts';
import { TakenForGranted } from './TakenForGranted.tsx';
import { ToMeasure } from './ToMeasure.tsx';
import type { Answered } from './useAssessment.ts';

interface NotesProps {
  readonly answered: Answered;
  readonly onMeasure: (field: string) => void;
}

/** Cautions for what comes after the pins are in close the notes; every other one opens them. */
const closing: readonly CautionId[] = [
  'ratingCompares',
  'shaftMovesBack',
  'firstLift',
  'steeringNeedsWeight',
  'rollBarUp',
  'weighIt',
  'manualPrevails',
];

/** The numbered notes of the sheet. */
export function Notes({ answered, onMeasure }: NotesProps) {
  const { answer } = answered;
  const { system } = usePreferences();
  const isOpen = answer.verdict === 'measureFirst';
  const notes = numberedFindings(answered);
  const opening = answer.cautions.filter((id) => !closing.includes(id));
  return (
    <section className="notes" aria-labelledby="notes-title">
      <h2 id="notes-title" className="unseen">
        Notes
      </h2>
      <Cautions ids={opening} />
      {isOpen ? <ToMeasure answered={answered} onMeasure={onMeasure} /> : null}
      <FindingList notes={notes.filter((note) => !isAside(note))} setup={answered.setup} />
      {isOpen ? null : <ToMeasure answered={answered} onMeasure={onMeasure} />}
      <OtherPasses notes={notes.filter(isAside)} setup={answered.setup} />
      <Remarks remarks={remarksBesideAxles(answer, system, answered.setup)} />
      <TakenForGranted assumed={answer.assumed} />
      <NotNeeded answered={answered} />
      <Cautions ids={answer.cautions.filter((id) => closing.includes(id))} />
    </section>
  );
}

/** A check that holds and has no balloon on the drawing; that it lifts and stays upright is half of the verdict and stays in sight. */
function isAside({ number, finding }: Numbered): boolean {
  return number === null && finding.status === 'pass' && !['lifts', 'staysUpright'].includes(topicOf(finding.id));
}

interface FindingListProps {
  readonly notes: readonly Numbered[];
  readonly setup: Setup;
}

function FindingList({ notes, setup }: FindingListProps) {
  return (
    <ol className="findings">
      {notes.map(({ number, finding }) => (
        <FindingNote key={finding.id} number={number} finding={finding} setup={setup} />
      ))}
    </ol>
  );
}

function OtherPasses({ notes, setup }: FindingListProps) {
  if (notes.length === 0) return null;
  return (
    <details className="aside">
      <summary>
        {notes.length} more {notes.length === 1 ? 'check holds' : 'checks hold'}
      </summary>
      <FindingList notes={notes} setup={setup} />
    </details>
  );
}

function Remarks({ remarks }: { readonly remarks: readonly string[] }) {
  return remarks.map((remark) => (
    <p key={remark} className="remark">
      <Figures text={remark} />
    </p>
  ));
}

function Cautions({ ids }: { readonly ids: readonly CautionId[] }) {
  return (
    <ul className="cautions" aria-label="Cautions">
      {ids.map((id) => (
        <li key={id}>
          <span className="caution-sign" aria-hidden="true">
            !
          </span>
          <span>
            <b className="unseen">Caution. </b>
            {cautionWords[id]}
          </span>
        </li>
      ))}
    </ul>
  );
}

function NotNeeded({ answered: { answer, setup } }: { readonly answered: Answered }) {
  const { system } = usePreferences();
  const findings = answer.findings.filter(({ status }) => status === 'notNeeded');
  return (
    <details className="aside">
      <summary>{findings.length} checks not needed here</summary>
      <ul className="plain-list">
        {findings.map((finding) => (
          <li key={finding.id}>
            <b>{titleOf(finding)}.</b> <Figures text={sentenceOf(finding, setup, system)} />
          </li>
        ))}
      </ul>
    </details>
  );
}
