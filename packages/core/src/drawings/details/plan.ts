import type { Finding } from '../../engine/findings/index.ts';
import type { Pen } from '../pen.ts';
import type { Bounds, Dimension, Point } from '../scene.ts';
import type { Part } from '../view/part.ts';
import type { Misfit } from '../misfit.ts';

/** An enlarged view before it is placed: what it shows, in its own millimetres, and the room for what is written around it. */
export interface DetailPlan {
  readonly finding: Finding;
  readonly title: string;
  readonly note: string;
  /** Cut along the centre line, where the main view says so. */
  readonly isSection?: boolean;
  readonly box: Bounds;
  /** Room for lettering around the box [paper mm]. */
  readonly around: { readonly left: number; readonly right: number; readonly above: number; readonly below: number };
  readonly draw: (pen: Pen) => Part;
}

/** The dimension of a misfit in an enlarged view, where one side carries all of it. */
export function detailDimension({ gauge }: Misfit, from: Point, to: Point, along: Point, at: number): Dimension {
  return {
    kind: 'dimension',
    role: 'misfit',
    finding: gauge.finding.id,
    from,
    to,
    along,
    at,
    sides: 1,
    mmPerUnit: 1,
    label: null,
  };
}

/** The middle of what a quantity may be. */
export function middleOf({ gauge }: Misfit): number {
  const { low, high } = gauge.finding.quantity ?? { low: null, high: null };
  return ((low ?? 0) + (high ?? 0)) / 2;
}
