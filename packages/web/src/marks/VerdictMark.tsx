import type { Outcome } from '@hitchwright/core/assess';
import { verdictMark } from '@hitchwright/core/drawings';

/** The mark beside a verdict, in drawing grammar: a hook is an outline, a pin is solid. A word always stands beside it. */
export function VerdictMark({ outcome }: { readonly outcome: Outcome }) {
  const { width, height, hook, pins } = verdictMark(outcome);
  const outline = `M${hook.map((point) => point.map((part) => part.toFixed(2)).join(' ')).join('L')}z`;
  return (
    <svg className={`mark mark-${outcome}`} viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
      <path d={outline} className="mark-hook" />
      {pins.map(({ at: [x, y], radius, look }) => (
        <circle key={look} className={look === 'ring' ? 'mark-ring' : 'mark-pin'} cx={x} cy={y} r={radius} />
      ))}
    </svg>
  );
}
