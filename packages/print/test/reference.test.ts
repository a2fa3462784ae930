import { expect, test } from 'vitest';
import { qrOf, readLink, readPrinted } from '@hitchwright/core/exchange';
import { fileReference, sheetPdf } from '../src/index.ts';
import { referenceOf } from '../src/sheet/content/reference.ts';
import { readPdf, textOf } from './readPdf.ts';
import { example, judged, usual } from './setups.ts';

const site = 'https://yard.example/check/';

test('the code on paper opens the setup and tells what was printed when', async () => {
  const document = example('box-blade-on-coupler');
  const found = await referenceOf(document, 'withParts', { site, date: '2026-11-26' });
  const address = found.kind === 'code' ? found.address : '';
  const { link, printed } = readPrinted(new URL(address).hash);
  const reading = readLink(link);
  expect(reading.ok && reading.document).toEqual(document);
  expect(printed).toEqual({ date: '2026-11-26', verdict: 'withParts' });
  expect(found).toMatchObject({ squares: qrOf(address) });
  expect(found.kind === 'code' && found.side / found.squares.length).toBeGreaterThanOrEqual(1 / 3 - 1e-9);
});

test('a setup has one reference, however its keys are ordered, and another once a figure is', async () => {
  const document = example('box-blade-direct');
  const turned = Object.fromEntries(Object.entries(document).reverse());
  const changed = { ...document, implement: { ...(document['implement'] as object), mastHeight: 460 } };
  const reference = await fileReference(document);
  expect(reference).toMatch(/^[0-9a-f]{12}$/);
  expect(await fileReference(turned)).toBe(reference);
  expect(await fileReference(changed)).not.toBe(reference);
});

test('a link that scans well is a code, a longer one or one without a page is a reference', async () => {
  const [short, long] = [example('box-blade-on-coupler'), example('tiller-driven-on-coupler')];
  const text = async (document: typeof short, more: object): Promise<string> =>
    textOf(await readPdf((await sheetPdf(judged(document), { ...usual, ...more })).bytes));
  expect(await text(short, { site })).toContain('Scantoopenthissetup');
  expect(await text(long, { site })).toContain(`${await fileReference(long)}Referenceofthesetupfile.Itslinkistoolong`);
  expect(await text(short, {})).toContain(`${await fileReference(short)}Referenceofthesetupfile.Itwasprintedwithout`);
});
