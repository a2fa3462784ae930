import type { Printed } from '@hitchwright/core/exchange';
import { withChosenDone, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { useMemo } from 'react';
import { useMedia } from '../../app/media.ts';
import { AxleLoads } from '../balance/AxleLoads.tsx';
import { SteeringRules } from '../balance/SteeringRules.tsx';
import { useShownLift } from '../lift/useShownLift.ts';
import { sampleNames } from '../question/question.ts';
import type { Machine } from '../yard/sampleYard.ts';
import { AnswerGrid } from './AnswerGrid.tsx';
import { CureList, type Counted } from './CureList.tsx';
import { DriveRules } from './DriveRules.tsx';
import { ErrorList } from './ErrorList.tsx';
import { Notes } from './Notes.tsx';
import { SideDimensions } from './SideDimensions.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { VerdictSpoken } from './VerdictSpoken.tsx';
import { Views } from './Views.tsx';
import type { Reply } from './assessor.ts';
import { countingOn } from './countingOn.ts';
import { useAssessment } from './useAssessment.ts';
import { useCouplersBeside } from './useCouplersBeside.ts';
import './sheet.css';

/** What stands beside the drawing: the notes, or the dimensions with the field to begin with. */
export type SidePanel =
  | { readonly shows: 'notes' }
  | { readonly shows: 'dimensions'; readonly machine?: Machine | 'shaft'; readonly field?: string };

interface SheetProps {
  readonly document: SetupDocument;
  /** What the sheet said that led here, as long as nothing was changed. */
  readonly printed: Printed | null;
  readonly panel: SidePanel;
  readonly onPanel: (panel: SidePanel) => void;
  readonly onEdit: (edits: readonly Edit[]) => void;
  readonly counted: Counted;
}

/** The drawing sheet of one check: title block, drawing, notes, cures; with the cures that were chosen done. */
export function Sheet({ document, printed, panel, counted, onPanel, onEdit }: SheetProps) {
  const shown = useMemo(() => withChosenDone(document), [document]);
  const couplers = useCouplersBeside(document);
  const { answered: plain, reply } = useAssessment(shown, couplers);
  const answered = useMemo(() => plain && countingOn(plain, counted.chosen), [plain, counted.chosen]);
  const lift = useShownLift(answered);
  const isPrint = useMedia('print');
  const errors = reply?.kind === 'errors' ? reply.errors : [];
  const isOlder = plain !== null && reply !== plain;
  const measure = (field: string): void => onPanel({ shows: 'dimensions', field });
  return (
    <div className={isOlder ? 'sheet sheet-older' : 'sheet'}>
      <TitleBlock answered={answered} chosen={counted.chosen} reply={reply} printed={printed} isOlder={isOlder} />
      {answered === null ? null : <AnswerGrid answer={answered.answer} onEdit={onEdit} />}
      <div className="sheet-left">
        {answered === null || lift === null ? (
          <NoDrawing reply={reply} />
        ) : (
          <Views answered={answered} lift={lift} onMeasure={measure} />
        )}
        <SampleNote names={sampleNames(document)} />
        {answered === null ? null : (
          <>
            <CureList answered={answered} counted={counted} couplers={couplers} />
            <AxleLoads answered={answered} place={lift?.follows ?? null} onMeasure={measure} />
            <SteeringRules answer={answered.answer} onEdit={onEdit} />
            <DriveRules answer={answered.answer} onEdit={onEdit} />
          </>
        )}
      </div>
      <div className="sheet-side" id="side">
        <SideSwitch panel={panel} onPanel={onPanel} />
        {panel.shows === 'dimensions' && !isPrint ? (
          <SideDimensions document={document} answered={answered} errors={errors} begin={panel} onEdit={onEdit} />
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

function SampleNote({ names }: { readonly names: readonly string[] }) {
  if (names.length === 0) return null;
  return <p className="sample-note">Invented sample records: {names.join(', ')}.</p>;
}

const undrawn: Readonly<Record<Reply['kind'], string>> = {
  answer: '',
  errors: 'The drawing appears as soon as the figures can be read.',
  fault: 'There is no drawing without an answer.',
};

function NoDrawing({ reply }: { readonly reply: Reply | null }) {
  return (
    <section className="drawing drawing-none" aria-label="Drawing">
      <p>{reply === null ? 'Working it out…' : undrawn[reply.kind]}</p>
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
