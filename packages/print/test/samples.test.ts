import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { withEdits } from '@hitchwright/core/records';
import { sheetPdf, type SheetPdf } from '../src/index.ts';
import { frameOf, papers } from '../src/pdf/paper.ts';
import { expectPictures } from './goldenPictures.ts';
import { readPdf, squeezed, textOf, type ReadPdf, type TextPiece } from './readPdf.ts';
import { judged, longName, samples, usual } from './setups.ts';

interface Edges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The ink of letters, a little less than their body. */
function inkOf({ x, y, width, size, upward }: TextPiece): Edges {
  const [above, below] = [0.66 * size, 0.02 * size];
  if (upward) return { left: x - above, right: x + below, top: y - width, bottom: y };
  return { left: x, right: x + width, top: y - above, bottom: y + below };
}

const touch = 0.35;

function overlap(a: Edges, b: Edges): boolean {
  return (
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > touch &&
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > touch
  );
}

function overlapping<T extends { readonly page: number }>(all: readonly T[], edges: (one: T) => Edges): [T, T][] {
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b): [T, T][] => (a.page === b.page && overlap(edges(a), edges(b)) ? [[a, b]] : [])),
  );
}

/** Nothing but what any reader sees: where blocks lie, and what stands where. */
function layoutOf({ blocks }: SheetPdf, { pieces }: ReadPdf): string {
  const round = (value: number): string => value.toFixed(1);
  const placed = blocks.map(({ page, name, x, y, width, height }) =>
    [page, name, ...[x, y, width, height].map(round)].join(' '),
  );
  const said = pieces.map(({ page, text, x, y, size }) => [page, round(x), round(y), round(size), text].join(' '));
  const hash = createHash('sha256').update(said.join('\n')).digest('hex').slice(0, 16);
  const parts = [...new Set(blocks.filter(({ name }) => name !== 'rule').map(({ page, name }) => `${page} ${name}`))];
  const shape = createHash('sha256').update(placed.join('\n')).digest('hex').slice(0, 16);
  return [`${said.length} pieces of text ${hash}, ${placed.length} blocks ${shape}`, ...parts].join('\n  ');
}

function expectGolden(name: string, text: string): void {
  const path = fileURLToPath(new URL(`golden/${name}.txt`, import.meta.url));
  const twin = path.replace(/\.txt$/, '-changed.txt');
  if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(path, text);
  const same = existsSync(path) && readFileSync(path, 'utf8') === text;
  if (same) rmSync(twin, { force: true });
  else writeFileSync(twin, text);
  expect(same, `${name} differs: print it, look at it, compare ${twin}`).toBe(true);
}

/** Pictures are kept of one paper of each sample, of Letter and A4 by turns: what is on the other differs in its breaks, which the text says. */
function isPictured(name: string, paper: 'letter' | 'a4'): boolean {
  return (Object.keys(samples).indexOf(name) % 2 === 0) === (paper === 'letter');
}

describe.each(Object.keys(samples))('%s', (name) => {
  test.each(['letter', 'a4'] as const)('nothing overlaps and nothing is cut on %s', async (paper) => {
    const one = judged((samples[name] as () => Record<string, unknown>)());
    const options = { ...usual, paper, system: paper === 'a4' ? 'metric' : 'us' } as const;
    const sheet = await sheetPdf(one, options);
    const read = await readPdf(sheet.bytes);
    const frame = frameOf(papers[paper]);
    const { pieces } = read;
    const outside = pieces.filter((piece) => {
      const { left, right, top, bottom } = inkOf(piece);
      return left < frame.x || right > frame.x + frame.width || top < frame.y || bottom > frame.y + frame.height;
    });
    expect(outside).toEqual([]);
    expect(overlapping(pieces, inkOf).map(([a, b]) => [a.text, b.text, a.page, a.x, a.y])).toEqual([]);
    const blocks = sheet.blocks.filter(({ width, height }) => width > 0 && height > 0);
    const edges = ({ x, y, width, height }: (typeof blocks)[number]): Edges => ({
      left: x,
      right: x + width,
      top: y,
      bottom: y + height,
    });
    expect(overlapping(blocks, edges)).toEqual([]);
    expect(read.pages).toBe(sheet.pages);
    expect(pieces.map(({ size }) => size).filter((size) => size < 8.5 * 0.77 * (25.4 / 72) - 0.35)).toEqual([]);
    if (isPictured(name, paper)) await expectPictures(`${name}-${paper}`, sheet.bytes);
    expectGolden(`${name}-${paper}`, `${layoutOf(sheet, read)}\n`);
  });
});

test('the same input gives the same bytes, another day others', async () => {
  const one = judged((samples['greek-and-cyrillic'] as () => Record<string, unknown>)());
  const [first, second, later] = await Promise.all(
    ['2026-11-26', '2026-11-26', '2026-11-27'].map(async (date) => (await sheetPdf(one, { ...usual, date })).bytes),
  );
  expect(Buffer.from(first as Uint8Array).equals(Buffer.from(second as Uint8Array))).toBe(true);
  expect(Buffer.from(first as Uint8Array).equals(Buffer.from(later as Uint8Array))).toBe(false);
});

test('words as long as a setup may have stand whole, longer ones on the sheet are refused', async () => {
  const said = (what: string): string => `${what} ${longName}`.slice(0, 200);
  const source = Object.fromEntries(['method', 'tool', 'who', 'when', 'source', 'note'].map((key) => [key, said(key)]));
  const document = withEdits(samples['long-names']?.() ?? {}, [
    { path: 'implement.mastHeight', value: { value: 460, plusMinus: 2, ...source } },
  ]);
  const sheet = await sheetPdf(judged(document), usual);
  const { pieces } = await readPdf(sheet.bytes);
  const text = textOf({ pieces } as ReadPdf);
  for (const words of Object.values(source)) expect(text).toContain(squeezed(words));
  expect(pieces.filter(({ y }) => y > papers.letter.height - 8)).toEqual([]);
  await expect(sheetPdf(judged(document), { ...usual, customer: 'a'.repeat(10_000) })).rejects.toThrow(RangeError);
});

test('long names stand whole', async () => {
  const one = judged((samples['long-names'] as () => Record<string, unknown>)());
  const text = textOf(await readPdf((await sheetPdf(one, usual)).bytes));
  expect(text.split(squeezed(longName)).length - 1).toBeGreaterThanOrEqual(6);
});
