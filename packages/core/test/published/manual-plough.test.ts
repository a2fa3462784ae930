import { expect } from 'vitest';
import { implementFigures, tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';

const source = 'manual-plough';
const locator = 'p. 43, hitch table after ISO 730-1';

for (const [category, diameter] of [
  ['3N', 36.6],
  ['3', 36.6],
  ['4N', 50.8],
  ['4', 50.8],
] as const) {
  published({ source, locator, kind: 'reads', title: `category ${category} lower pin ${diameter} mm` }, () => {
    const rows = implementFigures(category, 'lowerPinDiameter');
    expect(rows.find((figure) => figure.source === source)?.value).toBe(diameter);
  });
}

published(
  { source, locator, kind: 'reads', title: 'rounded span 960 mm stands beside 965 mm, marked as disputed' },
  () => {
    const rows = implementFigures('3', 'shoulderSpan');
    expect(rows.find((figure) => figure.source === source)).toMatchObject({
      value: 960,
      disputed: true,
      rounded: true,
    });
    expect(rows.map((figure) => figure.value)).toContain(965);
  },
);

for (const [category, low, high] of [
  ['2', 1800, 2400],
  ['3N', 1800, 2400],
  ['3', 1900, 2700],
  ['4N', 1900, 2700],
] as const) {
  published({ source, locator, kind: 'reads', title: `category ${category} convergence ${low}–${high} mm` }, () => {
    const rows = tractorFigures(category, 'convergenceHorizontal');
    expect(rows.find((figure) => figure.source === source)).toMatchObject({ value: low, high });
  });
}
