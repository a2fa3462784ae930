import type { Bounds } from '../scene.ts';
import type { Sheet } from '../sheet.ts';
import type { Extent } from './extent.ts';

/** Room wanted around the parts, for what is written there [paper mm]. */
export interface Surround {
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
}

/** A sheet laid out: its scale, the panel of the main view and that of the enlarged one [scene mm]. */
export interface Layout {
  readonly scale: number;
  readonly panel: Bounds;
  readonly detail: Bounds | null;
  readonly bounds: Bounds;
}

/** Gap between two panels [paper mm]. */
const gutter = 5;

/** Lays the sheet out: the largest scale at which the parts and all that is written around them fit. */
export function layoutOf(sheet: Sheet, extent: Extent, surround: Surround, hasDetail: boolean): Layout {
  const beside = hasDetail && sheet.beside > 0;
  const width = sheet.width - (beside ? sheet.beside + gutter : 0);
  const across = (2 * extent.half) / (width - surround.left - surround.right);
  const scale = chosen(sheet, Math.max(across, (extent.top - extent.bottom) / sheet.height));
  const spare = width * scale - 2 * extent.half - (surround.left + surround.right) * scale;
  const left = -extent.half - surround.left * scale - spare / 2;
  const panel = {
    left,
    right: left + width * scale,
    top: extent.top + surround.above * scale,
    bottom: extent.bottom - surround.below * scale,
  };
  const detail = hasDetail ? (beside ? besides(panel, sheet, scale) : below(panel, sheet, scale)) : null;
  const bounds =
    detail === null
      ? panel
      : { ...panel, right: Math.max(panel.right, detail.right), bottom: Math.min(panel.bottom, detail.bottom) };
  return { scale, panel, detail, bounds };
}

function chosen({ scales }: Sheet, least: number): number {
  return scales?.find((scale) => scale >= least) ?? least;
}

function besides(panel: Bounds, sheet: Sheet, scale: number): Bounds {
  const left = panel.right + gutter * scale;
  return { left, right: left + sheet.beside * scale, top: panel.top, bottom: panel.bottom };
}

function below(panel: Bounds, sheet: Sheet, scale: number): Bounds {
  const top = panel.bottom;
  return { left: panel.left, right: panel.right, top, bottom: top - sheet.detailHeight * scale };
}
