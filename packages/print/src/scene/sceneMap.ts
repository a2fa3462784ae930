import type { Point, Scene } from '@hitchwright/core/drawings';
import type { Spot } from '../pdf/ink.ts';

/** Where a drawing lies on its page. */
export interface Placed {
  /** A point of the drawing on the page [mm]. */
  readonly spot: (point: Point) => Spot;
  /** Scene millimetres to one millimetre of paper. */
  readonly scale: number;
}

/** Lays a drawing with its upper left corner at a spot, at its own scale: one paper millimetre is `scale` of its own. */
export function placedAt(scene: Scene, [x, y]: Spot): Placed {
  const { left, top } = scene.bounds;
  const { scale } = scene;
  return { scale, spot: ([right, up]) => [x + (right - left) / scale, y + (top - up) / scale] };
}

/** Size of a drawing on paper [mm]. */
export function paperSize({ bounds, scale }: Scene): { readonly width: number; readonly height: number } {
  return { width: (bounds.right - bounds.left) / scale, height: (bounds.top - bounds.bottom) / scale };
}
