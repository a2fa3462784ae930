import { withEdits, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { fieldOfPart } from '@hitchwright/core/readings';
import { useMemo } from 'react';
import { Header } from '../../app/Header.tsx';
import { DoneScreen } from './DoneScreen.tsx';
import { FigureScreen } from './FigureScreen.tsx';
import { KeepingNote } from './KeepingNote.tsx';
import { ListScreen } from './ListScreen.tsx';
import { MeasureHead } from './MeasureHead.tsx';
import { SafetyScreen } from './SafetyScreen.tsx';
import { currentStep, isBegun } from './currentStep.ts';
import { editsOf, type Entries, type Session } from './session.ts';
import { stepAt, stepsOf, type Step } from './steps.ts';
import { useAdvice, type Following } from './useAdvice.ts';
import { figureAt, passFigure, usePlace, type Place } from './usePlace.ts';
import { useSession, type SessionDesk } from './useSession.ts';
import './measure.css';

/** One measuring: what has to be safe first, then one figure per screen, then what it came to. */
export function MeasurePage({ id }: { readonly id: string }) {
  const desk = useSession(id);
  const place = usePlace();
  if (desk === null) return <Plain words="Opening the measuring…" />;
  if (desk === undefined)
    return <Plain words="This measuring is not on this device. Open the link again that it came with." />;
  if (!desk.session.isReady || place === 'safety') return <SafetyScreen desk={desk} />;
  return <Measuring desk={desk} place={place} />;
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

interface MeasuringProps {
  readonly desk: SessionDesk;
  readonly place: Place;
}

function Measuring({ desk, place }: MeasuringProps) {
  const { session, entries } = desk;
  const opened = figureAt(place);
  const document = useDocument(session, entries, null);
  const following = useAdvice(document);
  const { advised } = following;
  const steps = advised === null ? [] : stepsOf(document, advised.advice, entries, session.request);
  const step = opened === null ? currentStep(steps, entries) : stepAt(opened, steps);
  const isStale = following.about !== document;
  return (
    <>
      <MeasureHead desk={desk} place={place} steps={steps} step={step} advised={advised} isStale={isStale} />
      <main className="measure">
        <KeepingNote desk={desk} />
        <Screen {...{ desk, place, document, steps, step, following, isStale }} />
      </main>
    </>
  );
}

/**
 * The setup with what was read, but for the field of a figure that is opened; the same as long as nothing more was, whatever is
 * half typed.
 */
function useDocument(session: Session, entries: Entries, opened: string | null): SetupDocument {
  const others = [...entries].filter(([path]) => opened === null || fieldOfPart(path) !== fieldOfPart(opened));
  const edits = JSON.stringify(editsOf(session, new Map(others)));
  return useMemo(() => withEdits(session.setup, JSON.parse(edits) as Edit[]), [session.setup, edits]);
}

interface ScreenProps extends MeasuringProps {
  readonly document: SetupDocument;
  readonly steps: readonly Step[];
  readonly step: Step | null;
  readonly following: Following;
  readonly isStale: boolean;
}

/**
 * A figure that was opened or is half read stays; any other waits for the newest advice, so that no question changes under a
 * hand.
 */
function Screen({ desk, place, document, steps, step, following, isStale }: ScreenProps) {
  if (place === 'list') return <ListScreen desk={desk} steps={steps} />;
  if (place === 'send') return <DoneScreen desk={desk} document={document} following={following} steps={steps} />;
  if (step !== null && figureAt(place) !== null) return <OpenedFigure key={step.path} desk={desk} step={step} />;
  const isAnswered = following.reply?.kind === 'advice';
  if (step !== null && isAnswered && (!isStale || isBegun(desk.entries.get(step.path))))
    return <FigureScreen key={step.path} desk={walking(desk, step)} document={document} step={step} />;
  if (isStale) return <p className="waiting">Working out what comes next…</p>;
  return <DoneScreen desk={desk} document={document} following={following} steps={steps} />;
}

/** A figure that was gone back to, or chosen from the list: as it was read, to be kept or read again. */
function OpenedFigure({ desk, step }: { readonly desk: SessionDesk; readonly step: Step }) {
  const document = useDocument(desk.session, desk.entries, step.path);
  return <FigureScreen desk={walking(desk, step)} document={document} step={step} />;
}

/** The desk of one figure’s screen: once that is finished, it goes on to the next. */
function walking(desk: SessionDesk, step: Step): SessionDesk {
  return {
    ...desk,
    enter: (path, part) => {
      desk.enter(path, part);
      if (path === step.path && (part.state === 'done' || part.state === 'skipped')) passFigure(path);
    },
  };
}
