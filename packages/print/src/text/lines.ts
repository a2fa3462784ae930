import type { Faces } from '../fonts/faces.ts';
import { pieceWidth, piecesOf, type Glyphs, type Piece, type Space, type Span } from './pieces.ts';

/** One line of text, ready to be written. */
export interface Line {
  readonly pieces: readonly Piece[];
}

/** Width of a line as it is written [mm]. */
export function lineWidth(faces: Faces, { pieces }: Line): number {
  return widthOfAll(faces, pieces);
}

interface Word {
  readonly space: Space | null;
  readonly pieces: readonly Piece[];
}

/**
 * Sets spans one after the other in lines no wider than given. A word that is wider than a line is cut, never lost.
 *
 * @param faces the fonts of the document [record]
 * @param spans texts in their styles [list]
 * @param width room for a line [mm]
 * @returns the lines, none for an empty text [list]
 */
export function linesOf(faces: Faces, spans: readonly Span[], width: number): Line[] {
  const words = wordsOf(spans.flatMap((span) => piecesOf(faces, span)));
  const rows: Word[][] = [];
  let used = 0;
  for (const word of words.flatMap((one) => fitting(faces, one, width))) {
    const [space, own] = [word.space?.width ?? 0, widthOfAll(faces, word.pieces)];
    const row = rows.at(-1);
    const fits = row !== undefined && used + space + own <= width + tolerance;
    if (fits) row.push(word);
    else rows.push([{ ...word, space: null }]);
    used = fits ? used + space + own : own;
  }
  return rows.map(lineOf);
}

/** One line, however long. */
export function oneLine(faces: Faces, spans: readonly Span[]): Line {
  return linesOf(faces, spans, Infinity)[0] ?? { pieces: [] };
}

const tolerance = 1e-6;

function widthOfAll(faces: Faces, pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + pieceWidth(faces, piece), 0);
}

/** Pieces with no space between them are one word. */
function wordsOf(pieces: readonly (Piece | Space)[]): Word[] {
  const words: { space: Space | null; pieces: Piece[] }[] = [];
  let space: Space | null = null;
  let isNew = true;
  for (const piece of pieces) {
    if (piece.kind === 'space') {
      space ??= piece;
      isNew = true;
    } else if (isNew) {
      words.push({ space, pieces: [piece] });
      [space, isNew] = [null, false];
    } else words.at(-1)?.pieces.push(piece);
  }
  return words;
}

/** The word, or its parts where it is wider than a line. */
function fitting(faces: Faces, word: Word, width: number): Word[] {
  if (widthOfAll(faces, word.pieces) <= width) return [word];
  const parts: Piece[][] = [[]];
  let used = 0;
  for (const piece of word.pieces.flatMap(letters)) {
    const own = pieceWidth(faces, piece);
    if (used + own > width && used > 0) {
      parts.push([]);
      used = 0;
    }
    parts.at(-1)?.push(piece);
    used += own;
  }
  return parts.map((pieces, i): Word => ({ space: i === 0 ? word.space : null, pieces: joined(pieces) }));
}

function letters(piece: Piece): Piece[] {
  if (piece.kind !== 'glyphs') return [piece];
  return [...piece.text].map((text): Glyphs => ({ ...piece, text }));
}

function lineOf(row: readonly Word[]): Line {
  return {
    pieces: joined(row.flatMap(({ space, pieces }) => (space === null ? pieces : [spaceGlyphs(space), ...pieces]))),
  };
}

function spaceGlyphs({ face, size }: Space): Glyphs {
  return { kind: 'glyphs', text: ' ', face, size, rise: 0 };
}

/** Neighbours of one face are written at one go, so that whoever copies the text gets whole words. */
function joined(pieces: readonly Piece[]): Piece[] {
  const result: Piece[] = [];
  for (const piece of pieces) {
    const last = result.at(-1);
    if (last?.kind === 'glyphs' && piece.kind === 'glyphs' && isAlike(last, piece))
      result[result.length - 1] = { ...last, text: last.text + piece.text };
    else result.push(piece);
  }
  return result;
}

function isAlike(a: Glyphs, b: Glyphs): boolean {
  return a.face === b.face && a.size === b.size && a.rise === b.rise;
}
