import { expect } from 'vitest';
import { categoryPower, implementFigures, tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, rowOf, sum } from './rows.ts';

const source = 'encyclopedia-category-table';
const locator = 'category table, inches and horsepower';
const four = ['1', '2', '3', '4'] as const;

published(
  { source, locator, kind: 'reads', title: 'ball spans 28, 34, 40, 48 in: four rows, rising, adding up to 150 in' },
  () => {
    const inches = four.map((category) => rowOf(tractorFigures(category, 'ballSpan'), source).value / 25.4);
    expect(inches.map((value) => Math.round(value))).toEqual([28, 34, 40, 48]);
    expect(inches).toHaveLength(4);
    expect(rises(inches)).toBe(true);
    expect(sum(inches)).toBeCloseTo(150, 9);
  },
);

published(
  { source, locator, kind: 'reads', title: 'upper pins 5/8, 3/4, 1, 1-1/4, 1-3/4 in add up to 5-3/8 in' },
  () => {
    const pins = (['0', ...four] as const).map((category) =>
      rowOf(implementFigures(category, 'upperPinDiameter'), source),
    );
    expect(pins.map((row) => row.printed)).toEqual(['5/8', '3/4', '1', '1-1/4', '1-3/4']);
    expect(sum(pins.map((row) => row.value / 25.4))).toBeCloseTo(5.375, 9);
    expect(rises(pins.map((row) => row.value))).toBe(true);
  },
);

published({ source, locator, kind: 'computes', title: 'category 1 power row 20–45 hp is 14.9–33.6 kW ±0.05' }, () => {
  const row = rowOf(categoryPower('1'), source);
  expect(Math.abs(row.value - 14.9)).toBeLessThanOrEqual(0.05);
  expect(Math.abs((row.high ?? NaN) - 33.6)).toBeLessThanOrEqual(0.05);
});
