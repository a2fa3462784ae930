import type { Alternative, Cure } from '@hitchwright/core/assess';
import type { CureRecord, Edit, SetupDocument } from '@hitchwright/core/records';
import { alternativeText, cureText, setPriceText } from '@hitchwright/core/words';
import { useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { nameOf } from '../yard/sampleYard.ts';
import type { Drawings } from './assessor.ts';
import { ShaftDrawing } from '../shaft/ShaftDrawing.tsx';
import type { Answered } from './useAssessment.ts';

/** Another way to hook up that is looked at, and the setup before it. */
export interface LookedAt {
  readonly text: string;
  readonly before: SetupDocument;
}

/** What the answer counts on, and what can be done about it. */
export interface Counted {
  readonly chosen: readonly CureRecord[];
  readonly onCountOn: (cure: CureRecord) => void;
  readonly onLeaveOff: (cure: CureRecord) => void;
  readonly lookedAt: LookedAt | null;
  readonly onLookAt: (text: string, edits: readonly Edit[]) => void;
  readonly onBack: () => void;
}

interface CureListProps {
  readonly answered: Answered;
  readonly counted: Counted;
  /** Couplers at hand, which were tried as well. */
  readonly couplers: readonly SetupDocument[];
}

/** The parts list under the drawing: what cures it, and other ways to hook up. */
export function CureList({ answered: { answer, drawings }, counted, couplers }: CureListProps) {
  const { system } = usePreferences();
  const { cures, perhaps } = answer;
  const ways = openWays(answer.alternatives);
  const { chosen, lookedAt } = counted;
  const [opened] = useState(chosen);
  if (cures.length + ways.length + chosen.length === 0 && perhaps === null && lookedAt === null) return null;
  return (
    <section className="cures" aria-labelledby="cures-title">
      <h2 id="cures-title" className="unseen" tabIndex={-1}>
        Cures
      </h2>
      {lookedAt === null ? null : <DoneCell kind="Looked at" text={lookedAt.text} isNew onUndo={counted.onBack} />}
      {chosen.map((cure) => (
        <DoneCell
          key={JSON.stringify(cure.edits)}
          kind="Shown with, and counted on"
          text={cureText(cure, system)}
          isNew={!opened.includes(cure)}
          onUndo={() => counted.onLeaveOff(cure)}
        />
      ))}
      {cures.map((cure, i) => (
        <CureCell
          key={`${cure.kind} ${cure.part} ${cure.on} ${i}`}
          cure={cure}
          number={i + 1}
          picture={cure.kind === 'cutShaft' ? (drawings?.cut ?? null) : null}
          counted={counted}
        />
      ))}
      <SetNote answer={answer} />
      {ways.map((alternative) => (
        <AlternativeCell
          key={`${alternative.kind} ${alternative.coupler}`}
          alternative={alternative}
          record={couplers.find((one) => nameOf(one, '') === alternative.coupler)}
          counted={counted}
        />
      ))}
    </section>
  );
}

interface DoneCellProps {
  readonly kind: string;
  readonly text: string;
  /** Done just now: the way back is where the hand is. */
  readonly isNew: boolean;
  readonly onUndo: () => void;
}

/** What was done to the setup, with the way back. */
function DoneCell({ kind, text, isNew, onUndo }: DoneCellProps) {
  const undo = (): void => {
    document.getElementById('cures-title')?.focus();
    onUndo();
  };
  return (
    <div className="cure cure-applied">
      <p className="cure-kind">{kind}</p>
      <p>
        <Figures text={text} />
      </p>
      <button autoFocus={isNew} type="button" onClick={undo}>
        Undo<span className="unseen">: {text}</span>
      </button>
    </div>
  );
}

/** A cure as a setup keeps it. */
function recordOf({ kind, part, price, count, amount, edits, returnable, altersMachine, on }: Cure): CureRecord {
  return { kind, part, price, count, amount, edits, returnable, altersMachine, on };
}

/** What is counted on costs, whether a smaller one may have been missed, and what may cure it once more is known. */
function SetNote({ answer: { cures, everySetTried, perhaps } }: { readonly answer: Answered['answer'] }) {
  const { system } = usePreferences();
  const price = setPriceText(cures);
  const may =
    perhaps === null
      ? null
      : `May cure it, once more is known: ${perhaps.cures.map((cure) => cureText(cure, system)).join(' ')}`;
  const untried = everySetTried ? null : 'Not every combination of what is on the list was tried.';
  const said = [price, may, untried].filter((text) => text !== null);
  return said.length === 0 ? null : (
    <p className="cure-set">
      <Figures text={said.join(' ')} />
    </p>
  );
}

const ranks: readonly Alternative['outcome'][] = ['works', 'withParts', 'measureFirst'];

/** Ways that hook up stand before those that are open; what won’t do is no way. */
function openWays(alternatives: readonly Alternative[]): Alternative[] {
  return ranks.flatMap((rank) => alternatives.filter(({ outcome }) => outcome === rank));
}

interface CureCellProps {
  readonly counted: Counted;
  readonly cure: Cure;
  readonly number: number;
  /** Drawn where something is to be cut. */
  readonly picture: Drawings['cut'];
}

function CureCell({ counted, cure, number, picture }: CureCellProps) {
  const { system } = usePreferences();
  const text = cureText(cure, system);
  return (
    <div className={picture === null ? 'cure' : 'cure cure-drawn'}>
      <p className="cure-kind">
        Cure {number}
        <span>{cure.inSmallestSet ? 'counted on' : ''}</span>
      </p>
      <p className="cure-what">
        <Figures text={text} />
      </p>
      {cure.altersMachine ? <p>It changes the machine itself. We give no opinion on its strength.</p> : null}
      {picture === null ? null : <ShaftDrawing pictures={picture} />}
      <button type="button" onClick={() => counted.onCountOn(recordOf(cure))}>
        Apply this cure<span className="unseen">: {text}</span>
      </button>
    </div>
  );
}

interface AlternativeCellProps {
  readonly counted: Counted;
  /** The other coupler; undefined where it is left off. */
  readonly record: SetupDocument | undefined;
  readonly alternative: Alternative;
}

function AlternativeCell({ alternative, record, counted }: AlternativeCellProps) {
  const { system } = usePreferences();
  const text = alternativeText(alternative, system);
  return (
    <div className="cure">
      <p className="cure-kind">Another way</p>
      <p className="cure-what">
        <Figures text={text} />
      </p>
      <button type="button" onClick={() => counted.onLookAt(text, [{ path: 'coupler', value: record }])}>
        Look at it<span className="unseen">: {text}</span>
      </button>
    </div>
  );
}
