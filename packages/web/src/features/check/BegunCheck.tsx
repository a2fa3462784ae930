import type { Edit, SetupDocument } from '@hitchwright/core/records';
import { useState } from 'react';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { recordAt } from '../question/question.ts';
import type { Machine } from '../yard/sampleYard.ts';
import { BlankDrawing } from './BlankDrawing.tsx';
import type { SidePanel } from './Sheet.tsx';
import { SideDimensions } from './SideDimensions.tsx';
import './sheet.css';

interface BegunCheckProps {
  readonly document: SetupDocument;
  readonly panel: SidePanel;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

const machines: readonly Machine[] = ['implement', 'tractor', 'coupler'];

/** A question of which a machine is still to be picked: what is missing, and the dimensions of what is there. */
export function BegunCheck({ document, panel, onEdit }: BegunCheckProps) {
  const there = machines.filter((machine) => recordAt(document, machine) !== null);
  const missing = machines.filter((machine) => machine !== 'coupler' && !there.includes(machine)).join(' and the ');
  const [first] = useState(() => ({ shows: 'dimensions', machine: there[0] ?? 'implement' }) as const);
  return (
    <div className="sheet sheet-begun">
      <section className="title-block" aria-label="What is missing">
        <h2 className="verdict">
          <VerdictMark outcome="notChecked" />
          <span className="verdict-words">Now pick the {missing}</span>
        </h2>
        <p className="begun-how">A category is enough to begin. The drawing and the answer come with it.</p>
      </section>
      <div className="sheet-left">
        <div className="drawing drawing-none">
          <BlankDrawing />
        </div>
      </div>
      <div className="sheet-side">
        <SideDimensions
          document={document}
          answered={null}
          errors={noErrors}
          begin={panel.shows === 'dimensions' ? panel : first}
          onEdit={onEdit}
        />
      </div>
    </div>
  );
}

const noErrors = [] as const;

/** Whether any machine of a question is there. */
export function isBegun(document: SetupDocument | null): document is SetupDocument {
  return machines.some((machine) => recordAt(document, machine) !== null);
}
