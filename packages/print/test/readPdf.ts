import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One piece of text on a page: where its baseline begins, right and down from the upper left corner [mm]. */
export interface TextPiece {
  readonly page: number;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  readonly upward: boolean;
}

/** A straight line that is drawn, right and down from the upper left corner [mm]. */
export interface DrawnLine {
  readonly page: number;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** A document as an independent reader sees it. */
export interface ReadPdf {
  readonly pages: number;
  readonly sizes: readonly (readonly [number, number])[];
  readonly pieces: readonly TextPiece[];
  readonly title: string | undefined;
  readonly language: string | undefined;
  readonly isTagged: boolean;
  readonly trees: readonly unknown[];
}

const mm = 25.4 / 72;

/** Opens a document with pdf.js; its letters are drawn from the fonts inside it, whatever fonts the machine has. */
export async function opened(bytes: Uint8Array) {
  const data = bytes.slice();
  return getDocument({ data, verbosity: 0, useSystemFonts: false, disableFontFace: true }).promise;
}

/** Reads text, sizes and structure. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const pdf = await opened(bytes);
  const pages = await Promise.all(Array.from({ length: pdf.numPages }, (_, i) => pdf.getPage(i + 1)));
  const pieces = (await Promise.all(pages.map(piecesOf))).flat();
  const trees = await Promise.all(pages.map((page) => page.getStructTree()));
  const { info } = (await pdf.getMetadata()) as { info: { Title?: string; Language?: string } };
  const mark = (await pdf.getMarkInfo()) as { Marked?: boolean } | null;
  return {
    pages: pdf.numPages,
    sizes: pages.map(({ view }) => [(view[2] ?? 0) * mm, (view[3] ?? 0) * mm] as const),
    pieces,
    title: info.Title,
    language: info.Language,
    isTagged: mark?.Marked === true,
    trees,
  };
}

async function piecesOf(page: PDFPageProxy): Promise<TextPiece[]> {
  const { items } = await page.getTextContent();
  const height = page.view[3] ?? 0;
  return items.flatMap((item): TextPiece[] => {
    if (!('str' in item) || item.str === '') return [];
    const [a, b, , , x, y] = item.transform as [number, number, number, number, number, number];
    return [
      {
        page: page.pageNumber,
        text: item.str,
        x: x * mm,
        y: (height - y) * mm,
        width: item.width * mm,
        size: Math.hypot(a, b) * mm,
        upward: Math.abs(b) > Math.abs(a),
      },
    ];
  });
}

/** Text with its spaces taken out and fractions written plainly, to compare whatever the lines. */
export function squeezed(text: string): string {
  return text
    .normalize('NFC')
    .replaceAll('⁄', '/')
    .replace(/[\s\u00a0]/g, '');
}

/** All text of a document, squeezed, with the letters taken out that are drawn as signs. */
export function textOf({ pieces }: ReadPdf): string {
  return squeezed(pieces.map(({ text }) => text).join(''));
}

/** A text as `textOf` has it: drawn signs are no letters. */
export function withoutSigns(text: string): string {
  return squeezed(text).replace(/[≈≤≥→⌀]/g, '');
}

/** Every straight line that is stroked or filled on a page. */
export async function linesOf(bytes: Uint8Array): Promise<DrawnLine[]> {
  const pdf = await opened(bytes);
  const found: DrawnLine[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) found.push(...(await pageLines(await pdf.getPage(number))));
  return found;
}

type Matrix = readonly [number, number, number, number, number, number];

async function pageLines(page: PDFPageProxy): Promise<DrawnLine[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const height = page.view[3] ?? 0;
  const lines: DrawnLine[] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  fnArray.forEach((operator, i) => {
    const args = argsArray[i] as unknown[] | null;
    if (operator === OPS.save) kept.push(matrix);
    else if (operator === OPS.restore) matrix = kept.pop() ?? matrix;
    else if (operator === OPS.transform) matrix = times(matrix, args as unknown as Matrix);
    else if (operator === OPS.constructPath)
      lines.push(...pathLines(args as [number[], number[]], { matrix, height, page: page.pageNumber }));
  });
  return lines;
}

interface On {
  readonly matrix: Matrix;
  readonly height: number;
  readonly page: number;
}

const coordinates: Readonly<Record<number, number>> = {
  [OPS.moveTo]: 2,
  [OPS.lineTo]: 2,
  [OPS.curveTo]: 6,
  [OPS.curveTo2]: 4,
  [OPS.curveTo3]: 4,
  [OPS.closePath]: 0,
  [OPS.rectangle]: 4,
};

function pathLines([operators, values]: [number[], number[]], on: On): DrawnLine[] {
  const lines: DrawnLine[] = [];
  let at = 0;
  let from: readonly [number, number] = [0, 0];
  for (const operator of operators) {
    const count = coordinates[operator] ?? 0;
    const end = placed(values.slice(at + count - 2, at + count), on);
    if (operator === OPS.lineTo) lines.push({ page: on.page, from, to: end });
    if (count > 0) from = end;
    at += count;
  }
  return lines;
}

function placed([x = 0, y = 0]: number[], { matrix: [a, b, c, d, e, f], height }: On): readonly [number, number] {
  return [(a * x + c * y + e) * mm, (height - (b * x + d * y + f)) * mm];
}

function times([a, b, c, d, e, f]: Matrix, [a2, b2, c2, d2, e2, f2]: Matrix): Matrix {
  return [a * a2 + c * b2, b * a2 + d * b2, a * c2 + c * d2, b * c2 + d * d2, a * e2 + c * f2 + e, b * e2 + d * f2 + f];
}
