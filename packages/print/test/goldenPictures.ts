import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pixelmatch from 'pixelmatch';
import { expect } from 'vitest';
import { shrunk, picturesOf, pixelsOf, pngOf, readPng, type Picture } from './pictures.ts';

/**
 * When two pictures are taken to differ. Pages are drawn at 216 dots per inch and kept at a third of it, which smooths the
 * jumps of antialiasing. A dot differs that is a fifth of the way from black to white away. Antialiasing, pushed by a
 * thirtieth of a kept dot (a hundredth of a millimetre), leaves one such dot in a window of 4 mm; a small hatching that is
 * gone leaves seven, a line or a letter ten and more. Windows, so that a word counts as much on a full page as on an empty one.
 */
const limits = { drawnAt: 216, keptAt: 72, apart: 0.125, window: 12, dots: 4 } as const;

/** Ink is compared as dark grey: the eye’s scale, on which dots are compared, stretches what is nearly black. */
const ink = 64;

/** Where a page differs: from its left and upper edge [mm]. */
interface Place {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** The pages of a document as they are kept. */
export async function goldenOf(bytes: Uint8Array, push = 0): Promise<Picture[]> {
  return (await picturesOf(bytes, { dpi: limits.drawnAt, push })).map(shrunk);
}

/** Where two pages differ to the eye; null where they don’t. */
export function differenceOf(one: Picture, other: Picture): Place | null {
  const { width, height } = one;
  if (other.width !== width || other.height !== height) return placeOf([0, width], [0, height]);
  const marks = new Uint8ClampedArray(4 * width * height);
  const most = pixelmatch(pixelsOf(one, ink), pixelsOf(other, ink), marks, width, height, {
    threshold: limits.apart,
    includeAA: true,
    diffMask: true,
    windowSize: limits.window,
  });
  if (most <= limits.dots) return null;
  const marked = Array.from({ length: width * height }, (_, i) => i).filter((i) => marks[4 * i + 3] !== 0);
  return placeOf(endsOf(marked.map((i) => i % width)), endsOf(marked.map((i) => Math.floor(i / width))));
}

function placeOf(x: readonly [number, number], y: readonly [number, number]): Place {
  const inMm = (dots: number): number => Math.round((dots * 25.4) / limits.keptAt);
  return { x: [inMm(x[0]), inMm(x[1])], y: [inMm(y[0]), inMm(y[1])] };
}

function endsOf(all: readonly number[]): [number, number] {
  return [all.reduce((a, b) => Math.min(a, b), Infinity), all.reduce((a, b) => Math.max(a, b), -Infinity)];
}

/** Where pictures are kept, and whether what differs is kept anew. */
export interface Keeping {
  readonly folder: string;
  readonly isRenewing: boolean;
}

/** Compares the pages of a document with the pictures that are kept under a name: a sentence for each page that differs. */
export async function differencesFrom(
  name: string,
  bytes: Uint8Array,
  { folder, isRenewing }: Keeping,
): Promise<string[]> {
  const pictures = await goldenOf(bytes);
  const kept = readdirSync(folder).filter((file) => file.startsWith(`${name}-page`) && /-page\d+\.png$/.test(file));
  const files = pictures.map((_, i) => `${name}-page${i + 1}.png`);
  const gone = kept.filter((file) => !files.includes(file));
  if (isRenewing) for (const path of gone.map((file) => join(folder, file))) [path, twinOf(path)].forEach(remove);
  const said = isRenewing ? [] : gone.map((file) => `${file} is kept, and the document has no such page any more`);
  for (const [i, picture] of pictures.entries()) {
    const file = files[i] ?? '';
    const why = await comparedWith(join(folder, file), picture, isRenewing);
    if (why !== null) said.push(`${file} ${why}`);
  }
  return said;
}

/** The picture that is laid beside a kept one where they differ. */
function twinOf(path: string): string {
  return path.replace(/\.png$/, '-changed.png');
}

function remove(path: string): void {
  rmSync(path, { force: true });
}

/** Compares a page with its kept picture; what differs is laid beside it, or put in its place. */
async function comparedWith(path: string, picture: Picture, isRenewing: boolean): Promise<string | null> {
  const twin = twinOf(path);
  const isKept = existsSync(path);
  const place = isKept ? differenceOf(await readPng(path), picture) : null;
  if (isKept && place === null) {
    remove(twin);
    return null;
  }
  writeFileSync(isRenewing ? path : twin, pngOf(picture));
  if (isRenewing) {
    remove(twin);
    return null;
  }
  if (place === null) return 'was never kept';
  return `differs ${place.x.join(' to ')} mm from the left, ${place.y.join(' to ')} mm from the top`;
}

const golden: Keeping = {
  folder: fileURLToPath(new URL('golden', import.meta.url)),
  isRenewing: process.env['UPDATE_GOLDEN'] === '1',
};

/** Every page looks like the picture that is kept of it; the test goes on and fails at its end. */
export async function expectPictures(name: string, bytes: Uint8Array): Promise<void> {
  const how =
    'Look at the -changed.png beside the kept picture in test/golden. Where the change is wanted: UPDATE_GOLDEN=1 npx vitest run --root packages/print, and look at what git says has changed.';
  expect.soft(await differencesFrom(name, bytes, golden), how).toEqual([]);
}
