import { expect } from 'vitest';
import { implementFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf } from './rows.ts';

const source = 'manual-utility-category-1-2';
const locator = 'document 2360, p. 16, implement dimension chart';

published({ source, locator, kind: 'reads', title: 'category 1 mast 18 in, 457 mm ±0.5, older family' }, () => {
  const row = rowOf(implementFigures('1', 'mastHeight', 'older'), source);
  expect(row.printed).toBe('18');
  expect(Math.abs(row.value - 457)).toBeLessThanOrEqual(0.5);
});

published({ source, locator, kind: 'reads', title: 'category 2 mast 19 in, 483 mm ±0.5, older family' }, () => {
  const row = rowOf(implementFigures('2', 'mastHeight', 'older'), source);
  expect(row.printed).toBe('19');
  expect(Math.abs(row.value - 483)).toBeLessThanOrEqual(0.5);
});

published(
  { source, locator, kind: 'reads', title: 'category 1 shoulder to retaining hole 1.53 in, 38.9 mm ±0.05' },
  () => {
    const row = rowOf(implementFigures('1', 'shoulderToHole'), source);
    expect(Math.abs(row.value - 38.9)).toBeLessThanOrEqual(0.05);
  },
);

published(
  {
    source,
    locator,
    kind: 'computes',
    title: 'asking for one mast family leaves out the other, for categories 1 and 2',
  },
  () => {
    for (const category of ['1', '2'] as const) {
      const isoSources = implementFigures(category, 'mastHeight', 'iso').map((figure) => figure.source);
      expect(isoSources).not.toContain(source);
      expect(implementFigures(category, 'mastHeight').map((figure) => figure.source)).toContain(source);
    }
  },
);
