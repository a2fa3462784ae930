import { describe, expect, test } from 'vitest';
import { bandsOf } from '../src/sheet/regions/bands.ts';
import { trueDrawings } from './drawings.ts';

describe.each(Object.entries(trueDrawings()))('%s', (_, scene) => {
  test('each item lies in one part, parts lie under each other, nothing is painted in another order', () => {
    const bands = bandsOf(scene);
    const place = new Map(scene.items.map((item, i) => [item, i]));
    expect(bands.flatMap(({ items }) => items)).toHaveLength(scene.items.length);
    expect(new Set(bands.flatMap(({ items }) => items)).size).toBe(scene.items.length);
    bands.slice(1).forEach(({ top }, i) => expect(top).toBeLessThan(bands[i]?.bottom ?? -Infinity));
    for (const { items, top, bottom } of bands) {
      const order = items.map((item) => place.get(item) ?? -1);
      expect(order).toEqual([...order].sort((a, b) => a - b));
      expect(top).toBeGreaterThan(bottom);
      expect(top - bottom).toBeLessThanOrEqual(scene.bounds.top - scene.bounds.bottom);
    }
  });
});

test('heading, picture and bar of a view from above are three parts', () => {
  const { top } = trueDrawings();
  expect(top === undefined ? 0 : bandsOf(top).length).toBeGreaterThanOrEqual(3);
});
