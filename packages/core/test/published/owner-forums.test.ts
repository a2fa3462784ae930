import { expect } from 'vitest';
import { bushingsFor, couplerFigures } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, rowOf, sum } from './rows.ts';

published(
  {
    source: 'owner-forums',
    locator: 'thread 223189',
    kind: 'reads',
    title: 'two stock lengths of lower bushing, 34.9 and 44.5 mm ±0.06, adding up to 3-1/8 in',
  },
  () => {
    const lengths = bushingsFor('lower', '1').flatMap((bushing) => bushing.lengths.map((length) => length.value));
    expect(lengths).toHaveLength(2);
    expect(rises(lengths)).toBe(true);
    expect(Math.abs((lengths[0] ?? NaN) - 34.9)).toBeLessThanOrEqual(0.06);
    expect(Math.abs((lengths[1] ?? NaN) - 44.5)).toBeLessThanOrEqual(0.06);
    expect(sum(lengths)).toBeCloseTo(3.125 * 25.4, 9);
  },
);

published(
  {
    source: 'owner-blog',
    locator: 'entry on link-end connectors',
    kind: 'reads',
    title: 'link-end connectors moved the points 4 in rearward',
  },
  () => {
    expect(rowOf(couplerFigures('1', 'hookEndOffset'), 'owner-blog').value).toBeCloseTo(101.6, 9);
  },
);
