import type { UnitSystem } from '../../units/index.ts';
import { sheets, type SheetFormat, type Sheet } from '../sheet.ts';

/** How a side view is laid out: by itself, or with room for the plots beside it on the same sheet. */
export interface ViewPlan {
  readonly system: UnitSystem;
  readonly format: SheetFormat;
  readonly isBeside: boolean;
}

/** Scales that a side view may be printed at, as the number 1 is divided by. */
const sideScales: readonly number[] = [5, 8, 10, 12.5, 15, 20, 25, 30, 40, 50, 60, 75, 100];

/** The sheet of a side view: printed at scales of its own. */
export function sideSheet(format: SheetFormat): Sheet {
  const sheet = sheets[format];
  return sheet.scales === null ? sheet : { ...sheet, scales: sideScales };
}
