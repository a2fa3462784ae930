import type { SetupDocument } from '@hitchwright/core/records';
import { lazy, Suspense, useState } from 'react';
import { hasYard } from '../../app/server/hasYard.ts';
import type { SidePanel } from './Sheet.tsx';
import type { YardQuestion } from './usePicked.ts';

const HandOver = lazy(() => import('../handover/HandOver.tsx').then(({ HandOver }) => ({ default: HandOver })));
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
      {hasYard ? (
        <a className="quiet" href="#records">
          Records
        </a>
      ) : null}
      {asked === null ? null : <SaveButton asked={asked} />}
      {document === null ? null : (
        <>
          <HandOverButton document={document} />
          <SendButton className="quiet desk-only" />
        </>
      )}
    </>
  );
}

function HandOverButton({ document }: { readonly document: SetupDocument }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="quiet" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        Hand over
      </button>
      {isOpen ? (
        <Suspense fallback={null}>
          <HandOver document={document} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  );
}

function SaveButton({ asked }: { readonly asked: YardQuestion }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="quiet" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        Save the answer
      </button>
      {isOpen ? (
        <Suspense fallback={null}>
          <SaveAnswer asked={asked} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
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

/** Hands the link over: by the device's own way to share, or by the clipboard. */
function SendButton({ className }: { readonly className: string }) {
  const [sent, setSent] = useState<Sent>('not yet');
  const send = async (): Promise<void> => {
    setSent(await copied(location.href));
    setTimeout(() => setSent('not yet'), 4000);
  };
  return (
    <button type="button" className={className} onClick={() => void send()}>
      <span aria-live="polite">
        {{ 'not yet': 'Copy link', copied: 'Link copied', 'by hand': 'Copy it from the address' }[sent]}
      </span>
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
