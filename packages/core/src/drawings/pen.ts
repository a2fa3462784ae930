import type { UnitSystem } from '../units/index.ts';
import type { Sheet } from './sheet.ts';

/** What a view is drawn with: its sheet, its units, and how many of its own millimetres one millimetre of paper shows. */
export interface Pen {
  readonly sheet: Sheet;
  readonly system: UnitSystem;
  readonly perPaper: number;
}

/** A length on paper in the view's own millimetres. */
export function onPaper(pen: Pen, paperMm: number): number {
  return paperMm * pen.perPaper;
}
