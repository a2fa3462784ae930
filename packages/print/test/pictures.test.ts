import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { rearView, topView, type Scene } from '@hitchwright/core/drawings';
import { bundledFonts, drawingPdf, handOver, sheetPdf, type SheetOptions, type SheetPdf } from '../src/index.ts';
import { differenceOf, differencesFrom, expectPictures, goldenOf } from './goldenPictures.ts';
import { shrunk, picturesOf, pngOf, readPng, type Picture } from './pictures.ts';
import { example, judged, usual } from './setups.ts';

const folder = mkdtempSync(join(tmpdir(), 'hitchwright-pictures-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const date = '2026-11-26';
/** Pictures are drawn three times as finely as they are kept [dots per inch]. */
const dpi = 216;
const blade = judged(example('box-blade-on-coupler'));

function sheetFor(more: Partial<SheetOptions>): Promise<SheetPdf> {
  return sheetPdf(blade, { ...usual, customer: 'Riverside Farm', ...more });
}

function printed(scene: Scene): Promise<Uint8Array> {
  return drawingPdf(scene, { fonts: bundledFonts, paper: 'letter', date });
}

/** Which pages differ, counted from one. */
function differing(some: readonly Picture[], others: readonly Picture[]): number[] {
  return some.flatMap((one, i) => {
    const other = others[i];
    return other !== undefined && differenceOf(one, other) === null ? [] : [i + 1];
  });
}

/** The page with the dots of one part of it taken from another picture of the same page. */
function withPart(page: Picture, other: Picture, { x, y, width, height }: SheetPdf['blocks'][number]): Picture {
  const dots = (mm: number): number => Math.round((mm * dpi) / 25.4);
  const greys = page.greys.slice();
  for (let row = dots(y); row < dots(y + height); row += 1) {
    const [from, to] = [row * page.width + dots(x), row * page.width + dots(x + width)];
    greys.set(other.greys.subarray(from, to), from);
  }
  return { ...page, greys };
}

test('a sheet that is printed twice looks the same, also where antialiasing falls a little otherwise', async () => {
  const [once, again] = [await sheetFor({}), await sheetFor({})];
  const kept = await goldenOf(once.bytes);
  expect(differing(kept, await goldenOf(again.bytes))).toEqual([]);
  for (const push of [-0.09, 0.03, 0.09]) {
    const pushed = await goldenOf(once.bytes, push);
    expect(pushed.some(({ greys }, page) => greys.some((grey, i) => grey !== kept[page]?.greys[i]))).toBe(true);
    expect(differing(kept, pushed)).toEqual([]);
  }
});

test('one other word, and one other figure, is a difference, on the page where it stands', async () => {
  const kept = await goldenOf((await sheetFor({})).bytes);
  expect(differing(kept, await goldenOf((await sheetFor({ customer: 'Riverside Barn' })).bytes))).toEqual([
    kept.length,
  ]);
  const numbered = await goldenOf((await sheetFor({ number: '2411' })).bytes);
  expect(differing(kept, numbered)).toEqual(kept.map((_, i) => i + 1));
});

test('a drawing that sits 1 mm off is a difference', async () => {
  const { bytes, blocks } = await sheetFor({});
  const [kept, pushed] = [await picturesOf(bytes, { dpi }), await picturesOf(bytes, { dpi, push: dpi / 25.4 })];
  const drawings = blocks.filter(({ name }) => name === 'drawing');
  expect(drawings.length).toBeGreaterThan(1);
  for (const drawing of drawings) {
    const page = kept[drawing.page - 1] as Picture;
    const moved = withPart(page, pushed[drawing.page - 1] as Picture, drawing);
    const place = differenceOf(shrunk(page), shrunk(moved));
    expect(place?.y[0]).toBeGreaterThanOrEqual(Math.floor(drawing.y));
    expect(place?.y[1]).toBeLessThanOrEqual(Math.ceil(drawing.y + drawing.height));
  }
});

test('a hatching that is turned, wider or gone, and a line that is missing, is a difference', async () => {
  const { setup, answer } = judged(example('tiller-driven-on-coupler'));
  const scene = topView(setup, answer, { system: 'us', format: 'print' }) as Scene;
  const [kept] = (await goldenOf(await printed(scene))) as [Picture];
  const drawn = async (items: Scene['items']): Promise<number[]> =>
    differing([kept], await goldenOf(await printed({ ...scene, items })));
  const hatched = (change: object): Scene['items'] =>
    scene.items.map((item) => (item.kind === 'hatch' ? { ...item, ...change } : item));
  expect(await drawn(scene.items.slice())).toEqual([]);
  expect(scene.items.some((item) => item.kind === 'hatch' && !item.falling)).toBe(true);
  expect(await drawn(hatched({ falling: true }))).toEqual([1]);
  expect(await drawn(hatched({ spacing: 2.5 }))).toEqual([1]);
  expect(await drawn(scene.items.filter(({ kind }) => kind !== 'hatch'))).toEqual([1]);
  // The faintest lines that are not hidden under something else, those of the tractor’s body among them.
  const lines = scene.items.filter((item) => item.kind === 'stroke' && item.role === 'ghost');
  expect(lines.length).toBeGreaterThan(5);
  for (const line of lines)
    expect(await drawn(scene.items.filter((item) => item !== line)), JSON.stringify(line)).toEqual([1]);
});

test('a kept picture is the page itself', async () => {
  const [page] = (await goldenOf((await sheetFor({})).bytes)) as [Picture];
  const path = join(folder, 'kept.png');
  writeFileSync(path, pngOf(page));
  const read = await readPng(path);
  expect([read.width, read.height]).toEqual([612, 792]);
  expect(Buffer.from(read.greys).equals(Buffer.from(page.greys))).toBe(true);
  expect(page.greys.includes(0) && page.greys.includes(255)).toBe(true);
});

test('what differs is laid beside the kept picture and said where, and kept anew where that is asked for', async () => {
  const { setup, answer } = blade;
  const drawing = rearView(setup, answer, { system: 'us', format: 'print' });
  const [blank, sheet] = [await printed({ ...drawing, items: [] }), await sheetFor({})];
  const looking = { folder, isRenewing: false };
  const renewing = { folder, isRenewing: true };
  const files = (): string[] => readdirSync(folder).filter((file) => file.startsWith('one-page'));
  expect(await differencesFrom('one', blank, looking)).toEqual(['one-page1.png was never kept']);
  expect(await differencesFrom('one', sheet.bytes, renewing)).toEqual([]);
  expect(files()).toEqual(Array.from({ length: sheet.pages }, (_, i) => `one-page${i + 1}.png`));
  expect(await differencesFrom('one', sheet.bytes, looking)).toEqual([]);
  const said = await differencesFrom('one', blank, looking);
  expect(said).toHaveLength(sheet.pages);
  expect(said).toContain('one-page2.png is kept, and the document has no such page any more');
  expect(said.at(-1)).toMatch(/^one-page1\.png differs \d+ to \d+ mm from the left, \d+ to \d+ mm from the top$/);
  expect(files()).toContain('one-page1-changed.png');
  expect(await differencesFrom('one', blank, renewing)).toEqual([]);
  expect(files()).toEqual(['one-page1.png']);
  expect(await differencesFrom('one', blank, looking)).toEqual([]);
});

test.each([
  ['upper-pin', 'box-blade-on-coupler', { kind: 'pinPlan', format: 'pdf' }, 'letter'],
  ['lower-pins', 'rake-on-coupler', { kind: 'pinPlan', format: 'pdf' }, 'a4'],
  ['drawing-rear', 'box-blade-on-coupler', { kind: 'drawing', view: 'rear', format: 'pdf' }, 'a4'],
] as const)('%s of %s looks as it did', async (name, setup, wanted, paper) => {
  const system = paper === 'a4' ? 'metric' : 'us';
  const made = await handOver({ document: example(setup), system, paper, date, wanted }, bundledFonts);
  if (made.kind !== 'file') throw new Error(JSON.stringify(made));
  await expectPictures(`${name}-${paper}`, made.bytes);
});
