import { topicOf } from '@hitchwright/core/findings';
import { useState } from 'react';
import type { Answered } from '../check/useAssessment.ts';
import type { View } from '../check/ViewSwitch.tsx';
import { openingStation } from './heights.ts';
import { openPlace, type LiftPlace } from './place.ts';

/** The view that is looked at, and where the lift stands in it and in what is written beside it. */
export interface ShownLift {
  readonly view: View;
  readonly place: LiftPlace;
  /** The same place where a slider is in sight that moves it; else null. */
  readonly follows: LiftPlace | null;
  readonly show: (view: View) => void;
}

interface Opened {
  readonly view: View;
  readonly place: LiftPlace;
  /** The lift can be drawn, so that it has a slider. */
  readonly isDrawn: boolean;
}

/** Opens the view that shows why, with the lift at the height that the verdict turns on; from then on hands move both. */
export function useShownLift(answered: Answered | null): ShownLift | null {
  const [opened, setOpened] = useState<Opened | null>(null);
  const next = answered === null ? opened : openedFor(answered, opened);
  if (next !== opened) setOpened(next);
  if (answered === null || next === null) return null;
  const { view, place, isDrawn } = next;
  return {
    view,
    place,
    follows: isDrawn && view === 'side' ? place : null,
    show: (chosen) => {
      if (chosen === 'side' && view !== 'side') place.set(openingAt(answered));
      setOpened({ ...next, view: chosen });
    },
  };
}

function openedFor(answered: Answered, before: Opened | null): Opened {
  const isDrawn = answered.answer.sweep !== null;
  if (before?.isDrawn === isDrawn) return before;
  return { view: before?.view ?? openingView(answered), place: openPlace(openingAt(answered)), isDrawn };
}

/** The picture that shows why comes first: drive and axle loads are seen from the side. */
function openingView({ answer: { lead, sweep } }: Answered): View {
  const isSeenFromSide = lead !== null && ['runs', 'staysUpright'].includes(topicOf(lead.id));
  return isSeenFromSide && sweep !== null ? 'side' : 'rear';
}

function openingAt({ answer }: Answered): number {
  return answer.sweep === null ? 0 : openingStation(answer, answer.sweep);
}
