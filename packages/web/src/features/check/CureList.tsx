import type { Alternative, Cure } from '@hitchwright/core/assess';
import type { Edit, SetupDocument } from '@hitchwright/core/records';
import { alternativeText, cureText, setPriceText } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { recordNamed } from '../yard/sampleYard.ts';
import type { Drawings } from './assessor.ts';
import { ShaftDrawing } from '../shaft/ShaftDrawing.tsx';
import type { Answered } from './useAssessment.ts';

/** What was applied last, and the setup before it. */
export interface AppliedCure {
  readonly text: string;
  readonly before: SetupDocument;
}

export interface CureListProps {
  readonly answered: Answered;
  readonly applied: AppliedCure | null;
  readonly onApply: (text: string, edits: readonly Edit[]) => void;
  readonly onUndo: () => void;
}

/** The parts list under the drawing: what cures it, and other ways to hook up. */
export function CureList({ answered: { answer, drawings }, applied, onApply, onUndo }: CureListProps) {
  const { cures, alternatives, perhaps } = answer;
  if (cures.length === 0 && alternatives.length === 0 && perhaps === null && applied === null) return null;
  return (
    <section className="cures" aria-labelledby="cures-title">
      <h2 id="cures-title" className="unseen" tabIndex={-1}>
        Cures
      </h2>
      {applied === null ? null : (
        <div className="cure cure-applied">
          <p className="cure-kind">Applied to this setup</p>
          <p>
            <Figures text={applied.text} />
          </p>
          <button
            autoFocus
            type="button"
            onClick={() => {
              document.getElementById('cures-title')?.focus();
              onUndo();
            }}
          >
            Undo
          </button>
        </div>
      )}
      {cures.map((cure, i) => (
        <CureCell
          key={`${cure.kind} ${cure.part} ${cure.on} ${i}`}
          cure={cure}
          number={i + 1}
          picture={cure.kind === 'cutShaft' ? (drawings?.cut ?? null) : null}
          onApply={onApply}
        />
      ))}
      <SetNote answer={answer} />
      {inOrder(alternatives).map((alternative) => (
        <AlternativeCell
          key={`${alternative.kind} ${alternative.coupler}`}
          alternative={alternative}
          onApply={onApply}
        />
      ))}
    </section>
  );
}

/** What the smallest set costs, whether a smaller one may have been missed, and what may cure it once more is known. */
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

const ranks: readonly Alternative['outcome'][] = [
  'works',
  'withParts',
  'measureFirst',
  'willNot',
  'notChecked',
  'notNeeded',
];

/** Ways that hook up stand before those that don't. */
function inOrder(alternatives: readonly Alternative[]): Alternative[] {
  return [...alternatives].sort((a, b) => ranks.indexOf(a.outcome) - ranks.indexOf(b.outcome));
}

interface Apply {
  readonly onApply: CureListProps['onApply'];
}

interface CureCellProps extends Apply {
  readonly cure: Cure;
  readonly number: number;
  /** Drawn where something is to be cut. */
  readonly picture: Drawings['cut'];
}

function CureCell({ cure, number, picture, onApply }: CureCellProps) {
  const { system } = usePreferences();
  const text = cureText(cure, system);
  return (
    <div className={picture === null ? 'cure' : 'cure cure-drawn'}>
      <p className="cure-kind">
        Cure {number}
        <span>{cure.inSmallestSet ? 'in the smallest set' : ''}</span>
      </p>
      <p className="cure-what">
        <Figures text={text} />
      </p>
      {cure.altersMachine ? <p>It changes the machine itself. We give no opinion on its strength.</p> : null}
      {picture === null ? null : <ShaftDrawing pictures={picture} />}
      <button type="button" onClick={() => onApply(text, cure.edits)}>
        Apply this cure<span className="unseen">: {text}</span>
      </button>
    </div>
  );
}

function AlternativeCell({ alternative, onApply }: Apply & { readonly alternative: Alternative }) {
  const { system } = usePreferences();
  const text = alternativeText(alternative, system);
  const { coupler } = alternative;
  const value = coupler === null ? undefined : (recordNamed('coupler', coupler) ?? undefined);
  return (
    <div className="cure">
      <p className="cure-kind">Another way</p>
      <p className="cure-what">
        <Figures text={text} />
      </p>
      <button type="button" onClick={() => onApply(text, [{ path: 'coupler', value }])}>
        Look at it<span className="unseen">: {text}</span>
      </button>
    </div>
  );
}
