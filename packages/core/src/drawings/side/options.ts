import type { UnitSystem } from '../../units/index.ts';
import type { SheetFormat } from '../sheet.ts';

/** How the pictures of a lift are drawn. */
export interface LiftOptions {
  readonly system: UnitSystem;
  /** `desk` (820 px) unless given; `phone` is 390 px wide, `print` the width between the margins of Letter or A4, `printLow` the same in little height, `printHalf` half as wide. */
  readonly format?: SheetFormat;
}

/** The same at one station of the sweep, counted from 0; nearest to the working height unless given. */
export interface StationOptions extends LiftOptions {
  readonly station?: number;
}
