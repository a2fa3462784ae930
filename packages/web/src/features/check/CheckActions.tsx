import { chosenIn, type SetupDocument } from '@hitchwright/core/records';
import { lazy, useState } from 'react';
import { sharedSite } from '../../app/address.ts';
import { DialogButton } from '../../app/DialogButton.tsx';
import { hasYard } from '../../app/server/hasYard.ts';
import { RecordsLink } from '../../app/server/RecordsLink.tsx';
import { sampleNames } from '../question/question.ts';
import type { SidePanel } from './Sheet.tsx';
import type { YardQuestion } from './usePicked.ts';

const HandOver = lazy(() => import('../handover/HandOver.tsx').then(({ HandOver }) => ({ default: HandOver })));
const KeepMachines = lazy(() => import('./KeepMachines.tsx').then(({ KeepMachines }) => ({ default: KeepMachines })));
const SaveAnswer = lazy(() => import('../answers/SaveAnswer.tsx').then(({ SaveAnswer }) => ({ default: SaveAnswer })));

interface CheckActionsProps {
  /** The setup that was answered; null while there is none. */
  readonly document: SetupDocument | null;
  /** The question by the yard’s records, where it was made of them. */
  readonly asked: YardQuestion | null;
}

/** What can be done with a check, in the strip above it. */
export function CheckActions({ document, asked }: CheckActionsProps) {
  return (
    <>
      <a className="quiet" href="#yard">
        Yard
      </a>
      <RecordsLink />
      {asked === null ? null : (
        <DialogButton label="Save the answer" className="quiet">
          {(close) => (
            <SaveAnswer asked={asked} hasChosen={document !== null && chosenIn(document).length > 0} onClose={close} />
          )}
        </DialogButton>
      )}
      {document === null || asked !== null || !hasYard || sampleNames(document).length > 0 ? null : (
        <DialogButton label="Keep" className="quiet">
          {(close) => <KeepMachines document={document} onClose={close} />}
        </DialogButton>
      )}
      {document === null ? null : (
        <>
          <DialogButton label="Hand over" className="quiet">
            {(close) => <HandOver document={document} onClose={close} />}
          </DialogButton>
          <SendButton className="quiet desk-only" />
        </>
      )}
    </>
  );
}

interface PhoneBarProps {
  readonly panel: SidePanel;
  readonly onPanel: (panel: SidePanel) => void;
}

/** The three actions under the thumb. */
export function PhoneBar({ panel, onPanel }: PhoneBarProps) {
  const show = (shows: SidePanel['shows']): void => {
    onPanel({ shows });
    requestAnimationFrame(() => document.getElementById('side')?.scrollIntoView());
  };
  return (
    <nav className="phone-bar" aria-label="This check">
      <button type="button" aria-pressed={panel.shows === 'notes'} onClick={() => show('notes')}>
        Notes
      </button>
      <button type="button" aria-pressed={panel.shows === 'dimensions'} onClick={() => show('dimensions')}>
        Dimensions
      </button>
      <SendButton className="" />
    </nav>
  );
}

type Sent = 'not yet' | 'copied' | 'by hand';

const sentWords: Readonly<Record<Sent, string>> = {
  'not yet': 'Copy link',
  copied: sharedSite() === null ? 'Copied: it opens on this machine only' : 'Link copied',
  'by hand': 'Copy it from the address',
};

/** Hands the link over: by the device's own way to share, or by the clipboard. */
function SendButton({ className }: { readonly className: string }) {
  const [sent, setSent] = useState<Sent>('not yet');
  const send = async (): Promise<void> => {
    setSent(await copied(location.href));
    setTimeout(() => setSent('not yet'), 4000);
  };
  return (
    <button type="button" className={className} onClick={() => void send()}>
      <span aria-live="polite">{sentWords[sent]}</span>
    </button>
  );
}

async function copied(link: string): Promise<Sent> {
  try {
    await navigator.clipboard.writeText(link);
    return 'copied';
  } catch {
    return 'by hand';
  }
}
