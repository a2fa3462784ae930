import { describe, expect, test } from 'vitest';
import { bundledFonts, sheetPdf } from '../src/index.ts';
import { openPdf } from '../src/pdf/openPdf.ts';
import { papers } from '../src/pdf/paper.ts';
import { oneLine } from '../src/text/lines.ts';
import { readPdf, squeezed, textOf } from './readPdf.ts';
import { example, judged, renamed, usual } from './setups.ts';

/** A text as one line of a page, in both families, read back. */
async function printed(text: string): Promise<string[]> {
  return Promise.all(
    (['source-sans-3', 'national-park'] as const).map(async (family) => {
      const pdf = openPdf(bundledFonts, papers.a4, { title: text, date: '2026-11-26' });
      pdf.addPage();
      const line = oneLine(pdf.ink.faces, [{ text, style: { family, weight: 400, size: 3 }, fractions: 0.85 }]);
      pdf.tags.leaf('P', () => pdf.ink.line(line, [10, 20]));
      return textOf(await readPdf(await pdf.close()));
    }),
  );
}

describe('letters', () => {
  test.each([
    ['Latin', 'Grúa ñandú Œuvre Straße'],
    ['Latin, extended', 'Łąka žluťoučký kůň İğdır Ðà Nẵng'],
    ['Greek', 'Δράκων τρακτέρ Ωμέγα'],
    ['Greek, extended', 'Ἀνέστη ῥάβδος ᾧ'],
    ['Cyrillic', 'Грабли Ёлка Зчіплення Їжак ґрунт'],
    ['Cyrillic, extended', 'Ӂӂ ѣ'],
    ['combined', 'e\u0301 a\u0308'],
    ['figures', '20 1/2 in ± 3/16, 45°, 7 × 8'],
  ])('of %s are printed as they are', async (_, text) => {
    for (const read of await printed(text)) expect(read).toBe(squeezed(text));
  });

  test.each([
    ['Chinese', '中文犁', '[3 letters this font lacks: U+4E2D U+6587 U+7281]'],
    ['Arabic', 'محراث', '[5 letters this font lacks: U+0645 U+062D U+0631 U+0627 U+062B]'],
    ['Hebrew', 'מ', '[1 letter this font lacks: U+05DE]'],
    ['Devanagari', 'हल', '[2 letters this font lacks: U+0939 U+0932]'],
    ['emoji', '🚜', '[1 letter this font lacks: U+1F69C]'],
    ['many', '犁'.repeat(9), `[9 letters this font lacks: ${'U+7281 '.repeat(6)}and 3 more]`],
    ['half a pair', 'a\ud83d', 'a[1 letter this font lacks: U+D83D]'],
  ])('of %s are named, never boxes', async (_, text, said) => {
    for (const read of await printed(text)) expect(read).toBe(squeezed(said));
  });

  test('that turn text round or act are left out, line ends are spaces', async () => {
    for (const read of await printed('a\u202eb\u0007c\nd\u200be')) expect(read).toBe('abcde');
  });

  test('of drawn signs are drawn and said', async () => {
    for (const read of await printed('≈ 5 ≤ 6 ≥ 4 → ⌀ 7')) expect(read).toBe('5647');
  });

  test('no glyph of a sheet is the one that stands for none', async () => {
    const names = { tractor: '犁 Δράκων', implement: 'Ёлка 🚜', coupler: 'محراث' };
    const { bytes } = await sheetPdf(judged(renamed(example('auger-on-coupler'), names)), {
      ...usual,
      customer: 'हल',
      issuer: '中',
    });
    const text = textOf(await readPdf(bytes));
    expect(text).toContain('[1letterthisfontlacks:U+1F69C]');
    expect(text).toContain('[2lettersthisfontlacks:U+0939U+0932]');
    expect(text).not.toMatch(/[\u0000\ufffd]/);
  });
});
