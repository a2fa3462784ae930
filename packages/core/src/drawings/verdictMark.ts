import type { Outcome } from '../engine/assess/index.ts';
import type { Point } from './scene.ts';

/** A pin in a mark: solid where it sits or where it can't go in, a ring where a part takes it, dashed where nobody knows. */
interface MarkPin {
  readonly at: Point;
  readonly radius: number;
  readonly look: 'solid' | 'ring' | 'dashed';
}

/** The mark beside a verdict: a hook seen from the side, open to the top, with its pin [parts of its ground, right and down]. */
export interface VerdictMark {
  readonly width: number;
  readonly height: number;
  /** The outline of the hook, closed. */
  readonly hook: readonly Point[];
  /** Nothing was judged: the hook too is dashed. */
  readonly isOpen: boolean;
  readonly pins: readonly MarkPin[];
}

/** A part of a circle as points. */
function arc([x, y]: Point, radius: number, from: number, to: number): Point[] {
  return Array.from({ length: 19 }, (_, i): Point => {
    const angle = ((from + ((to - from) * i) / 18) * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

const hook: readonly Point[] = [
  [2, 5.5],
  [9.5, 5.5],
  [9.5, 15.7],
  ...arc([16.9, 15.7], 7.4, 180, 0),
  [24.3, 14.1],
  [29.6, 9],
  [29.6, 14.6],
  ...arc([16.2, 15.6], 13.4, 0, 90),
  [2, 29],
];

const pins: Readonly<Record<Outcome, readonly MarkPin[]>> = {
  works: [{ at: [16.9, 16.2], radius: 5.8, look: 'solid' }],
  withParts: [
    { at: [16.9, 15.8], radius: 5.4, look: 'ring' },
    { at: [16.9, 15.8], radius: 2.5, look: 'solid' },
  ],
  measureFirst: [{ at: [16.9, 15.4], radius: 4.6, look: 'dashed' }],
  willNot: [{ at: [16.9, 5.6], radius: 5.2, look: 'solid' }],
  notChecked: [],
  notNeeded: [],
};

/**
 * The mark of an outcome, for whoever draws it; a word always stands beside it.
 *
 * @param outcome the outcome [name]
 * @returns its hook and pins [parts of its ground of 32 by 31, right and down]
 */
export function verdictMark(outcome: Outcome): VerdictMark {
  return { width: 32, height: 31, hook, isOpen: outcome === 'notChecked', pins: pins[outcome] };
}
