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
  /** A person chose the view, which then stays. */
  readonly isChosen: boolean;
  readonly place: LiftPlace;
  /** The lift can be drawn, so that it has a slider. */
  readonly isDrawn: boolean;
}

/** Opens the view that shows why, with the lift at the height that the verdict turns on; from then on hands move both, and the view follows the verdict until one is chosen. */
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
      setOpened({ ...next, view: chosen, isChosen: true });
    },
  };
}

function openedFor(answered: Answered, before: Opened | null): Opened {
  const isDrawn = answered.answer.sweep !== null;
  const isChosen = before?.isChosen === true;
  const view = (isChosen ? null : viewOfLead(answered)) ?? before?.view ?? 'rear';
  if (before?.isDrawn === isDrawn && before.view === view) return before;
  return { view, isChosen, place: openPlace(openingAt(answered)), isDrawn };
}

/** The picture that shows why: pins and hooks are seen from behind, the lift, the drive and the axle loads from the side; null where nothing is amiss. */
function viewOfLead({ answer: { lead, sweep }, drawings }: Answered): View | null {
  if (lead === null) return null;
  if (/^(?:mounting$|front|rear|limit)/.test(lead.id)) return 'rear';
  const hasShaftAlone = topicOf(lead.id) === 'runs' && drawings?.shaft != null && drawings.cut === null;
  return sweep !== null || hasShaftAlone ? 'side' : 'rear';
}

function openingAt({ answer }: Answered): number {
  return answer.sweep === null ? 0 : openingStation(answer, answer.sweep);
}
