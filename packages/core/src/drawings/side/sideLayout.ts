import type { Bounds } from '../scene.ts';
import type { Sheet } from '../sheet.ts';
import { barHeight } from '../view/heading.ts';
import type { Extent } from './extent.ts';

/** A side view on its sheet [scene mm, which are true ones]. */
export interface SideLayout {
  readonly scale: number;
  readonly bounds: Bounds;
  /** What the tractor, the ground and the implement are drawn in. */
  readonly box: Bounds;
}

/** Room wanted around the picture [paper mm]. */
interface Surround {
  readonly right: number;
  readonly above: number;
  readonly below: number;
}

/** Room that the strokes under the ground line take [paper mm]. */
export const groundDepth = 1.8;

/** The largest scale at which the whole lift fits; what is left of the width shows more of the tractor. */
export function sideLayout(sheet: Sheet, extent: Extent, around: Surround): SideLayout {
  const width = sheet.width - sheet.margin - around.right;
  const scale = scaleFor(sheet, extent, width);
  const spare = width * scale - (extent.right - extent.near);
  const left = Math.max(extent.far, extent.near - spare);
  const rest = spare - (extent.near - left);
  const box = { left, right: extent.right + rest, top: extent.top, bottom: extent.bottom };
  return {
    scale,
    box,
    bounds: {
      left: left - sheet.margin * scale,
      right: box.right + around.right * scale,
      top: extent.top + around.above * scale,
      bottom: extent.bottom - around.below * scale,
    },
  };
}

/** The scale of a picture in a width [paper mm]: a round one where the sheet is printed. */
export function scaleFor(sheet: Sheet, { right, near, top, bottom }: Extent, width: number): number {
  const least = Math.max((right - near) / width, (top - bottom) / sheet.sideHeight);
  return sheet.scales?.find((scale) => scale >= least) ?? least;
}

/** Room that the ground and the scale bar take below a picture [paper mm]. */
export function belowGround(sheet: Sheet): number {
  return groundDepth + 2 + barHeight(sheet);
}
