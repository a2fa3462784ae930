import { type Edit, type SetupDocument } from '@hitchwright/core/records';
import { lazy, Suspense, useState } from 'react';
import { sampleNames } from '../question/question.ts';
import { sampleYard, type Machine } from '../yard/sampleYard.ts';
import { AnswerGrid } from './AnswerGrid.tsx';
import { CureList, type AppliedCure } from './CureList.tsx';
import { Drawing } from './Drawing.tsx';
import { ErrorList } from './ErrorList.tsx';
import { Notes } from './Notes.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { VerdictSpoken } from './VerdictSpoken.tsx';
import { useAssessment } from './useAssessment.ts';
import './sheet.css';

const DimensionsPanel = lazy(() =>
  import('../dimensions/DimensionsPanel.tsx').then(({ DimensionsPanel }) => ({ default: DimensionsPanel })),
);

/** What stands beside the drawing: the notes, or the dimensions with the field to begin with. */
export type SidePanel =
  | { readonly shows: 'notes' }
  | { readonly shows: 'dimensions'; readonly machine?: Machine; readonly field?: string };

interface SheetProps {
  readonly document: SetupDocument;
  readonly panel: SidePanel;
  readonly onPanel: (panel: SidePanel) => void;
  readonly onEdit: (edits: readonly Edit[]) => void;
  readonly onReplace: (document: SetupDocument) => void;
}

/** The drawing sheet of one check: title block, drawing, notes, cures. */
export function Sheet({ document, panel, onPanel, onEdit, onReplace }: SheetProps) {
  const { answered, reply } = useAssessment(document, couplersBeside(document));
  const [applied, setApplied] = useState<AppliedCure | null>(null);
  const errors = reply?.kind === 'errors' ? reply.errors : [];
  const isOlder = answered !== null && reply !== answered;
  const apply = (text: string, edits: readonly Edit[]): void => {
    setApplied({ text, before: document });
    onEdit(edits);
  };
  const undo = (): void => {
    if (applied !== null) onReplace(applied.before);
    setApplied(null);
  };
  const measure = (field: string): void => onPanel({ shows: 'dimensions', field });
  return (
    <div className={isOlder ? 'sheet sheet-older' : 'sheet'}>
      <TitleBlock answered={answered} reply={reply} isOlder={isOlder} sampleNames={sampleNames(document)} />
      {answered === null ? null : <AnswerGrid answer={answered.answer} />}
      <div className="sheet-left">
        {answered === null ? <NoDrawing errors={errors.length} /> : <Drawing answered={answered} />}
        {answered === null ? null : (
          <CureList answered={answered} applied={applied} onApply={apply} onUndo={undo} />
        )}
      </div>
      <div className="sheet-side" id="side">
        <SideSwitch panel={panel} onPanel={onPanel} />
        {panel.shows === 'dimensions' ? (
          <Suspense fallback={<p className="pad">Opening the dimensions…</p>}>
            <DimensionsPanel document={document} answered={answered} errors={errors} begin={panel} onEdit={onEdit} />
          </Suspense>
        ) : (
          <>
            <ErrorList errors={errors} onShow={measure} />
            {answered === null ? null : <Notes answered={answered} onMeasure={measure} />}
          </>
        )}
      </div>
      <VerdictSpoken answered={isOlder ? null : answered} />
    </div>
  );
}

/** Other couplers that can be tried: those of the sample yard, where the question is about it. */
function couplersBeside(document: SetupDocument): readonly SetupDocument[] {
  return sampleNames(document).length === 0 ? noCouplers : sampleYard.couplers;
}

const noCouplers: readonly SetupDocument[] = [];

function NoDrawing({ errors }: { readonly errors: number }) {
  return (
    <section className="drawing drawing-none" aria-label="Drawing">
      <p>{errors === 0 ? 'Working it out…' : 'The drawing appears as soon as the figures can be read.'}</p>
    </section>
  );
}

function SideSwitch({ panel, onPanel }: Pick<SheetProps, 'panel' | 'onPanel'>) {
  const tab = (shows: SidePanel['shows'], words: string) => (
    <button type="button" className="side-tab" aria-pressed={panel.shows === shows} onClick={() => onPanel({ shows })}>
      {words}
    </button>
  );
  return (
    <div className="side-switch" role="group" aria-label="Beside the drawing">
      {tab('notes', 'Notes')}
      {tab('dimensions', 'Dimensions')}
    </div>
  );
}
