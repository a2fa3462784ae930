import type { Bound } from '@hitchwright/core/records';
import type { ReactNode } from 'react';
import { across, columnWidth, type Scale } from './drawnColumns.ts';
import { PinHatch } from './PinHatch.tsx';

/** Height of a drawn cell in the units of its view box. */
export const frameHeight = 56;

interface PinFrameProps {
  readonly id: string;
  readonly hatched: readonly Bound[];
  readonly scale: Scale;
  /** What the drawing says to those who can't see it; without it the drawing is mere ground for words. */
  readonly label?: string;
  readonly children?: ReactNode;
}

/** A drawn cell: the hooks hatched across its whole height, and what stands against them. */
export function PinFrame({ id, hatched, scale, label, children }: PinFrameProps) {
  const role =
    label === undefined ? ({ 'aria-hidden': true, focusable: false } as const) : { role: 'img', 'aria-label': label };
  return (
    <svg className="pin-drawing" viewBox={`0 0 ${columnWidth} ${frameHeight}`} {...role}>
      <PinHatch id={id} />
      {hatched.map(({ low, high }) => (
        <rect
          key={low}
          className="hook-zone"
          fill={`url(#${id}-ink)`}
          {...stretch(scale, low, high)}
          y={-100}
          height={256}
        />
      ))}
      {children}
    </svg>
  );
}

/** Where something between two positions starts, and how wide it is. */
export function stretch(scale: Scale, a: number, b: number): { x: number; width: number } {
  const x = across(scale, Math.min(a, b));
  return { x, width: across(scale, Math.max(a, b)) - x };
}
