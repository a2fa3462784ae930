import { describe, expect } from 'vitest';
import {
  drawbarPinDistance,
  endToCrossCentres,
  guardOverlap,
  passageClearance,
  sixSplinePowerCap,
  stubClearZone,
  type SourceId,
} from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf, sum } from './rows.ts';

describe('from the stub’s end to the drawbar’s pin hole', () => {
  const printed: readonly (readonly [SourceId, string, readonly (number | null)[]])[] = [
    ['manual-drawbar-2005', 'attaching a driven machine', [350, 400, 508]],
    ['manual-drawbar-2006', 'drawbar table', [356, 407, null]],
    ['manual-drawbar-2008', 'drawbar table', [356, 406, null]],
    ['manual-drawbar-compact', 'drawbar page', [358, null, null]],
    ['trade-press-drawbar', 'answer on drawbar length, 14 and 16 in', [355.6, 406.4, null]],
  ];
  for (const [source, locator, distances] of printed) {
    const title = distances.map((distance) => distance ?? '–').join(', ');
    published({ source, locator, kind: 'reads', title: `types 1, 2, 3: ${title} mm` }, () => {
      for (const [at, distance] of distances.entries()) {
        const rows = drawbarPinDistance(([1, 2, 3] as const)[at] ?? 4);
        if (distance === null) expect(rows.some((row) => row.source === source)).toBe(false);
        else expect(rowOf(rows, source).value).toBeCloseTo(distance, 9);
      }
    });
  }
  published(
    {
      source: 'manual-drawbar-2005',
      locator: 'attaching a driven machine, with the others',
      kind: 'reads',
      title: 'ten rows that add up to 3903 mm; a larger type stands farther off; none for type 4',
    },
    () => {
      const columns = ([1, 2, 3, 4] as const).map((type) => drawbarPinDistance(type).map(({ value }) => value));
      expect(columns.flat()).toHaveLength(10);
      expect(sum(columns.flat())).toBeCloseTo(3903, 9);
      const [one = [], two = [], three = [], four] = columns;
      expect(Math.max(...one)).toBeLessThan(Math.min(...two));
      expect(Math.max(...two)).toBeLessThan(Math.min(...three));
      expect(four).toEqual([]);
    },
  );
});

published(
  {
    source: 'manual-rotary-mower-a',
    locator: 'p. 14',
    kind: 'reads',
    title: 'less than 1 in (25 mm) between drive shaft and deck is too little',
  },
  () => {
    expect(passageClearance).toMatchObject({ value: 25, bound: 'least', status: 'read' });
  },
);

published(
  {
    source: 'manual-rotary-tiller-german',
    locator: 'p. 64',
    kind: 'reads',
    title: 'the guard reaches 5 cm into the shields at both ends',
  },
  () => {
    expect(guardOverlap).toMatchObject({ value: 50, bound: 'least', status: 'read' });
  },
);

published(
  {
    source: 'tractor-code-of-practice',
    locator: 'ch. 8, pp. 13–15',
    kind: 'reads',
    title: '8 cm are free round the stub in every direction',
  },
  () => {
    expect(stubClearZone).toMatchObject({ value: 80, bound: 'least', status: 'read' });
  },
);

published(
  {
    source: 'manual-drawbar-2008',
    locator: 'change of the stub shaft',
    kind: 'reads',
    title: 'six splines at 540 rpm carry up to 56 kW',
  },
  () => {
    expect(sixSplinePowerCap).toMatchObject({ value: 56, bound: 'most', status: 'read' });
  },
);

published(
  {
    source: 'manual-snow-blower',
    locator: 'page on measuring the drive shaft',
    kind: 'reads',
    title: 'from shaft ends to cross centres: 4.5 in off for category 1, 5.5 in for category 2',
  },
  () => {
    expect(endToCrossCentres('1')?.value).toBeCloseTo(4.5 * 25.4, 9);
    expect(endToCrossCentres('2')?.value).toBeCloseTo(5.5 * 25.4, 9);
    expect(endToCrossCentres('3')).toBeNull();
  },
);
