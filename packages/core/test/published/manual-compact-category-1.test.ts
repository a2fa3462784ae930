import { expect } from 'vitest';
import { implementFigures, type ImplementField } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf } from './rows.ts';

const source = 'manual-compact-category-1';
const locator = 'document 20832467, implement dimensions for recognition';

const printed: readonly (readonly [ImplementField, string, number])[] = [
  ['clevisGap', 'inside width of the mast', 44.5],
  ['mastHoleDiameter', 'hole in the mast', 19.1],
  ['lowerPinDiameter', 'lower pin', 22.2],
  ['shoulderSpan', 'spread between inner shoulders', 682.6],
];

for (const [field, words, millimetres] of printed) {
  published({ source, locator, kind: 'reads', title: `category 1 ${words} ${millimetres} mm ±0.05` }, () => {
    expect(Math.abs(rowOf(implementFigures('1', field), source).value - millimetres)).toBeLessThanOrEqual(0.05);
  });
}

published({ source, locator, kind: 'reads', title: '26-7/8 in and 682.6 mm are the same span' }, () => {
  expect(26.875 * 25.4).toBeCloseTo(rowOf(implementFigures('1', 'shoulderSpan'), source).value, 9);
});
