import { useState } from 'react';
import { sharedSite } from '../../app/address.ts';
import { CopyButton } from './CopyButton.tsx';
import type { Listing, ListedMachine } from '@hitchwright/core/handover';
import type { MakerDesk } from './useMaker.ts';

interface ListingPartProps {
  readonly desk: MakerDesk;
  /** Which machines of the setup can be listed. */
  readonly machines: readonly ListedMachine[];
}

/** Dimensions, drawing and structured data of one machine, for a shop page. */
export function ListingPart({ desk, machines }: ListingPartProps) {
  const [listing, setListing] = useState<Listing | null>(null);
  const make = async (machine: ListedMachine): Promise<void> => {
    const link = sharedSite();
    const made = await desk.make({ kind: 'listing', machine, ...(link === null ? {} : { link }) });
    setListing(made?.kind === 'listing' ? made.listing : null);
  };
  return (
    <section className="hand-over-part" aria-labelledby="listing-title">
      <h3 id="listing-title">For a shop page</h3>
      <p>Dimensions with where they were measured, a drawing, and the same as structured data.</p>
      <div className="hand-over-actions">
        {machines.map((machine) => (
          <button key={machine} type="button" disabled={desk.making !== null} onClick={() => void make(machine)}>
            Of the {machine}
          </button>
        ))}
      </div>
      {listing === null ? null : (
        <>
          <textarea aria-label="HTML of the listing" rows={8} readOnly value={listing.html} />
          <div className="hand-over-actions">
            <CopyButton words="Copy all of it" text={`${listing.html}\n${listing.script}`} />
            <CopyButton words="Copy without its style" text={listing.bareHtml} />
            <CopyButton words="Copy the structured data" text={listing.script} />
          </div>
        </>
      )}
    </section>
  );
}
