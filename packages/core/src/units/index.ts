export { toDegrees, toRadians } from './angle.ts';
export type { ReadOptions, RefusalCode } from './attempt.ts';
export { canonicalUnit, customaryUnit, unitNameIn } from './dimensions.ts';
export type {
  Bar,
  Degree,
  Dimension,
  Kg,
  Kilowatt,
  KilometrePerHour,
  LitrePerMinute,
  Mm,
  Newton,
  NewtonMetre,
  Quantity,
  Rad,
  Rpm,
  UnitSystem,
} from './dimensions.ts';
export * from './factors.ts';
export type { Rounding } from './grid.ts';
export { printMargin, printMarginSize } from './margin.ts';
export { partText, printBoth, printQuantity, splitQuantity } from './print.ts';
export type { PrintOptions, QuantityPart } from './print.ts';
export { readQuantity } from './read.ts';
export type { ReadResult } from './read.ts';
