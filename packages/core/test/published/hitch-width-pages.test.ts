import { expect } from 'vitest';
import { implementFigures, tractorFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf, valuesOf } from './rows.ts';

const source = 'hitch-width-pages';
const locator = 'answer text, categories 2 and 3';

for (const [category, span] of [
  ['2', 825],
  ['3', 965],
] as const) {
  published({ source, locator, kind: 'reads', title: `category ${category} span between shoulders ${span} mm` }, () => {
    expect(valuesOf(implementFigures(category, 'shoulderSpan'), source)).toContain(span);
  });
}

for (const [category, height] of [
  ['2', 610],
  ['3', 685],
] as const) {
  published(
    {
      source,
      locator,
      kind: 'reads',
      title: `category ${category} mast height ${height} mm ±0.5, international family`,
    },
    () => {
      const row = rowOf(implementFigures(category, 'mastHeight', 'iso'), source);
      expect(Math.abs(row.value - height)).toBeLessThanOrEqual(0.5);
    },
  );
}

for (const category of ['2', '3'] as const) {
  published({ source, locator, kind: 'reads', title: `category ${category} lower ball 44.96 mm wide` }, () => {
    expect(rowOf(tractorFigures(category, 'lowerBallWidth'), source).value).toBe(44.96);
  });
}

published(
  {
    source,
    locator,
    kind: 'reads',
    title: 'spans cut to whole inches (32, 38) lie within 1/2 in of 825 and 965 mm',
  },
  () => {
    for (const [category, span, inches] of [
      ['2', 825, 32],
      ['3', 965, 38],
    ] as const) {
      const cut = implementFigures(category, 'shoulderSpan').find((figure) => figure.printed === String(inches));
      expect(cut).toMatchObject({ rounded: true, disputed: true });
      expect(Math.abs((cut?.value ?? NaN) - span)).toBeLessThanOrEqual(12.7);
    }
  },
);
