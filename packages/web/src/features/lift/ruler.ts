import type { Bounds } from '@hitchwright/core/drawings';
import type { CSSProperties } from 'react';
import type { Sweep } from './heights.ts';
import type { LiftPaper } from './painter.ts';

/** Where the drawn pointers lie, and how wide they are: from the left of the plots, from the right of a view [paper mm]. */
const pointer = { fromLeft: 0, fromRight: 37, width: 19 } as const;

/** Where a slider lies over the ruler at the left of the plots. */
export function onPlotsRuler({ plots, plotScale }: LiftPaper, sweep: Sweep): CSSProperties {
  return { ...alongStroke(plots, sweep), ...across(plots, pointer.fromLeft * plotScale, pointer.width * plotScale) };
}

/** Where a slider lies over the ruler at the right of a view that stands by itself. */
export function onViewRuler({ view, viewScale }: LiftPaper, sweep: Sweep): CSSProperties {
  const left = view.right - view.left - pointer.fromRight * viewScale;
  return { ...alongStroke(view, sweep), ...across(view, left, pointer.width * viewScale) };
}

function across({ left, right }: Bounds, from: number, width: number): CSSProperties {
  return { left: percent(from, right - left), width: percent(width, right - left) };
}

/** The stroke of the lift in parts of a drawing; the thumb reaches past both ends by half of itself. */
function alongStroke({ top, bottom }: Bounds, { stations }: Sweep): CSSProperties {
  const low = stations[0]?.ballHeight ?? 0;
  const high = stations.at(-1)?.ballHeight ?? low;
  return {
    top: `calc(${percent(top - high, top - bottom)} - var(--thumb) / 2)`,
    height: `calc(${percent(high - low, top - bottom)} + var(--thumb))`,
  };
}

function percent(part: number, whole: number): string {
  return `${(100 * part) / whole}%`;
}
