import type { Bound } from '@hitchwright/core/records';
import type { Scale } from './drawnColumns.ts';
import { PinFrame } from './PinFrame.tsx';

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
      <PinFrame id={id} hatched={hatched} scale={scale} />
      {text === '' ? null : (
        <span>
          <span className={words === 'none' ? 'drawn-none' : undefined}>{text}</span>
        </span>
      )}
    </div>
  );
}
