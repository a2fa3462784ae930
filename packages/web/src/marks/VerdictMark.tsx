import type { Outcome } from '@hitchwright/core/assess';

/** A hook seen from the side, open to the top: outline of the metal, then its throat. */
const hook = 'M2 5.5h7.5v10.2a7.4 7.4 0 0 0 14.8 0v-1.6L29.6 9v5.6c0 9.2-5.4 14.4-13.4 14.4H2z';

/** The mark beside a verdict, in drawing grammar: a hook is an outline, a pin is solid. A word always stands beside it. */
export function VerdictMark({ outcome }: { readonly outcome: Outcome }) {
  return (
    <svg className={`mark mark-${outcome}`} viewBox="0 0 32 31" aria-hidden="true" focusable="false">
      <path d={hook} className="mark-hook" />
      <Pin outcome={outcome} />
    </svg>
  );
}

function Pin({ outcome }: { readonly outcome: Outcome }) {
  if (outcome === 'notChecked' || outcome === 'notNeeded') return null;
  if (outcome === 'willNot') return <circle className="mark-pin" cx="16.9" cy="5.6" r="5.2" />;
  if (outcome === 'measureFirst') return <circle className="mark-pin" cx="16.9" cy="15.4" r="4.6" />;
  if (outcome === 'works') return <circle className="mark-pin" cx="16.9" cy="16.2" r="5.8" />;
  return (
    <>
      <circle className="mark-ring" cx="16.9" cy="15.8" r="5.4" />
      <circle className="mark-pin" cx="16.9" cy="15.8" r="2.5" />
    </>
  );
}
