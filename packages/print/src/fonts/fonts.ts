/** The two families that are bundled. */
export type FontFamily = 'source-sans-3' | 'national-park';

/** Weights that are set. */
export type Weight = 400 | 500 | 600 | 700;

/** One file of a family: the letters of one script at one weight. */
export interface FontFile {
  readonly family: FontFamily;
  readonly subset: string;
  readonly weight: Weight;
}

/** Hands over the bytes of a font file: plain, which is quickest, or in WOFF. */
export type Fonts = (file: FontFile) => Uint8Array;

const scripts = ['latin', 'latin-ext', 'vietnamese', 'greek', 'greek-ext', 'cyrillic', 'cyrillic-ext'] as const;

/** Every file of a family; the drawing's own face is drawn for Latin only. */
export const subsetsOf: Readonly<Record<FontFamily, readonly string[]>> = {
  'source-sans-3': scripts,
  'national-park': scripts.slice(0, 3),
};
