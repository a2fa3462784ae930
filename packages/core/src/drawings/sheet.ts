/** Where a drawing will be looked at. */
export type Format = 'desk' | 'phone' | 'print';

/** A sheet to lay out on: beside the three, paper with little height left, half its width, and half its width in little height. */
export type SheetFormat = Format | 'printLow' | 'printHalf' | 'printSmall';

/** Sizes of lettering [paper mm]; 1 px of the screen counts as 25.4/96 mm. */
interface Letters {
  readonly title: number;
  readonly note: number;
  readonly dimension: number;
  readonly second: number;
  readonly misfit: number;
  readonly detailMisfit: number;
  readonly word: number;
}

/** A sheet that a drawing is laid out on [paper mm]. */
export interface Sheet {
  readonly width: number;
  /** Width kept for an enlarged view beside the main one; 0 where it stands below. */
  readonly beside: number;
  readonly height: number;
  /** Highest picture from the side, sketch of a slope, and stroke of a plot that stands alone. */
  readonly sideHeight: number;
  readonly slopeHeight: number;
  readonly strokeHeight: number;
  readonly detailHeight: number;
  readonly margin: number;
  readonly letters: Letters;
  /** So narrow that what stands side by side elsewhere stands one under the other. */
  readonly narrow: boolean;
  /** Letters are never smaller, whatever room there is: 13 px on a screen. */
  readonly least: number;
  /** Heights are dimensioned on the left; on a narrow sheet they stand on level lines instead. */
  readonly stacked: boolean;
  /** Scales that may be used, as the number 1 is divided by; null where any will do. */
  readonly scales: readonly number[] | null;
}

const onScreen = 25.4 / 96;

function px(letters: Letters): Letters {
  return Object.fromEntries(Object.entries(letters).map(([key, size]) => [key, size * onScreen])) as unknown as Letters;
}

const print: Sheet = {
  width: 186,
  beside: 58,
  height: 90,
  sideHeight: 84,
  slopeHeight: 70,
  strokeHeight: 50,
  detailHeight: 0,
  margin: 3,
  letters: { title: 3.9, note: 3, dimension: 3.5, second: 3, misfit: 6, detailMisfit: 7.5, word: 3.8 },
  narrow: false,
  least: 3,
  stacked: true,
  scales: [2, 2.5, 4, 5, 8, 10, 12.5, 15, 20, 25, 30, 40],
};

const printHalf: Sheet = { ...print, width: 91, beside: 0, height: 62, sideHeight: 50, detailHeight: 60, narrow: true };

/** The sheets: a wide and a narrow screen, the width between the margins of Letter or A4, and what is left of that. */
export const sheets: Readonly<Record<SheetFormat, Sheet>> = {
  desk: {
    width: 820 * onScreen,
    beside: 66,
    height: 96,
    sideHeight: 104,
    slopeHeight: 80,
    strokeHeight: 52,
    detailHeight: 0,
    margin: 4,
    letters: px({ title: 17, note: 14, dimension: 17, second: 14, misfit: 28, detailMisfit: 36, word: 18 }),
    narrow: false,
    least: 13.1 * onScreen,
    stacked: true,
    scales: null,
  },
  phone: {
    width: 390 * onScreen,
    beside: 0,
    height: 80,
    sideHeight: 84,
    slopeHeight: 78,
    strokeHeight: 58,
    detailHeight: 106,
    margin: 3,
    letters: px({ title: 17, note: 15, dimension: 18, second: 15, misfit: 38, detailMisfit: 38, word: 19 }),
    narrow: true,
    least: 13.1 * onScreen,
    stacked: false,
    scales: null,
  },
  print,
  printLow: { ...print, height: 60, sideHeight: 26 },
  printHalf,
  printSmall: { ...printHalf, height: 38, sideHeight: 36 },
};
