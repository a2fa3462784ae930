import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { balloonsOf } from '@hitchwright/core/drawings';
import { openFindings } from '@hitchwright/core/words';
import { sheetPdf } from '../src/index.ts';
import { example, judged, samples, usual } from './setups.ts';

const folder = fileURLToPath(new URL('../../../examples/setups', import.meta.url));

const examples = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.slice(0, -'.json'.length));

const thirdDrawing = 'driven: the view from above is a third drawing, and the shaft brings findings of its own';

const manyNotes = 'sixteen findings with a number, nine or more of them open: each has its sentence';

/** Sheets that take a third page, each with its reason; a fourth only where it says so. */
const longer: Readonly<Record<string, { readonly pages?: number; readonly on?: 'letter'; readonly why: string }>> = {
  'auger-on-coupler': { on: 'letter', why: manyNotes },
  'flail-measure-first': { on: 'letter', why: manyNotes },
  'chipper-on-small-tractor': { why: thirdDrawing },
  'snow-blower-direct': { why: thirdDrawing },
  'stone-burier-direct': { why: thirdDrawing },
  'tiller-driven-direct': { why: thirdDrawing },
  'tiller-driven-on-coupler': { why: thirdDrawing },
  'long-names': { pages: 4, why: `${thirdDrawing}, and names of 200 letters` },
  'forty-parts': { why: 'forty parts to choose from' },
  'all-measured': { why: 'every figure was signed for' },
  hostile: { why: 'names of a hundred letters that no font has' },
};

const all = { ...Object.fromEntries(examples.map((name) => [name, () => example(name)])), ...samples };

/** A code is scanned off the sheet, and somebody is named on it: the fullest that a sheet gets. */
const full = { ...usual, site: 'https://yard.example/check/', customer: 'Riverside Farm', issuer: 'Holm Implements' };

describe.each(Object.entries(all))('%s', (name, document) => {
  test.each(['letter', 'a4'] as const)('takes one or two pages of %s, or has a reason', async (paper) => {
    const one = judged(document());
    const { pages, blocks } = await sheetPdf(one, { ...full, paper, system: paper === 'a4' ? 'metric' : 'us' });
    const reason = longer[name];
    const isLonger = reason !== undefined && (reason.on === undefined || reason.on === paper);
    expect(pages).toBeLessThanOrEqual(isLonger ? (reason.pages ?? 3) : 2);
    if (reason?.why === manyNotes) {
      expect(balloonsOf(one.answer).size).toBeGreaterThanOrEqual(16);
      expect(openFindings(one.answer).filter(({ status }) => status === 'undecided').length).toBeGreaterThanOrEqual(9);
    }
    if (reason?.why === thirdDrawing) expect(blocks.filter((block) => block.name === 'drawing')).toHaveLength(3);
  });
});

test('whoever is said to need more pages is printed here', () => {
  expect(Object.keys(longer).filter((name) => !(name in all))).toEqual([]);
});
