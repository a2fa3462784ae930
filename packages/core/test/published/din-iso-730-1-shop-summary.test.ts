import { expect } from 'vitest';
import { ballCentreSpan, implementFigures, shoulderSpanFromCentres, tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, rowOf, sum } from './rows.ts';

const source = 'din-iso-730-1-shop-summary';
const locator = 'summary of DIN ISO 730-1:1994, the one table of the page';
const three = ['1', '2', '3'] as const;

const centres = { '1': 718, '2': 870, '3': 1010 } as const;
const bores = { '1': 22.4, '2': 28.7, '3': 37.4 } as const;
const upper = { '1': 19, '2': 25.5, '3': 31.75 } as const;

for (const category of three) {
  published(
    { source, locator, kind: 'reads', title: `category ${category} ball centres ${centres[category]} mm apart` },
    () => {
      expect(rowOf(tractorFigures(category, 'ballSpan'), source).value).toBe(centres[category]);
    },
  );
  published({ source, locator, kind: 'reads', title: `category ${category} lower bore ${bores[category]} mm` }, () => {
    expect(rowOf(tractorFigures(category, 'lowerBallBore'), source).value).toBe(bores[category]);
  });
  published({ source, locator, kind: 'reads', title: `category ${category} upper size ${upper[category]} mm` }, () => {
    expect(rowOf(implementFigures(category, 'upperPinDiameter'), source).value).toBe(upper[category]);
  });
}

published(
  { source, locator, kind: 'reads', title: 'ball centres of 1, 2 and 3: three rows, rising, adding up to 2598 mm' },
  () => {
    const values = three.map((category) => rowOf(tractorFigures(category, 'ballSpan'), source).value);
    expect(values).toHaveLength(3);
    expect(rises(values)).toBe(true);
    expect(sum(values)).toBe(2598);
  },
);

published(
  { source, locator, kind: 'reads', title: 'upper sizes of 1, 2 and 3: three rows, rising, adding up to 76.25 mm' },
  () => {
    const values = three.map((category) => rowOf(implementFigures(category, 'upperPinDiameter'), source).value);
    expect(values).toHaveLength(3);
    expect(rises(values)).toBe(true);
    expect(sum(values)).toBeCloseTo(76.25, 9);
  },
);

for (const [category, span, centre] of [
  ['2', 825, 870],
  ['3', 965, 1010],
] as const) {
  const title = `category ${category}: span ${span} + ball 45 = ball centres ${centre} mm, there and back`;
  published({ source, locator, kind: 'computes', title }, () => {
    expect(ballCentreSpan(span, 45)).toBe(centre);
    expect(shoulderSpanFromCentres(centre, 45)).toBe(span);
  });
}

for (const [category, span, centre] of [
  ['2', 825, 870],
  ['3', 965, 1010],
] as const) {
  const title = `category ${category}: table rows for span and ball width give ball centres ${centre} mm ±0.1`;
  published({ source, locator, kind: 'computes', title }, () => {
    const width = rowOf(tractorFigures(category, 'lowerBallWidth'), 'hitch-width-pages').value;
    const row = implementFigures(category, 'shoulderSpan').find((figure) => figure.value === span);
    expect(Math.abs(ballCentreSpan(row?.value ?? NaN, width) - centre)).toBeLessThanOrEqual(0.1);
  });
}
