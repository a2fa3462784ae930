import type { Cite } from './citations.ts';
import type { Figure } from './figure.ts';
import { generalIndexPage, indexFromMemory, openTables, trailerPage, tyreLimits, tyrePage } from './loadCitations.ts';

/** Kilograms for the indices 0 to 160, ten to a line, as the tables print them. */
const printedKilograms: readonly number[] = [
  [45, 46.2, 47.5, 48.7, 50, 51.5, 53, 54.5, 56, 58],
  [60, 61.5, 63, 65, 67, 69, 71, 73, 75, 77.5],
  [80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100, 103],
  [106, 109, 112, 115, 118, 121, 125, 128, 132, 136],
  [140, 145, 150, 155, 160, 165, 170, 175, 180, 185],
  [190, 195, 200, 206, 212, 218, 224, 230, 236, 243],
  [250, 257, 265, 272, 280, 290, 300, 307, 315, 325],
  [335, 345, 355, 365, 375, 387, 400, 412, 425, 437],
  [450, 462, 475, 487, 500, 515, 530, 545, 560, 580],
  [600, 615, 630, 650, 670, 690, 710, 730, 750, 775],
  [800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030],
  [1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360],
  [1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850],
  [1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430],
  [2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250],
  [3350, 3450, 3550, 3650, 3750, 3875, 4000, 4125, 4250, 4375],
  [4500],
].flat();

/** The indices 161 to 180; two of them were read, the others come from memory. */
const laterKilograms: readonly number[] = [
  [4625, 4750, 4875, 5000, 5150, 5300, 5450, 5600, 5800, 6000],
  [6150, 6300, 6500, 6700, 6900, 7100, 7300, 7500, 7750, 8000],
].flat();

const read: ReadonlySet<number> = new Set([165, 168]);

/** A row that its source prints otherwise than the others do, kept to say why it is not followed. */
export interface DisputedIndex {
  readonly index: number;
  /** what that source prints [kg] */
  readonly figure: Figure;
  readonly whyNotFollowed: string;
}

const other = (index: number, source: Cite, printed: number, whyNotFollowed: string): DisputedIndex => ({
  index,
  figure: source(printed, String(printed), 'kg', { disputed: true }),
  whyNotFollowed,
});

/** Rows that one source prints otherwise. @source load-index-page, load-index-trailer-page, load-index-tyre-page */
export const disputedIndices: readonly DisputedIndex[] = [
  other(53, generalIndexPage, 205, 'The others print 206, and 133 is ten times that.'),
  other(62, generalIndexPage, 165, 'A typing error: between 257 and 272, the others print 265.'),
  other(83, trailerPage, 478, 'Digits swapped: the others print 487, half way from 475 to 500.'),
  other(135, tyrePage, 2190, 'The others print 2180, half way from 2120 to 2240, and 55 is a tenth of that.'),
];

const openFrom = 42;

function rowFor(index: number, kilograms: number): Figure {
  const isDisputed = disputedIndices.some((row) => row.index === index);
  const extra = isDisputed ? ({ disputed: true } as const) : {};
  const source = index < openFrom ? generalIndexPage : openTables;
  return source(kilograms, String(kilograms), 'kg', extra);
}

function laterRow(index: number, kilograms: number): Figure {
  const row = (read.has(index) ? tyreLimits : indexFromMemory)(kilograms, String(kilograms), 'kg');
  return row.status === 'memory' ? { ...row, confidence: 'high' } : row;
}

const figures: readonly Figure[] = [
  ...printedKilograms.map((kilograms, index) => rowFor(index, kilograms)),
  ...laterKilograms.map((kilograms, at) => laterRow(printedKilograms.length + at, kilograms)),
];

/**
 * The row of a load index: what one tyre may carry at the speed of its symbol and the pressure of its maker's table. A
 * small cross-ply tyre marked with a ply rating has no index: its maker's table is wanted.
 *
 * @param index load index as it stands on the tyre [whole number]
 * @returns the row, null outside 0 to 180 [kg per tyre]
 * @source load-index-open-tables, load-index-page, manual-tyre-limits; 161 to 180 but two from memory
 */
export function loadIndexFigure(index: number): Figure | null {
  return figures[index] ?? null;
}

/**
 * What one tyre of a load index may carry at the speed of its symbol.
 *
 * @param index load index as it stands on the tyre [whole number]
 * @returns mass, null outside 0 to 180 [kg per tyre]
 * @example loadIndexMass(133); // 2060
 * @source load-index-open-tables, load-index-page, manual-tyre-limits; 161 to 180 but two from memory
 */
export function loadIndexMass(index: number): number | null {
  return loadIndexFigure(index)?.value ?? null;
}
