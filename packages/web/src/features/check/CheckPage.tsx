import { linkOf, type Printed } from '@hitchwright/core/exchange';
import { withEdits, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { usePreferences } from '../../app/preferences.ts';
import type { Choice, Picked } from '../question/choices.ts';
import { isWhole, withMachine } from '../question/question.ts';
import { QuestionSentence } from '../question/QuestionSentence.tsx';
import type { Machine } from '../yard/sampleYard.ts';
import { CheckActions, PhoneBar } from './CheckActions.tsx';
import type { AppliedCure } from './CureList.tsx';
import { EmptyCheck } from './EmptyCheck.tsx';
import { Sheet, type SidePanel } from './Sheet.tsx';
import { inUnits } from './inUnits.ts';
import { usePicked } from './usePicked.ts';

interface CheckPageProps {
  readonly opened: SetupDocument | null;
  /** What the sheet said that led here. */
  readonly printed: Printed | null;
}

/** The check: a question, its answer, and everything that can be changed about it. */
export function CheckPage({ opened, printed }: CheckPageProps) {
  const [document, setDocument] = useState(opened);
  const [applied, setApplied] = useState<AppliedCure | null>(null);
  const [panel, setPanel] = useState<SidePanel>({ shows: 'notes' });
  const { system } = usePreferences();
  const yardPicks = usePicked(opened !== null);
  useFragment(document);
  const change = (next: SetupDocument | null, cure: AppliedCure | null = null): void => {
    setDocument(next);
    setApplied(cure);
  };
  const choose = (machine: Machine, choice: Choice, picked: Picked | null): void => {
    change(withMachine(document, machine, choice.record, picked?.beside));
    yardPicks.pick(machine, choice.record === null ? undefined : picked);
    if (choice.typed === true) setPanel({ shows: 'dimensions', machine });
  };
  const edited = (edits: readonly Edit[]): SetupDocument => {
    yardPicks.changedByHand();
    return withEdits(inUnits(document ?? {}, system), edits);
  };
  const whole = isWhole(document) ? document : null;
  return (
    <>
      <Header actions={<CheckActions document={whole} asked={whole === null ? null : yardPicks.asked} />}>
        <QuestionSentence document={document} onChoose={choose} />
      </Header>
      <main>
        {whole === null ? (
          <EmptyCheck document={document} />
        ) : (
          <Sheet
            document={whole}
            printed={document === opened ? printed : null}
            panel={panel}
            onPanel={setPanel}
            applied={applied}
            onEdit={(edits) => change(edited(edits))}
            onApply={(text, edits) => change(edited(edits), document === null ? null : { text, before: document })}
            onUndo={() => change(applied?.before ?? document)}
          />
        )}
      </main>
      {whole === null ? null : <PhoneBar panel={panel} onPanel={setPanel} />}
    </>
  );
}

/** The setup travels in the address; it is written there when the typing pauses. */
function useFragment(document: SetupDocument | null): void {
  useEffect(() => {
    if (document === null) return undefined;
    const timer = setTimeout(() => {
      const hash = `#${linkOf(document)}`;
      if (!location.hash.startsWith(hash)) history.replaceState(null, '', hash);
    }, 250);
    return () => clearTimeout(timer);
  }, [document]);
}
