import { linkOf, type Printed } from '@hitchwright/core/exchange';
import {
  chosenIn,
  editedByHand,
  withChosen,
  withOneLess,
  withOneMore,
  type CureRecord,
  type Edit,
  type SetupDocument,
} from '@hitchwright/core/records';
import { useEffect, useRef, useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { usePreferences } from '../../app/preferences.ts';
import type { Choice, Picked } from '../question/choices.ts';
import { isWhole, withMachine } from '../question/question.ts';
import { QuestionSentence } from '../question/QuestionSentence.tsx';
import type { Machine } from '../yard/sampleYard.ts';
import { CheckActions, PhoneBar } from './CheckActions.tsx';
import type { LookedAt } from './CureList.tsx';
import { EmptyCheck } from './EmptyCheck.tsx';
import { Sheet, type SidePanel } from './Sheet.tsx';
import { inUnits } from './inUnits.ts';
import { rememberPicks } from './rememberedPicks.ts';
import { usePicked, type YardQuestion } from './usePicked.ts';

interface CheckPageProps {
  readonly opened: SetupDocument | null;
  /** What the sheet said that led here. */
  readonly printed: Printed | null;
}

/** The check: a question, its answer, and everything that can be changed about it. */
export function CheckPage({ opened, printed }: CheckPageProps) {
  const [document, setDocument] = useState(opened);
  const [lookedAt, setLookedAt] = useState<LookedAt | null>(null);
  const [panel, setPanel] = useState<SidePanel>({ shows: 'notes' });
  const { system } = usePreferences();
  const yardPicks = usePicked(opened !== null);
  const step = useFragment(document, yardPicks.asked);
  const change = (next: SetupDocument | null, other: LookedAt | null = null): void => {
    setDocument(next);
    setLookedAt(other);
  };
  const choose = (machine: Machine, choice: Choice, picked: Picked | null): void => {
    step();
    change(withMachine(document, machine, choice.record, picked?.beside));
    yardPicks.pick(machine, choice.record === null ? undefined : picked);
    if (choice.typed === true) setPanel({ shows: 'dimensions', machine });
  };
  const edited = (edits: readonly Edit[]): SetupDocument => {
    yardPicks.changedByHand();
    return editedByHand(inUnits(document ?? {}, system), edits);
  };
  const chosen = document === null ? [] : chosenIn(document);
  const countOn = (cures: readonly CureRecord[]): void => {
    step();
    change(withChosen(document ?? {}, cures));
  };
  const whole = isWhole(document) ? document : null;
  return (
    <>
      <Header actions={<CheckActions document={whole} asked={whole === null ? null : yardPicks.asked} />}>
        <QuestionSentence document={document} onChoose={choose} />
      </Header>
      <main>
        {whole === null ? (
          <EmptyCheck document={document} panel={panel} onEdit={(edits) => change(edited(edits))} />
        ) : (
          <Sheet
            document={whole}
            printed={document === opened ? printed : null}
            panel={panel}
            onPanel={setPanel}
            onEdit={(edits) => change(edited(edits))}
            counted={{
              chosen,
              onCountOn: (cure) => countOn(withOneMore(chosen, cure)),
              onLeaveOff: (cure) => countOn(withOneLess(chosen, cure)),
              lookedAt,
              onLookAt: (text, edits) => change(edited(edits), document === null ? null : { text, before: document }),
              onBack: () => change(lookedAt?.before ?? document),
            }}
          />
        )}
      </main>
      {whole === null ? null : <PhoneBar panel={panel} onPanel={setPanel} />}
    </>
  );
}

/**
 * The setup travels in the address; it is written there when the typing pauses.
 *
 * @returns says that what comes next is a step of its own, which the way back leads to
 */
function useFragment(document: SetupDocument | null, asked: YardQuestion | null): () => void {
  const isStep = useRef(false);
  useEffect(() => {
    if (document === null) return undefined;
    const timer = setTimeout(() => {
      const hash = `#${linkOf(document)}`;
      const isNew = !location.hash.startsWith(hash);
      if (isNew && isStep.current) history.pushState(null, '', hash);
      else if (isNew) history.replaceState(null, '', hash);
      isStep.current = false;
      rememberPicks(location.hash, asked);
    }, 250);
    return () => clearTimeout(timer);
  }, [document, asked]);
  return () => {
    isStep.current = true;
  };
}
