import { expect } from 'vitest';
import { categoryPower } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, rowOf, sum } from './rows.ts';

const four = ['1', '2', '3', '4'] as const;

{
  const source = 'paes-118-2001';
  const locator = 'maximum drawbar power per category, quoted second hand';
  published(
    {
      source,
      locator,
      kind: 'reads',
      title: '15–35, 30–75, 60–168, 135–300 kW: four rows, rising, limits adding up to 818',
    },
    () => {
      const rows = four.map((category) => rowOf(categoryPower(category), source));
      expect(rows.map((row) => [row.value, row.high])).toEqual([
        [15, 35],
        [30, 75],
        [60, 168],
        [135, 300],
      ]);
      expect(rows.every((row) => row.status === 'readSecondHand')).toBe(true);
      expect(rises(rows.map((row) => row.value))).toBe(true);
      expect(sum(rows.flatMap((row) => [row.value, row.high ?? NaN]))).toBe(818);
    },
  );
}

published(
  {
    source: 'manual-seed-drill',
    locator: 'p. 19',
    kind: 'reads',
    title: 'power rows 92 (most), 80–185 and 150–350 kW for 2, 3 and 4',
  },
  () => {
    const rows = (['2', '3', '4'] as const).map((category) => rowOf(categoryPower(category), 'manual-seed-drill'));
    expect(rows.map((row) => [row.value, row.high])).toEqual([
      [92, undefined],
      [80, 185],
      [150, 350],
    ]);
  },
);

published(
  {
    source: 'din-iso-730-1-shop-summary',
    locator: 'the one table',
    kind: 'reads',
    title: 'upper limits 15, 35, 75, 168 kW for 0, 1, 2, 3 rise',
  },
  () => {
    const limits = (['0', '1', '2', '3'] as const).map(
      (category) => rowOf(categoryPower(category), 'din-iso-730-1-shop-summary').value,
    );
    expect(limits).toEqual([15, 35, 75, 168]);
    expect(rises(limits)).toBe(true);
  },
);

published(
  {
    source: 'manual-plough',
    locator: 'p. 43',
    kind: 'reads',
    title: 'power rows 60–185, 60–185 and 110–350 kW for 3N, 3 and 4N',
  },
  () => {
    const rows = (['3N', '3', '4N'] as const).map((category) => rowOf(categoryPower(category), 'manual-plough'));
    expect(rows.map((row) => [row.value, row.high])).toEqual([
      [60, 185],
      [60, 185],
      [110, 350],
    ]);
  },
);
