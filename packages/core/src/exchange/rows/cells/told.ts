import type { InputError } from '../../../records/index.ts';

/** What kind of thing was guessed or told. */
export type ToldAbout =
  | 'heading'
  | 'unit'
  | 'approximate'
  | 'range'
  | 'points'
  | 'formula'
  | 'spelling'
  | 'separator'
  | 'twice'
  | 'total'
  | 'stray'
  | 'duplicate'
  | 'grade';

/** One thing that was taken for something without its having been said, in a sentence. */
export interface Told {
  readonly about: ToldAbout;
  /** What it was taken for. */
  readonly taken: string;
  readonly sentence: string;
}

/** What is wrong with one cell; where it stands is added by the row. */
export type CellError = Pick<InputError, 'code' | 'expected' | 'got' | 'hint'>;
