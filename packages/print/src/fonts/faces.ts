import type PDFDocument from 'pdfkit';
import { subsetsOf, type FontFamily, type Fonts, type Weight } from './fonts.ts';

/** What letters are set in: words in one family, the lettering of drawings in the other, whose missing scripts the first lends. */
export interface Style {
  readonly family: FontFamily;
  readonly weight: Weight;
  /** Size of the letters' body [paper mm]. */
  readonly size: number;
}

/** One opened font file. */
export interface Face {
  readonly key: string;
  readonly has: (code: number) => boolean;
  /** Figures of one width, which the drawing's face has only on demand. */
  readonly features: PDFKit.Mixins.OpenTypeFeatures[];
}

const pointsPerMm = 72 / 25.4;

/** What pdfkit keeps of the font in use; its types leave it out. */
interface WithFont {
  readonly _font: { readonly font: { readonly hasGlyphForCodePoint: (code: number) => boolean } };
}

/** The faces of one document, opened as they are wanted. */
export class Faces {
  private readonly opened = new Map<string, Face>();
  private readonly chosen = new Map<string, Face | null>();
  private readonly widths = new Map<string, number>();

  constructor(
    private readonly doc: typeof PDFDocument.prototype,
    private readonly fonts: Fonts,
  ) {}

  /** The face that has a letter; null where none has it. */
  faceOf(code: number, { family, weight }: Style): Face | null {
    const key = `${family}-${weight}-${code}`;
    const known = this.chosen.get(key);
    if (known !== undefined) return known;
    const face = this.firstWith(code, this.candidates(family, weight));
    this.chosen.set(key, face);
    return face;
  }

  /** Width of a text that one face has all letters of [mm]. */
  width(text: string, face: Face, size: number): number {
    const key = `${face.key}:${text}`;
    const known = this.widths.get(key);
    if (known !== undefined) return known * size;
    const perSize = this.doc.font(face.key).fontSize(1000).widthOfString(text, { features: face.features }) / 1000;
    this.widths.set(key, perSize);
    return perSize * size;
  }

  /** Makes a face the one that is written with. */
  use(face: Face, size: number): void {
    this.doc.font(face.key).fontSize(size * pointsPerMm);
  }

  /** Files are opened one by one, until one has the letter. */
  private firstWith(code: number, faces: Iterable<Face>): Face | null {
    for (const face of faces) if (face.has(code)) return face;
    return null;
  }

  private *candidates(family: FontFamily, weight: Weight): Generator<Face> {
    for (const subset of subsetsOf[family]) yield this.open(family, subset, weight);
    if (family !== 'source-sans-3') yield* this.candidates('source-sans-3', weight);
  }

  private open(family: FontFamily, subset: string, weight: Weight): Face {
    const key = `${family}-${subset}-${weight}`;
    const known = this.opened.get(key);
    if (known !== undefined) return known;
    const bytes = this.fonts({ family, subset, weight });
    this.doc.registerFont(key, bytes as Buffer);
    const { font } = (this.doc.font(key) as unknown as WithFont)._font;
    const face: Face = {
      key,
      has: (code) => font.hasGlyphForCodePoint(code),
      features: family === 'national-park' ? ['tnum'] : [],
    };
    this.opened.set(key, face);
    return face;
  }
}
