import type { ListedMachine } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import { useEffect, useRef } from 'react';
import { ListingPart } from './ListingPart.tsx';
import { ProblemNote } from './ProblemNote.tsx';
import { useMaker } from './useMaker.ts';
import './handover.css';

interface ListingDialogProps {
  readonly machine: ListedMachine;
  /** A setup that the machine is in, with nothing else known [JSON]. */
  readonly document: SetupDocument;
  readonly onClose: () => void;
}

/** One machine for a shop page, without a check. */
export function ListingDialog({ machine, document, onClose }: ListingDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const desk = useMaker(document);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="hand-over" aria-labelledby="listing-dialog-title" onClose={onClose}>
      <div className="hand-over-top">
        <div className="hand-over-head">
          <h2 id="listing-dialog-title">Listing</h2>
          <button type="button" className="quiet" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
        <div role="status" className="hand-over-state">
          {desk.making === null ? null : <p>It is being made…</p>}
        </div>
        <ProblemNote desk={desk} />
      </div>
      <ListingPart desk={desk} machines={[machine]} />
    </dialog>
  );
}
