import { expect } from 'vitest';
import { highestOf, lowestOf, tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf } from './rows.ts';

const source = 'forum-mast-adjustment';
const locator = 'thread 320699, on ASAE S217.12';

published({ source, locator, kind: 'reads', title: 'category 1 mast adjustment zone from 200 to 508 mm' }, () => {
  expect(rowOf(tractorFigures('1', 'lowestHitchHeight'), source).value).toBe(200);
  expect(rowOf(tractorFigures('1', 'mastAdjustmentUpperHeight'), source).value).toBe(508);
});

published({ source, locator, kind: 'reads', title: 'category 1 mast can be set 5° either way' }, () => {
  const row = rowOf(tractorFigures('1', 'mastAdjustmentAngle'), source);
  const degrees = [lowestOf(row), highestOf(row)].map((angle) => (angle * 180) / Math.PI);
  expect(degrees[0]).toBeCloseTo(-5, 9);
  expect(degrees[1]).toBeCloseTo(5, 9);
});
