/** Sheets of paper by name. */
export type PaperName = 'letter' | 'a4';

/** A sheet of paper and the frame on it [mm]. */
export interface Paper {
  readonly name: PaperName;
  readonly width: number;
  readonly height: number;
}

/** Width of the frame: what drawings for paper are laid out for [mm]. */
export const frameWidth = 186;

/** Room above and below the frame [mm]. */
export const frameMargin = 8;

/** The sheets that can be printed on [mm]. */
export const papers: Readonly<Record<PaperName, Paper>> = {
  letter: { name: 'letter', width: 215.9, height: 279.4 },
  a4: { name: 'a4', width: 210, height: 297 },
};

/** A box on a page, from its upper left corner [mm]. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The frame of a sheet, in the middle of it. */
export function frameOf({ width, height }: Paper): Box {
  return { x: (width - frameWidth) / 2, y: frameMargin, width: frameWidth, height: height - 2 * frameMargin };
}
