import { useEffect, useState } from 'react';
import { takeNewer, useOffline } from './offline.ts';

/** How long nothing may have been touched before the bar comes: it moves the page, and nothing may move under a finger. */
const calm = 4000;
const shownFor = 10_000;

/** What is told unasked, above the page: once that it works without a signal, and that there is a newer version. */
export function OfflineNotices() {
  const { kept, isFirst, newer } = useOffline();
  return (
    <div className="notices" role="status">
      {kept === 'yes' && isFirst && newer === 'none' ? <ReadyPlate /> : null}
      {newer === 'none' ? null : <NewerBar key={newer} isTaken={newer === 'taken elsewhere'} />}
    </div>
  );
}

/** One line on whether the site can be used without a network, for pages where somebody would want to know. */
export function OfflineStatus() {
  const { kept } = useOffline();
  return <p className="offline-status">{statusWords[kept]}</p>;
}

const statusWords: Readonly<Record<ReturnType<typeof useOffline>['kept'], string>> = {
  yes: 'Kept on this device: it opens and answers without a signal.',
  'not yet': 'Not kept on this device yet: without a signal it may not open.',
  impossible: 'This browser can’t keep the page for use without a signal.',
};

/** Lies for a moment at the foot of the window, above what is under the thumb there; presses go through it. */
function ReadyPlate() {
  const [isShown, setIsShown] = useState(true);
  useEffect(() => {
    const timer = setTimeout(() => setIsShown(false), shownFor);
    return () => clearTimeout(timer);
  }, []);
  return isShown ? <p className="ready-plate">Works without a signal now</p> : null;
}

function NewerBar({ isTaken }: { readonly isTaken: boolean }) {
  const isCalm = useCalm();
  const [isDismissed, setIsDismissed] = useState(false);
  if (!isCalm || isDismissed) return null;
  return (
    <div className="newer">
      <svg className="newer-mark" viewBox="0 0 28 26" aria-hidden="true">
        <path d="M14 2 26.5 24h-25z" />
      </svg>
      <p>{isTaken ? 'This tab still shows the older version.' : 'A newer version is here.'}</p>
      <button type="button" onClick={takeNewer}>
        {isTaken ? 'Reload' : 'Take it'}
      </button>
      <button type="button" className="quiet" onClick={() => setIsDismissed(true)}>
        Later
      </button>
    </div>
  );
}

const touches = ['pointerdown', 'keydown', 'input', 'wheel', 'touchmove'] as const;

/** Turns true when nothing has been touched for a while, and stays so. */
function useCalm(): boolean {
  const [isCalm, setIsCalm] = useState(false);
  useEffect(() => {
    let timer = setTimeout(() => setIsCalm(true), calm);
    const again = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => setIsCalm(true), calm);
    };
    for (const touch of touches) addEventListener(touch, again, { passive: true });
    return () => {
      clearTimeout(timer);
      for (const touch of touches) removeEventListener(touch, again);
    };
  }, []);
  return isCalm;
}
