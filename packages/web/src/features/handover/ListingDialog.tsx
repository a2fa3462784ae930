import type { ListedMachine } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import { Dialog } from '../../app/Dialog.tsx';
import { ListingPart } from './ListingPart.tsx';
import { MakingState } from './MakingState.tsx';
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
  const desk = useMaker(document);
  return (
    <Dialog title="Listing" className="hand-over" onClose={onClose} top={<MakingState desk={desk} />}>
      <ListingPart desk={desk} machines={[machine]} />
    </Dialog>
  );
}
