import { download } from '../../app/download.ts';
import { FormatButtons } from './DrawingPart.tsx';
import type { DrawingFormat } from '@hitchwright/print/pure';
import type { MakerDesk } from './useMaker.ts';

/** Where the pins would have to sit for this implement to take this coupler. */
export function PinPlanPart({ desk }: { readonly desk: MakerDesk }) {
  const make = async (format: DrawingFormat): Promise<void> => {
    const made = await desk.make({ kind: 'pinPlan', format });
    if (made?.kind === 'file') download(made.name, made.bytes, made.type);
  };
  return (
    <section className="hand-over-part" aria-labelledby="pin-plan-title">
      <h3 id="pin-plan-title">Pin plan</h3>
      <p>
        Where the pins would have to sit for the implement to take this coupler, dimensioned for whoever makes it. It
        says nothing of strength: welding and its design belong to a qualified person, and altering may end a warranty.
      </p>
      <FormatButtons of="pin plan" isBusy={desk.making !== null} onMake={(format) => void make(format)} />
    </section>
  );
}
