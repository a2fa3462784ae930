import type { Doubt } from '@hitchwright/core/readings';
import { doubtText, fieldOf } from '@hitchwright/core/words';
import { fieldRules } from '@hitchwright/core/records';
import { printQuantity } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { FigureProps } from './FigureScreen.tsx';
import { ReadSoFar } from './ReadSoFar.tsx';
import { ScreenBar } from './ScreenBar.tsx';
import { ScreenHead } from './ScreenHead.tsx';
import type { Entry } from './session.ts';

interface DoubtScreenProps extends FigureProps {
  readonly entry: Entry;
  readonly doubt: Doubt;
}

/** Doubts about what was typed, not where: what was meant can be taken over as it stands. */
const ofTyping: readonly Doubt['kind'][] = ['decimal', 'unit'];

/** Something looks wrong with what was read: it is so, it was meant otherwise, or it is read again. */
export function DoubtScreen({ desk, document, step, entry, doubt }: DoubtScreenProps) {
  const { path } = step;
  const { system } = usePreferences();
  const before = entry.typed.slice(0, -1);
  const meant = 'meant' in doubt && ofTyping.includes(doubt.kind) ? doubt.meant : null;
  const dimension = fieldRules.get(fieldOf(path))?.dimension ?? 'length';
  const meantText = meant === null ? '' : printQuantity(meant, dimension, { system, step: system === 'us' ? 32 : 0.1 });
  return (
    <section className="measure-sheet" aria-labelledby="figure-title">
      <ScreenHead document={document} step={step} />
      <ReadSoFar entry={entry} />
      <p className="doubt" role="alert">
        <Figures text={doubtText(doubt, path, system)} />
      </p>
      {meant === null ? null : (
        <button
          type="button"
          className="big-choice"
          onClick={() => desk.enter(path, { typed: [...before, { text: meantText, value: meant }] })}
        >
          Yes: <Figures text={meantText} />
        </button>
      )}
      <button
        type="button"
        className="big-choice"
        onClick={() => desk.enter(path, { sure: [...entry.sure, doubt.kind] })}
      >
        It is as I typed it
      </button>
      <ScreenBar>
        <button
          type="button"
          className="button-solid"
          onClick={() => desk.enter(path, { typed: before, way: null, draft: '' })}
        >
          Read it again
        </button>
      </ScreenBar>
    </section>
  );
}
