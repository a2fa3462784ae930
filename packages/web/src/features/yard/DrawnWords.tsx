import type { Bound } from '@hitchwright/core/records';
import { across, columnWidth, type Scale } from './drawnColumns.ts';
import { PinHatch } from './PinHatch.tsx';

interface DrawnWordsProps {
  readonly id: string;
  readonly hatched: readonly Bound[];
  readonly scale: Scale;
  readonly words: 'waiting' | 'not measured' | 'none';
}

/** A drawn cell without a pin says why there is none. */
export function DrawnWords({ id, hatched, scale, words }: DrawnWordsProps) {
  const text = words === 'waiting' ? '' : words;
  return (
    <div className="drawn-words">
      <svg className="pin-drawing" viewBox={`0 0 ${columnWidth} 56`} aria-hidden="true" focusable="false">
        <PinHatch id={id} />
        {hatched.map(({ low, high }) => (
          <rect
            key={low}
            className="hook-zone"
            fill={`url(#${id}-ink)`}
            x={across(scale, low)}
            width={across(scale, high) - across(scale, low)}
            y={-100}
            height={256}
          />
        ))}
      </svg>
      {text === '' ? null : (
        <span>
          <span className={words === 'none' ? 'drawn-none' : undefined}>{text}</span>
        </span>
      )}
    </div>
  );
}
