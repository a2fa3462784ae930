import { expect } from 'vitest';
import { tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, rowOf, sum } from './rows.ts';

const source = 'manual-specialist-tractor';
const locator = 'document 2870068, p. 45, bores of ball ends';
const three = ['1', '2', '3'] as const;

const printed = {
  lowerBallBore: { '1': 22.4, '2': 28.7, '3': 37.4 },
  upperBallBore: { '1': 19, '2': 25.5, '3': 31.7 },
} as const;
const sums = { lowerBallBore: 88.5, upperBallBore: 76.2 } as const;

for (const field of ['lowerBallBore', 'upperBallBore'] as const) {
  for (const category of three) {
    const bore = printed[field][category];
    published({ source, locator, kind: 'reads', title: `category ${category} ${field} ${bore} mm` }, () => {
      expect(rowOf(tractorFigures(category, field), source).value).toBe(bore);
    });
  }
  published(
    { source, locator, kind: 'reads', title: `${field}: three rows, rising, adding up to ${sums[field]} mm` },
    () => {
      const values = three.map((category) => rowOf(tractorFigures(category, field), source).value);
      expect(values).toHaveLength(3);
      expect(rises(values)).toBe(true);
      expect(sum(values)).toBeCloseTo(sums[field], 9);
    },
  );
}
