import { fieldOfPart } from '@hitchwright/core/readings';
import type { SetupDocument } from '@hitchwright/core/records';
import { ChoiceScreen } from './ChoiceScreen.tsx';
import { DoubtScreen } from './DoubtScreen.tsx';
import { NumberScreen } from './NumberScreen.tsx';
import { RefusedScreen } from './RefusedScreen.tsx';
import { blankEntry, standsAslant } from './session.ts';
import { choiceAt, phaseOf, type Step } from './steps.ts';
import type { SessionDesk } from './useSession.ts';
import { WayScreen } from './WayScreen.tsx';

export interface FigureProps {
  readonly desk: SessionDesk;
  readonly document: SetupDocument;
  readonly step: Step;
}

/** One figure: what its screen shows follows from what was typed so far. */
export function FigureScreen({ desk, document, step }: FigureProps) {
  const entry = desk.entries.get(step.path) ?? blankEntry(step.path);
  const choice = choiceAt(fieldOfPart(step.path));
  const props = { desk, document, step, entry };
  if (choice !== null) return <ChoiceScreen {...props} choice={choice} />;
  const phase = phaseOf(document, entry, standsAslant(desk.session));
  if (phase.kind === 'way') return <WayScreen {...props} question={phase.question} />;
  if (phase.kind === 'refused') return <RefusedScreen {...props} refused={phase} />;
  if (phase.kind === 'doubt') return <DoubtScreen {...props} doubt={phase.doubt} />;
  return <NumberScreen {...props} phase={phase} />;
}
