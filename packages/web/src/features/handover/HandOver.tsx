import type { SetupDocument } from '@hitchwright/core/records';
import { atPath } from '@hitchwright/core/records';
import { useEffect, useRef } from 'react';
import { DrawingPart } from './DrawingPart.tsx';
import { ListingPart } from './ListingPart.tsx';
import { PinPlanPart } from './PinPlanPart.tsx';
import { ProblemNote } from './ProblemNote.tsx';
import { ReplyPart } from './ReplyPart.tsx';
import { SheetPart } from './SheetPart.tsx';
import { useMaker } from './useMaker.ts';
import './handover.css';

interface HandOverProps {
  readonly document: SetupDocument;
  readonly onClose: () => void;
}

/** Everything that can be made of an answer to hand over: sheet, drawings, reply, pin plan, listing. */
export function HandOver({ document, onClose }: HandOverProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const desk = useMaker(document);
  useEffect(() => dialog.current?.showModal(), []);
  const printPage = (): void => {
    dialog.current?.close();
    setTimeout(print);
  };
  const hasCoupler = typeof atPath(document, 'coupler') === 'object';
  return (
    <dialog ref={dialog} className="hand-over" aria-labelledby="hand-over-title" onClose={onClose}>
      <div className="hand-over-top">
        <div className="hand-over-head">
          <h2 id="hand-over-title">Hand over</h2>
          <button type="button" className="quiet" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
        <div role="status" className="hand-over-state">
          {desk.making === null ? null : <p>It is being made…</p>}
        </div>
        <ProblemNote desk={desk} />
      </div>
      <SheetPart desk={desk} onPrint={printPage} />
      <DrawingPart desk={desk} />
      {hasCoupler ? <PinPlanPart desk={desk} /> : null}
      <ReplyPart desk={desk} document={document} />
      <ListingPart desk={desk} machines={hasCoupler ? ['implement', 'coupler'] : ['implement']} />
    </dialog>
  );
}
