import { expect } from 'vitest';
import { highestOf, implementFigures, lowestOf } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf } from './rows.ts';

const later = 'manual-utility-category-2-later';
const earlier = 'manual-utility-category-2';

published(
  {
    source: later,
    locator: 'p. 5-67',
    kind: 'reads',
    title: 'category 2 span 825 ±1.5 lies between 823.5 and 826.5 mm',
  },
  () => {
    const row = rowOf(implementFigures('2', 'shoulderSpan'), later);
    expect([lowestOf(row), highestOf(row)]).toEqual([823.5, 826.5]);
  },
);

published(
  {
    source: earlier,
    locator: 'p. 121',
    kind: 'reads',
    title: 'category 2 span "825 +1.5" lies between 825 and 826.5 mm',
  },
  () => {
    const row = rowOf(implementFigures('2', 'shoulderSpan'), earlier);
    expect([lowestOf(row), highestOf(row)]).toEqual([825, 826.5]);
  },
);

for (const [source, locator] of [
  [earlier, 'p. 121'],
  [later, 'p. 5-67'],
] as const) {
  published({ source, locator, kind: 'reads', title: 'category 2 upper point 0–80 mm behind the lower pins' }, () => {
    expect(rowOf(implementFigures('2', 'mastSetback'), source)).toMatchObject({ value: 0, high: 80 });
  });
}

published(
  { source: later, locator: 'p. 5-67', kind: 'reads', title: 'category 2 mast 460 mm on one maker’s tractor' },
  () => {
    expect(rowOf(implementFigures('2', 'mastHeight'), later)).toMatchObject({ value: 460, disputed: true });
  },
);
