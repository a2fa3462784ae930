import { expect } from 'vitest';
import { couplerFigures, tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf } from './rows.ts';

for (const [category, centres] of [
  ['2', 870],
  ['3', 1010],
] as const) {
  const source = 'manual-draft-links';
  const locator = 'page OULXBER,0002C73';
  published(
    { source, locator, kind: 'reads', title: `category ${category} centres of balls ${centres} mm apart` },
    () => {
      expect(rowOf(tractorFigures(category, 'ballSpan'), source).value).toBe(centres);
    },
  );
}

published(
  {
    source: 'manual-hook-links',
    locator: 'page OU12401,0001277',
    kind: 'reads',
    title: 'claw ball of category 2 is 56 mm',
  },
  () => {
    expect(rowOf(couplerFigures('2', 'clawBallDiameter'), 'manual-hook-links').value).toBe(56);
  },
);
