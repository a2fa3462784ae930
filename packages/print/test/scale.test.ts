import { expect, test } from 'vitest';
import { rearView } from '@hitchwright/core/drawings';
import { bundledFonts, drawingPdf, sheetPdf } from '../src/index.ts';
import { linesOf, readPdf, type ReadPdf } from './readPdf.ts';
import { example, judged, usual } from './setups.ts';

/** Lengths that level lines have on a page [mm]. */
async function levelLengths(bytes: Uint8Array, page = 1): Promise<number[]> {
  const lines = (await linesOf(bytes)).filter(
    (line) => line.page === page && Math.abs(line.from[1] - line.to[1]) < 1e-3,
  );
  return lines.map(({ from, to }) => Math.abs(to[0] - from[0]));
}

const isNear = (wanted: number) => (length: number) => Math.abs(length - wanted) < 0.2;

/** The scale that the document states first, as whoever holds it reads it. */
function statedScale({ pieces }: ReadPdf): number {
  const said = pieces.map(({ text }) => /^Scale 1:(\d+(?:\.\d+)?)$/.exec(text)?.[1]).find((text) => text !== undefined);
  return Number(said);
}

test.each(['letter', 'a4'] as const)(
  'on the sheet, what is dimensioned is as long as its scale says, on %s',
  async (paper) => {
    const one = judged(example('box-blade-on-coupler'));
    const { bytes } = await sheetPdf(one, { ...usual, paper });
    const read = await readPdf(bytes);
    const scale = statedScale(read);
    const lengths = await levelLengths(bytes);
    // The setup says: hooks 712 mm apart, shoulders 661 mm, and a scale bar of 12 in.
    expect(scale).toBe(10);
    for (const wanted of [712, 661]) expect(lengths.filter(isNear(wanted / scale))).not.toHaveLength(0);
    expect(read.sizes[0]).toEqual(
      paper === 'a4'
        ? [expect.closeTo(210, 2), expect.closeTo(297, 2)]
        : [expect.closeTo(215.9, 2), expect.closeTo(279.4, 2)],
    );
  },
);

test('a drawing on its own sheet keeps the scale that its title block states', async () => {
  const { setup, answer } = judged(example('flail-measure-first'));
  const scene = rearView(setup, answer, { system: 'metric', format: 'print' });
  const bytes = await drawingPdf(scene, { fonts: bundledFonts, paper: 'a4', date: '2026-11-26' });
  const scale = statedScale(await readPdf(bytes));
  expect(scale).toBe(8);
  expect((await levelLengths(bytes)).filter(isNear(712 / scale))).not.toHaveLength(0);
});

test('a drawing that is larger than the paper is refused, not shrunk', async () => {
  const { setup, answer } = judged(example('box-blade-direct'));
  const scene = rearView(setup, answer, { system: 'us', format: 'print' });
  const huge = { ...scene, scale: scene.scale / 4 };
  await expect(drawingPdf(huge, { fonts: bundledFonts, paper: 'a4', date: '2026-11-26' })).rejects.toThrow(RangeError);
});
