import { withEdits, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { useMemo } from 'react';
import { Header } from '../../app/Header.tsx';
import { DoneScreen } from './DoneScreen.tsx';
import { FigureScreen } from './FigureScreen.tsx';
import { KeepingNote } from './KeepingNote.tsx';
import { MeasureHead } from './MeasureHead.tsx';
import { SafetyScreen } from './SafetyScreen.tsx';
import { currentStep, isBegun } from './currentStep.ts';
import { editsOf, type Entries, type Session } from './session.ts';
import { stepsOf, type Step } from './steps.ts';
import { useAdvice, type Following } from './useAdvice.ts';
import { useSession, type SessionDesk } from './useSession.ts';
import './measure.css';

/** One measuring: what has to be safe first, then one figure per screen, then what it came to. */
export function MeasurePage({ id }: { readonly id: string }) {
  const desk = useSession(id);
  if (desk === null) return <Plain words="Opening the measuring…" />;
  if (desk === undefined)
    return <Plain words="This measuring is not on this device. Open the link again that it came with." />;
  return desk.session.isReady ? <Measuring desk={desk} /> : <SafetyScreen desk={desk} />;
}

function Plain({ words }: { readonly words: string }) {
  return (
    <>
      <Header>
        <h1 className="measure-title">Measure</h1>
      </Header>
      <main>
        <p className="waiting">{words}</p>
      </main>
    </>
  );
}

function Measuring({ desk }: { readonly desk: SessionDesk }) {
  const { session, entries } = desk;
  const document = useDocument(session, entries);
  const following = useAdvice(document);
  const { advised } = following;
  const steps = advised === null ? [] : stepsOf(document, advised.advice, entries, session.request);
  const step = currentStep(steps, entries);
  const isStale = following.about !== document;
  return (
    <>
      <MeasureHead desk={desk} steps={steps} advised={advised} isStale={isStale} />
      <main className="measure">
        <KeepingNote desk={desk} />
        <Screen desk={desk} document={document} step={step} following={following} isStale={isStale} />
      </main>
    </>
  );
}

/** The setup with what was read; the same as long as nothing more was, whatever is half typed. */
function useDocument(session: Session, entries: Entries): SetupDocument {
  const edits = JSON.stringify(editsOf(session, entries));
  return useMemo(() => withEdits(session.setup, JSON.parse(edits) as Edit[]), [session.setup, edits]);
}

interface ScreenProps {
  readonly desk: SessionDesk;
  readonly document: SetupDocument;
  readonly step: Step | null;
  readonly following: Following;
  readonly isStale: boolean;
}

/** A figure that is half read stays; any other waits for the newest advice, so that no question changes under a hand. */
function Screen({ desk, document, step, following, isStale }: ScreenProps) {
  const isAnswered = following.reply?.kind === 'advice';
  if (step !== null && isAnswered && (!isStale || isBegun(desk.entries.get(step.path))))
    return <FigureScreen key={step.path} desk={desk} document={document} step={step} />;
  if (isStale) return <p className="waiting">Working out what comes next…</p>;
  return <DoneScreen desk={desk} document={document} following={following} />;
}
