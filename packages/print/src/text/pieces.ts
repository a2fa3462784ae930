import { fractionRise, runsOf } from '@hitchwright/core/drawings';
import type { Face, Faces, Style } from '../fonts/faces.ts';
import { bound, cleaned, spelledOut } from './cleaned.ts';
import { isSign, signWidth, type SignName } from './signs.ts';

/** Letters of one face and size, to be written at one go. */
export interface Glyphs {
  readonly kind: 'glyphs';
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  /** How far the baseline is raised [mm]. */
  readonly rise: number;
}

/** A sign that the fonts lack and that is drawn. */
export interface Sign {
  readonly kind: 'sign';
  readonly sign: SignName;
  readonly size: number;
}

/** A fraction set as one; `said` is what it reads as in plain text. */
export interface Fraction {
  readonly kind: 'fraction';
  readonly parts: readonly Glyphs[];
  readonly said: string;
}

/** Anything that a line is made of. */
export type Piece = Glyphs | Sign | Fraction;

/** A space between two words, where a line may end. */
export interface Space {
  readonly kind: 'space';
  readonly width: number;
  readonly face: Face;
  readonly size: number;
}

/** A text in one style. */
export interface Span {
  readonly text: string;
  readonly style: Style;
  /** Figures of fractions against the rest. */
  readonly fractions: number;
}

/** Width of a piece [mm]. */
export function pieceWidth(faces: Faces, piece: Piece): number {
  if (piece.kind === 'sign') return signWidth(piece.sign) * piece.size;
  if (piece.kind === 'fraction') return piece.parts.reduce((sum, part) => sum + pieceWidth(faces, part), 0);
  return faces.width(piece.text, piece.face, piece.size);
}

/** A text as pieces and spaces: its fractions set as fractions, what the fonts lack drawn or spelled out. */
export function piecesOf(faces: Faces, { text, style, fractions }: Span): (Piece | Space)[] {
  const found: (Piece | Space)[] = [];
  let open: Glyphs[] = [];
  for (const { part, text: run } of runsOf(bound(cleaned(text)))) {
    if (part === 'plain') {
      found.push(...plainPieces(faces, run, style));
      continue;
    }
    const size = part === 'slash' ? style.size : style.size * fractions;
    const rise = part === 'over' ? fractionRise * style.size : 0;
    open = [...open, ...glyphsOf(faces, run, { ...style, size }, rise)];
    if (part === 'under') {
      found.push(fractionOf(open, found.at(-1)));
      open = [];
    }
  }
  return found;
}

/** After a whole number the fraction reads with a space before it. */
function fractionOf(parts: readonly Glyphs[], before: Piece | Space | undefined): Fraction {
  const plain = parts.map(({ text }) => (text === '\u2044' ? '/' : text)).join('');
  const follows = before?.kind === 'glyphs' && /\d$/.test(before.text);
  return { kind: 'fraction', parts, said: follows ? ` ${plain}` : plain };
}

function plainPieces(faces: Faces, text: string, style: Style): (Piece | Space)[] {
  return text
    .split(/( +)/)
    .filter((word) => word !== '')
    .flatMap((word) => (word.startsWith(' ') ? [spaceOf(faces, style)] : wordPieces(faces, word, style)));
}

function spaceOf(faces: Faces, style: Style): Space {
  const face = faceOfLetter(faces, ' ', style);
  return { kind: 'space', width: faces.width(' ', face, style.size), face, size: style.size };
}

function faceOfLetter(faces: Faces, letter: string, style: Style): Face {
  const face = faces.faceOf(letter.codePointAt(0) ?? 0, style);
  if (face === null) throw new Error(`invariant: no font has ${JSON.stringify(letter)}`);
  return face;
}

/** Letters by turns: those that a face has, signs that are drawn, and what is spelled out. */
function wordPieces(faces: Faces, word: string, style: Style): (Piece | Space)[] {
  const pieces: (Piece | Space)[] = [];
  let missing: string[] = [];
  const spell = (): void => {
    if (missing.length > 0) pieces.push(...plainPieces(faces, spelledOut(missing), style));
    missing = [];
  };
  for (const letter of word) {
    const face = faces.faceOf(letter.codePointAt(0) ?? 0, style);
    if (face === null && !isSign(letter)) {
      missing.push(letter);
      continue;
    }
    spell();
    if (face === null) pieces.push({ kind: 'sign', sign: letter as SignName, size: style.size });
    else addLetter(pieces, letter, face, style.size);
  }
  spell();
  return pieces;
}

/** A mark that stands on the letter before stays with its face. */
function addLetter(pieces: (Piece | Space)[], letter: string, face: Face, size: number): void {
  const last = pieces.at(-1);
  const joins =
    last?.kind === 'glyphs' && (last.face === face || (/\p{M}/u.test(letter) && last.face.has(codeOf(letter))));
  if (joins) pieces[pieces.length - 1] = { ...last, text: last.text + letter };
  else pieces.push({ kind: 'glyphs', text: letter, face, size, rise: 0 });
}

function codeOf(letter: string): number {
  return letter.codePointAt(0) ?? 0;
}

function glyphsOf(faces: Faces, text: string, style: Style, rise: number): Glyphs[] {
  return [{ kind: 'glyphs', text, face: faceOfLetter(faces, text, style), size: style.size, rise }];
}
