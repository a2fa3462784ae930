import type { Point, ScaleBar } from './scene.ts';

/** A rectangle by its lower left corner [scene mm]. */
export interface BarBox {
  readonly at: Point;
  readonly width: number;
  readonly height: number;
  readonly filled: boolean;
}

/** Height of the bar [paper mm]. */
const barHeight = 1.1;

/**
 * The boxes of a scale bar, alternately filled, and the frame around all of them at the end.
 *
 * @param bar the bar [scene mm]
 * @param scale scene length of one paper millimetre [mm per mm]
 * @returns the boxes in painter's order [scene mm]
 */
export function scaleBarParts({ at, division, divisions }: ScaleBar, scale: number): readonly BarBox[] {
  const height = barHeight * scale;
  const boxes = Array.from({ length: divisions }, (_, i): BarBox => ({
    at: [at[0] + i * division, at[1]],
    width: division,
    height,
    filled: i % 2 === 0,
  }));
  return [...boxes, { at, width: division * divisions, height, filled: false }];
}
