import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { chartOf, type Chart } from '@hitchwright/core/handover';
import type { YardDocument } from '@hitchwright/core/records';
import { bundledFonts, chartPdf } from '../src/index.ts';
import { expectPictures } from './goldenPictures.ts';
import { readPdf, textOf, withoutSigns } from './readPdf.ts';
import { longName } from './setups.ts';

const path = fileURLToPath(new URL('../../../examples/sample-yard.json', import.meta.url));
const yard = JSON.parse(readFileSync(path, 'utf8')) as YardDocument;

function chartFor(document: YardDocument): Chart {
  const reading = chartOf(document, { system: 'us', date: '2026-11-26' });
  if (!reading.ok) throw new Error('the yard can’t be charted');
  return reading.chart;
}

/** One tractor, some implements, and as many couplers as asked for. */
function smallYard(couplers: number): YardDocument {
  const [tractor = {}] = yard.tractors;
  const [coupler = {}] = yard.couplers;
  return {
    ...yard,
    tractors: [{ ...tractor, name: longName }],
    couplers: Array.from({ length: couplers }, (_, i) => ({ ...coupler, name: `Зчіплення ${i + 1} 🚜` })),
    implements: yard.implements.slice(0, 3),
  };
}

test('the chart says every pairing of the yard, page by page', async () => {
  const chart = chartFor({ ...yard, tractors: yard.tractors.slice(0, 1), implements: yard.implements.slice(0, 9) });
  const { bytes, pages } = await chartPdf(chart, { fonts: bundledFonts, paper: 'letter' });
  const read = await readPdf(bytes);
  const text = textOf(read);
  const cells = chart.tables.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
  const wanted = [
    ...cells.flatMap(({ verdict, reason, measure }) => [verdict, reason, ...measure]),
    ...chart.notes,
    ...chart.cautions,
  ];
  expect(cells.length).toBeGreaterThan(30);
  expect(wanted.filter((words) => !text.includes(withoutSigns(words)))).toEqual([]);
  expect(read.pages).toBe(pages);
  expect(read.sizes[0]).toEqual([expect.closeTo(279.4, 2), expect.closeTo(215.9, 2)]);
  await expectPictures('chart-letter', bytes);
});

test('couplers that don’t fit beside each other go on under each other, and nothing leaves the frame', async () => {
  const chart = chartFor(smallYard(9));
  const { bytes, blocks } = await chartPdf(chart, { fonts: bundledFonts, paper: 'a4' });
  const { pieces } = await readPdf(bytes);
  const tables = blocks.filter(({ name }) => name === 'table');
  expect(tables.length).toBeGreaterThan(1);
  expect(pieces.filter(({ x, y, width }) => x < 8 || x + width > 297 - 8 || y < 8 || y > 210 - 8)).toEqual([]);
  for (let i = 1; i <= 9; i += 1)
    expect(textOf({ pieces } as never)).toContain(`Зчіплення${i}[1letterthisfontlacks:U+1F69C]`);
});
