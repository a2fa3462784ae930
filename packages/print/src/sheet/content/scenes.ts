import { liftStrip, rearView, topView, type Scene, type SheetFormat } from '@hitchwright/core/drawings';
import type { Judged, SheetOptions } from '../options.ts';

/** Drawings that stand side by side. */
export type Row = readonly Scene[];

/** Ways to lay out the drawings of a sheet, the roomiest first: each a row of its own, two in one row, all of them low, and both. */
export const arrangements = ['each', 'paired', 'low', 'small'] as const;

/** The drawings of a sheet as far as they can be drawn: from behind, from the side in three heights, from above. */
export function rowsOf({ setup, answer }: Judged, { system }: SheetOptions, way: (typeof arrangements)[number]): Row[] {
  const rear = (format: SheetFormat): Scene => rearView(setup, answer, { system, format });
  const lift = (format: SheetFormat): Scene | null => liftStrip(setup, answer, { system, format });
  const top = (format: SheetFormat): Scene | null => topView(setup, answer, { system, format });
  const rows = {
    each: () => [[rear('print')], [lift('print')], [top('print')]],
    paired: () => [[rear('printHalf'), top('printHalf')], [lift('print')]],
    small: () => [[rear('printSmall'), top('printHalf')], [lift('printLow')]],
    low: () => [[rear('printLow')], [lift('printLow')], [top('printLow')]],
  }[way]();
  return rows.map((row) => row.filter((scene) => scene !== null)).filter((row) => row.length > 0);
}
