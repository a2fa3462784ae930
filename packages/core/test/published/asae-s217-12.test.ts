import { expect } from 'vitest';
import { bestFigure, implementFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';

const source = 'asae-s217-12';
const locator = 'ASAE S217.12 DEC01, foreword, clauses 0.1–0.3';

for (const [category, older] of [
  ['2', 485],
  ['3', 560],
] as const) {
  const title = `category ${category}: the older mast is about 125 mm shorter, ${older} mm ±1`;
  published({ source, locator, kind: 'reads', title }, () => {
    const iso = bestFigure(implementFigures(category, 'mastHeight', 'iso'), { source: 'hitch-width-pages' });
    const short = bestFigure(implementFigures(category, 'mastHeight', 'older'), { source });
    expect(Math.abs((iso?.value ?? NaN) - 125 - (short?.value ?? NaN))).toBeLessThanOrEqual(1);
    expect(short?.value).toBe(older);
  });
}

published({ source, locator, kind: 'reads', title: 'category 4 masts are the same in both families' }, () => {
  expect(implementFigures('4', 'mastHeight', 'older')).toEqual(implementFigures('4', 'mastHeight', 'iso'));
});
