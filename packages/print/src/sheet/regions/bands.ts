import {
  balloonParts,
  dimensionParts,
  scaleBarParts,
  type Item,
  type Point,
  type Scene,
} from '@hitchwright/core/drawings';

/** What a drawing shows between two levels that nothing crosses [scene mm]. */
interface Band {
  readonly top: number;
  readonly bottom: number;
  readonly items: readonly Item[];
}

/** Bands closer than this belong together [paper mm]. */
const apart = 2.5;

/**
 * Parts of a drawing that lie under each other with nothing between, from the top: heading, picture, scale bar. They may stand
 * closer on paper than they do in the scene without any length in them being another.
 */
export function bandsOf({ items, scale }: Scene): Band[] {
  const spans = items.map((item) => ({ item, ...levelsOf(item, scale) })).sort((a, b) => b.top - a.top);
  const bands: { top: number; bottom: number; items: Set<Item> }[] = [];
  for (const { item, top, bottom } of spans) {
    const last = bands.at(-1);
    if (last !== undefined && top > last.bottom - apart * scale) {
      last.bottom = Math.min(last.bottom, bottom);
      last.items.add(item);
    } else bands.push({ top, bottom, items: new Set([item]) });
  }
  return bands.map(({ items: own, ...levels }) => ({ ...levels, items: items.filter((item) => own.has(item)) }));
}

interface Levels {
  readonly top: number;
  readonly bottom: number;
}

function levelsOf(item: Item, scale: number): Levels {
  switch (item.kind) {
    case 'stroke':
      return around(item.points, 0);
    case 'hatch':
      return around(item.outline, 0);
    case 'circle':
      return around([item.centre], item.radius);
    case 'text':
      return letteringLevels(item, scale);
    case 'dimension': {
      const { ends, extensions, tails, arrowheads } = dimensionParts(item, scale);
      const lines = around([ends, ...extensions, ...tails, ...arrowheads].flat(), 0);
      return item.label === null ? lines : joined(lines, letteringLevels(item.label, scale));
    }
    case 'balloon':
      return around([item.at, ...(item.leaderTo === null ? [] : [item.leaderTo])], balloonParts(item, scale).radius);
    case 'scaleBar':
      return scaleBarParts(item, scale)
        .map(({ at, height }) => around([at, [at[0], at[1] + height]], 0))
        .reduce(joined);
  }
}

function around(points: readonly Point[], more: number): Levels {
  const heights = points.map(([, up]) => up);
  return { top: Math.max(...heights) + more, bottom: Math.min(...heights) - more };
}

function joined(a: Levels, b: Levels): Levels {
  return { top: Math.max(a.top, b.top), bottom: Math.min(a.bottom, b.bottom) };
}

/** No letter is wider than this part of its size: what reads upward is counted as long as it can be. */
const widest = 0.75;

function letteringLevels(
  { at: [, up], text, size, second, upward, anchor }: Extract<Item, { kind: 'text' }>,
  scale: number,
): Levels {
  if (upward !== true) return { top: up + size * scale, bottom: up - 0.25 * size * scale };
  const length =
    (text.length * size + (second === undefined ? 0 : (second.text.length + 1) * second.size)) * widest * scale;
  const above = { start: 1, middle: 0.5, end: 0 }[anchor];
  return { top: up + above * length, bottom: up - (1 - above) * length };
}
