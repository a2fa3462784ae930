import type { UnitSystem } from '../../units/index.ts';
import type { Format } from '../sheet.ts';

/** The sheet of one drawing [paper mm]. It keeps its size from figure to figure, so that nothing jumps under a thumb. */
export interface Plate {
  readonly format: Format;
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  /** Sizes of lettering: names and mistakes, and the reading. */
  readonly letters: { readonly note: number; readonly reading: number };
  /** Half the width of the tape. */
  readonly tape: number;
  /** Radius of the magnifier. */
  readonly lens: number;
}

const onScreen = 25.4 / 96;

/** A phone, a desk beside its figures, and on paper two beside each other between the margins of Letter or A4. */
export const plates: Readonly<Record<Format, Plate>> = {
  phone: {
    format: 'phone',
    width: 390 * onScreen,
    height: 300 * onScreen,
    margin: 2.4,
    letters: { note: 14.5 * onScreen, reading: 24 * onScreen },
    tape: 2.2,
    lens: 11.5,
  },
  desk: {
    format: 'desk',
    width: 820 * onScreen,
    height: 430 * onScreen,
    margin: 4,
    letters: { note: 15 * onScreen, reading: 28 * onScreen },
    tape: 2.6,
    lens: 19,
  },
  print: {
    format: 'print',
    width: 90,
    height: 70,
    margin: 2,
    letters: { note: 3.1, reading: 5.2 },
    tape: 1.9,
    lens: 10.5,
  },
};

/** What a drawing is drawn with: its plate, its units, and how many of the sketch's millimetres one millimetre of paper shows. */
export interface Drawn {
  readonly plate: Plate;
  readonly system: UnitSystem;
  readonly perPaper: number;
}
