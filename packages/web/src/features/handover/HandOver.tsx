import type { SetupDocument } from '@hitchwright/core/records';
import { atPath } from '@hitchwright/core/records';
import { useRef } from 'react';
import { Dialog } from '../../app/Dialog.tsx';
import { DrawingPart } from './DrawingPart.tsx';
import { ListingPart } from './ListingPart.tsx';
import { MakingState } from './MakingState.tsx';
import { PinPlanPart } from './PinPlanPart.tsx';
import { ReplyPart } from './ReplyPart.tsx';
import { SetupFilePart } from './SetupFilePart.tsx';
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
  const printPage = (): void => {
    dialog.current?.close();
    setTimeout(print);
  };
  const hasCoupler = typeof atPath(document, 'coupler') === 'object';
  return (
    <Dialog ref={dialog} title="Hand over" className="hand-over" onClose={onClose} top={<MakingState desk={desk} />}>
      <SheetPart desk={desk} onPrint={printPage} />
      <DrawingPart desk={desk} />
      {hasCoupler ? <PinPlanPart desk={desk} /> : null}
      <ReplyPart desk={desk} document={document} />
      <ListingPart desk={desk} machines={hasCoupler ? ['implement', 'coupler'] : ['implement']} />
      <SetupFilePart document={document} />
    </Dialog>
  );
}
