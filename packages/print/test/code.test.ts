import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { assess } from '@hitchwright/core/assess';
import { printedLinkOf, readLink, readPrinted } from '@hitchwright/core/exchange';
import { fileReference, sheetPdf } from '../src/index.ts';
import { picturesOf, pixelsOf, type Picture } from './pictures.ts';
import { readPdf, textOf } from './readPdf.ts';
import { example, judged, usual } from './setups.ts';

const site = 'https://yard.example/check/';
/**
 * How finely pages are scanned [dots per inch]: three dots for a square of a third of a millimetre. With fewer, this reader sees a code or
 * misses it by where the dots happen to fall: at 200 it read six of ten scans.
 */
const dpi = 240;

/** What the codes on the pages say, read as a phone reads them: from the picture alone. What the reader takes for a code that says nothing is none. */
function codesOn(pages: readonly Picture[]): string[] {
  return pages.flatMap((page) => {
    const found = jsQR(pixelsOf(page), page.width, page.height, { inversionAttempts: 'dontInvert' });
    return found === null || found.data === '' ? [] : [found.data];
  });
}

test.each([
  ['box-blade-on-coupler', 'letter'],
  ['box-blade-direct', 'a4'],
] as const)('the code of %s is read off its printed sheet and opens what was printed', async (name, paper) => {
  const document = example(name);
  const one = judged(document);
  const { verdict } = one.answer;
  const { bytes } = await sheetPdf(one, { ...usual, paper, site });
  const address = `${site}#${printedLinkOf(document, { date: '2026-11-26', verdict })}`;
  for (const push of [0, 0.5]) expect(codesOn(await picturesOf(bytes, { dpi, push }))).toEqual([address]);
  const { link, printed } = readPrinted(new URL(address).hash);
  expect(printed).toEqual({ date: '2026-11-26', verdict });
  const reading = readLink(link);
  const opened = reading.ok ? reading.document : {};
  expect(opened).toEqual(document);
  expect(assess(opened)).toMatchObject({ answer: { verdict } });
});

test('a sheet whose link is too long bears no code; the reference of its file shows on it and is that of no other', async () => {
  const document = example('tiller-driven-on-coupler');
  const reference = await fileReference(document);
  const { bytes } = await sheetPdf(judged(document), { ...usual, site });
  const pages = await picturesOf(bytes, { dpi });
  expect(codesOn(pages)).toEqual([]);
  const read = await readPdf(bytes);
  expect(textOf(read)).toContain('Itslinkistoolongforacode');
  const [found, ...others] = read.pieces.filter(({ text }) => text === reference);
  expect(others).toEqual([]);
  if (found === undefined) throw new Error('the reference stands nowhere');
  expect(darkest(pages[found.page - 1] as Picture, found)).toBeLessThan(30);
  expect(await fileReference(example('tiller-driven-direct'))).not.toBe(reference);
});

/** The darkest grey where a piece of text stands. */
function darkest({ greys, width }: Picture, piece: { x: number; y: number; width: number; size: number }): number {
  const dots = (mm: number): number => Math.round((mm * dpi) / 25.4);
  const rows = Array.from({ length: dots(0.7 * piece.size) }, (_, i) => dots(piece.y) - i);
  return Math.min(
    ...rows.map((row) =>
      Math.min(...greys.subarray(row * width + dots(piece.x), row * width + dots(piece.x + piece.width))),
    ),
  );
}
