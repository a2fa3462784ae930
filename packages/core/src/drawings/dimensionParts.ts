import type { Dimension, Point } from './scene.ts';

/** A dimension taken apart for a writer, ISO 129: its line between the two measured ends, what leads to it, and its arrowheads. */
export interface DimensionParts {
  /** Ends of the dimension line: exactly the measured length apart. */
  readonly ends: readonly [Point, Point];
  readonly extensions: readonly (readonly [Point, Point])[];
  /** Pieces outside the ends, where the arrowheads stand outside. */
  readonly tails: readonly (readonly [Point, Point])[];
  readonly arrowheads: readonly (readonly [Point, Point, Point])[];
}

/** Lengths on paper [mm]. */
const paper = { gap: 1, overrun: 1.3, arrow: 2.6, outside: 6.9, tail: 5 } as const;

/** Whether a length on paper is so short that its arrowheads stand outside [paper mm]. */
export function isShort(lengthOnPaper: number): boolean {
  return lengthOnPaper < paper.outside;
}

/** How far a short dimension reaches past its ends [paper mm]. */
export const tailLength = paper.tail;

/**
 * Takes a dimension apart into the lines and arrowheads that are drawn.
 *
 * @param dimension the dimension [scene mm]
 * @param scale scene length of one paper millimetre [mm per mm]
 * @returns lines, tails and arrowheads [scene mm]
 */
export function dimensionParts(dimension: Dimension, scale: number): DimensionParts {
  const { from, to, along, at } = dimension;
  const across: Point = [along[1], -along[0]];
  const a = onLine(from, across, at);
  const b = onLine(to, across, at);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const forward = direction(a, b, along);
  const back: Point = [-forward[0], -forward[1]];
  const outside = isShort(length / scale);
  return {
    ends: [a, b],
    extensions: [...extension(from, a, scale), ...extension(to, b, scale)],
    tails: outside
      ? ([
          [a, moved(a, back, paper.tail * scale)],
          [b, moved(b, forward, paper.tail * scale)],
        ] as const)
      : [],
    arrowheads: [arrowhead(a, outside ? back : forward, scale), arrowhead(b, outside ? forward : back, scale)],
  };
}

function onLine(point: Point, across: Point, at: number): Point {
  const shift = at - (point[0] * across[0] + point[1] * across[1]);
  return moved(point, across, shift);
}

function moved([y, z]: Point, [dy, dz]: Point, by: number): Point {
  return [y + dy * by, z + dz * by];
}

function direction(a: Point, b: Point, along: Point): Point {
  return (b[0] - a[0]) * along[0] + (b[1] - a[1]) * along[1] >= 0 ? along : [-along[0], -along[1]];
}

function extension(point: Point, end: Point, scale: number): (readonly [Point, Point])[] {
  const length = Math.hypot(end[0] - point[0], end[1] - point[1]);
  if (length <= paper.gap * scale) return [];
  const unit: Point = [(end[0] - point[0]) / length, (end[1] - point[1]) / length];
  return [[moved(point, unit, paper.gap * scale), moved(end, unit, paper.overrun * scale)]];
}

/** A filled head, three times as long as wide, with its tip at `tip` and its body in the given direction. */
function arrowhead(tip: Point, towardsTail: Point, scale: number): readonly [Point, Point, Point] {
  const base = moved(tip, towardsTail, paper.arrow * scale);
  const half = (paper.arrow * scale) / 6;
  const normal: Point = [-towardsTail[1], towardsTail[0]];
  return [tip, moved(base, normal, half), moved(base, normal, -half)];
}
