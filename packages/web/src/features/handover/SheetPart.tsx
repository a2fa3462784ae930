import { useState } from 'react';
import { sharedSite } from '../../app/address.ts';
import { download } from '../../app/download.ts';
import { chooseAsks, usePreferences } from '../../app/preferences.ts';
import { PaperChoice } from './PaperChoice.tsx';
import type { MakerDesk } from './useMaker.ts';

interface SheetPartProps {
  readonly desk: MakerDesk;
  /** Prints the page itself. */
  readonly onPrint: () => void;
}

/** The sheet to print: for whom it is and who hands it over stand on it. */
export function SheetPart({ desk, onPrint }: SheetPartProps) {
  const { asks } = usePreferences();
  const [customer, setCustomer] = useState('');
  const make = async (): Promise<void> => {
    const site = sharedSite();
    const names = {
      ...(customer.trim() === '' ? {} : { customer: customer.trim() }),
      ...(asks.trim() === '' ? {} : { issuer: asks.trim() }),
    };
    const made = await desk.make({ kind: 'sheet', ...(site === null ? {} : { site }), ...names });
    if (made?.kind === 'file') download(made.name, made.bytes, made.type);
  };
  return (
    <section className="hand-over-part" aria-labelledby="sheet-title">
      <h3 id="sheet-title">The sheet</h3>
      <p>
        Answer, drawings to scale, notes, parts, figures with who read them, cautions, and{' '}
        {sharedSite() === null
          ? 'a reference of the setup: these pages are on this machine only, so no code leads here.'
          : 'a code that leads back here.'}
      </p>
      <div className="hand-over-fields">
        <label>
          <span>For whom</span>
          <input value={customer} maxLength={100} onChange={({ target }) => setCustomer(target.value)} />
        </label>
        <label>
          <span>From whom</span>
          <input value={asks} maxLength={100} onChange={({ target }) => chooseAsks(target.value)} />
        </label>
        <PaperChoice desk={desk} />
      </div>
      <div className="hand-over-actions">
        <button type="button" className="button-solid" disabled={desk.making !== null} onClick={() => void make()}>
          Make the sheet (PDF)
        </button>
        <button type="button" onClick={onPrint}>
          Print this page instead
        </button>
      </div>
    </section>
  );
}
