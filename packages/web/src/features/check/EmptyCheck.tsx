import { linkOf } from '@hitchwright/core/exchange';
import { setupFrom, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { Figures } from '../../marks/Figures.tsx';
import { recordAt } from '../question/question.ts';
import { exampleNames, nameOf, recordNamed, sampleYard } from '../yard/sampleYard.ts';
import { AnswerGrid } from './AnswerGrid.tsx';
import { BegunCheck, isBegun } from './BegunCheck.tsx';
import { Drawing } from './Drawing.tsx';
import { OpenSetupFile } from './OpenSetupFile.tsx';
import type { SidePanel } from './Sheet.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { useAssessment } from './useAssessment.ts';
import './sheet.css';

interface EmptyCheckProps {
  readonly document: SetupDocument | null;
  readonly panel: SidePanel;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** The page before there is a whole question: what to do, with a worked example until anything is picked. */
export function EmptyCheck({ document, panel, onEdit }: EmptyCheckProps) {
  if (isBegun(document)) return <BegunCheck document={document} panel={panel} onEdit={onEdit} />;
  return (
    <>
      <p className="invitation">
        Pick the underlined words: the implement, the tractor, and the coupler if there is one. A category is enough to
        begin.
      </p>
      <OpenSetupFile />
      {example === null ? null : <WorkedExample example={example} />}
    </>
  );
}

const example = exampleFrom();

/** The setup of the worked example; null in a yard that lacks one of its machines. */
function exampleFrom(): SetupDocument | null {
  const tractor = recordNamed('tractor', exampleNames.tractor);
  const coupler = recordNamed('coupler', exampleNames.coupler);
  const implement = recordNamed('implement', exampleNames.implement);
  return tractor === null || implement === null ? null : setupFrom(sampleYard, tractor, coupler, implement);
}

const none: readonly SetupDocument[] = [];

function WorkedExample({ example }: { readonly example: SetupDocument }) {
  const { answered, reply } = useAssessment(example, none);
  const name = (machine: 'implement' | 'tractor' | 'coupler'): string => nameOf(recordAt(example, machine), machine);
  const question = `Will the ${name('implement')} go on the ${name('tractor')} with the ${name('coupler')}?`;
  return (
    <section className="example" aria-labelledby="example-title">
      <div className="example-head">
        <h2 id="example-title">
          <span className="stamp">Example</span> <Figures text={question} />
        </h2>
        <a className="button" href={`#${linkOf(example)}`}>
          Open the example
        </a>
      </div>
      <div className="sheet sheet-example">
        <TitleBlock answered={answered} chosen={[]} reply={reply} printed={null} isOlder={false} />
        {answered === null ? null : <AnswerGrid answer={answered.answer} />}
        <div className="sheet-left">{answered === null ? null : <Drawing answered={answered} />}</div>
        <div className="sheet-side pad">
          <p>
            The machines are invented. The drawing shows where the pin sits and where the hook reaches; the notes behind
            it name every figure that was used and where it came from.
          </p>
        </div>
      </div>
    </section>
  );
}
