import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { sheetPdf } from '../src/index.ts';
import { example, judged, samples, usual } from './setups.ts';

const folder = fileURLToPath(new URL('../../../examples/setups', import.meta.url));

const examples = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.slice(0, -'.json'.length));

/** Made-up sheets that take a third page, each with its reason. */
const longer: Readonly<Record<string, string>> = {
  'long-names': 'names of 200 letters',
  'forty-parts': 'forty parts to choose from',
  'all-measured': 'every figure was signed for',
  hostile: 'names of a hundred letters that no font has',
};

const all = { ...Object.fromEntries(examples.map((name) => [name, () => example(name)])), ...samples };

/** A code is scanned off the sheet, and somebody is named on it: the fullest that a sheet gets. */
const full = { ...usual, site: 'https://yard.example/check/', customer: 'Riverside Farm', issuer: 'Holm Implements' };

describe.each(Object.entries(all))('%s', (name, document) => {
  test.each(['letter', 'a4'] as const)('takes one or two pages of %s, or has a reason', async (paper) => {
    const one = judged(document());
    const { pages } = await sheetPdf(one, { ...full, paper, system: paper === 'a4' ? 'metric' : 'us' });
    expect(pages).toBeLessThanOrEqual(name in longer ? 3 : 2);
  });
});

test('whoever is said to need more pages is printed here', () => {
  expect(Object.keys(longer).filter((name) => !(name in all))).toEqual([]);
});
