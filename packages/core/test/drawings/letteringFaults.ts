import type { Item, Lettering, Scene } from '../../src/drawings/index.ts';
import { widthOf } from '../../src/drawings/lettering.ts';

/** Every line of lettering, those of dimensions among them. */
export function letteringIn(items: readonly Item[]): Lettering[] {
  return items.flatMap((item) => {
    if (item.kind === 'text') return [item];
    return item.kind === 'dimension' && item.label !== null ? [item.label] : [];
  });
}

interface Box {
  readonly text: string;
  readonly x: readonly [number, number];
  readonly z: readonly [number, number];
}

/** Where a line of lettering stands on paper; at its own weight it is narrower than the safe side says. */
function boxOf({ at, text, size, second, anchor }: Lettering, scale: number): Box {
  const width =
    0.92 * (widthOf(text, size) + (second === undefined ? 0 : widthOf(second.text, second.size) + second.size / 2));
  const start = { start: 0, middle: -width / 2, end: -width }[anchor];
  const [x, z] = [at[0] / scale, at[1] / scale];
  return { text, x: [x + start, x + start + width], z: [z, z + size * 0.68] };
}

function overlap(a: Box, b: Box): boolean {
  return a.x[0] < b.x[1] && b.x[0] < a.x[1] && a.z[0] < b.z[1] && b.z[0] < a.z[1];
}

/** Pairs of lettering that run into each other, and lettering that leaves the sheet. */
export function faultsOf({ items, scale, bounds }: Scene): string[] {
  const boxes = letteringIn(items).map((item) => boxOf(item, scale));
  const pairs = boxes.flatMap((box, i) =>
    boxes.slice(i + 1).flatMap((other) => (overlap(box, other) ? [`${box.text} | ${other.text}`] : [])),
  );
  const outside = boxes.filter(
    ({ x, z }) =>
      x[0] < bounds.left / scale ||
      x[1] > bounds.right / scale ||
      z[0] < bounds.bottom / scale ||
      z[1] > bounds.top / scale,
  );
  return [...pairs, ...outside.map(({ text }) => `${text} leaves the sheet`)];
}
