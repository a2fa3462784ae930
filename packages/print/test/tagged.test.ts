import { expect, test } from 'vitest';
import { sheetPdf } from '../src/index.ts';
import { readPdf } from './readPdf.ts';
import { example, judged, usual } from './setups.ts';

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

function nodesOf(tree: unknown): Node[] {
  const node = tree as Node | null;
  return node === null ? [] : [node, ...(node.children ?? []).flatMap(nodesOf)];
}

test('the sheet is tagged: title, language, headings, paragraphs, drawings told in words', async () => {
  const one = judged(example('tiller-driven-on-coupler'));
  const { bytes } = await sheetPdf(one, usual);
  const read = await readPdf(bytes);
  const nodes = read.trees.flatMap(nodesOf);
  const count = (role: string): number => nodes.filter((node) => node.role === role).length;
  expect(read).toMatchObject({ title: 'Wickset 60-in tiller, Ostrey 35, Pellin U-28', language: 'en', isTagged: true });
  expect(count('H1')).toBe(1);
  expect(count('H2')).toBeGreaterThan(5);
  expect(count('P')).toBeGreaterThan(20);
  const figures = nodes.filter(({ role }) => role === 'Figure');
  expect(figures).toHaveLength(3);
  for (const { alt } of figures) expect(alt?.length).toBeGreaterThan(200);
});

test('both families are embedded, and nothing but letters in use', async () => {
  const { bytes } = await sheetPdf(judged(example('box-blade-on-coupler')), usual);
  const file = Buffer.from(bytes).toString('latin1');
  const fonts = [...file.matchAll(/\/BaseFont \/[A-Z]{6}\+([\w-]+)/g)].map(([, name = '']) => name);
  expect(new Set(fonts.map((name) => name.split('-')[0]))).toEqual(new Set(['SourceSans3', 'NationalPark']));
  expect(file.match(/\/FontFile2 /g)?.length).toBeGreaterThan(4);
  expect(file).not.toContain('/Helvetica');
});
