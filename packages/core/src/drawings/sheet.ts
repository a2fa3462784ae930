/** Where a drawing will be looked at. */
export type Format = 'desk' | 'phone' | 'print';

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
  readonly format: Format;
  readonly width: number;
  /** Width kept for an enlarged view beside the main one; 0 where it stands below. */
  readonly beside: number;
  readonly height: number;
  readonly detailHeight: number;
  readonly margin: number;
  readonly letters: Letters;
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

/** The three sheets: a wide and a narrow screen, and the width between the margins of Letter or A4. */
export const sheets: Readonly<Record<Format, Sheet>> = {
  desk: {
    format: 'desk',
    width: 820 * onScreen,
    beside: 66,
    height: 96,
    detailHeight: 0,
    margin: 4,
    letters: px({ title: 17, note: 14, dimension: 17, second: 14, misfit: 28, detailMisfit: 36, word: 18 }),
    least: 13.1 * onScreen,
    stacked: true,
    scales: null,
  },
  phone: {
    format: 'phone',
    width: 390 * onScreen,
    beside: 0,
    height: 80,
    detailHeight: 106,
    margin: 3,
    letters: px({ title: 17, note: 15, dimension: 18, second: 15, misfit: 38, detailMisfit: 38, word: 19 }),
    least: 13.1 * onScreen,
    stacked: false,
    scales: null,
  },
  print: {
    format: 'print',
    width: 186,
    beside: 58,
    height: 90,
    detailHeight: 0,
    margin: 3,
    letters: { title: 3.9, note: 3, dimension: 3.5, second: 3, misfit: 6, detailMisfit: 7.5, word: 3.8 },
    least: 3,
    stacked: true,
    scales: [2, 2.5, 4, 5, 8, 10, 12.5, 15, 20, 25, 30, 40],
  },
};
