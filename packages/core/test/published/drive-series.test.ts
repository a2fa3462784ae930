import { describe, expect } from 'vitest';
import { torqueOf } from '../../src/engine/shaft/joints.ts';
import { seriesCross, seriesLengths, seriesNumbers, seriesPower } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, sum } from './rows.ts';

const first = 'shop-shaft-series-a';
const second = 'shop-shaft-series-b';
const kilowattsPerHorsepower = 0.7456998715822702;

/** Series · hp at 540, first and second table · hp at 1000, first table · cap and span of the cross [mm]. */
const printed = [
  [1, 16, 16, 24, 22, 54],
  [2, 21, 20, 32, 23.8, 61.3],
  [3, 30, 30, 47, 27, 70],
  [4, 35, 35, 54, 27, 74.6],
  [5, 47, 47, 72, 30.2, 80],
  [6, 62, 62, 98, 30.2, 92],
  [7, 74, 77, 114, 35, 94],
  [8, 91, 95, 145, 35, 106.5],
  [9, 141, null, 225, null, null],
] as const;

/** Horsepower of one source's row. */
function horsepower(series: (typeof seriesNumbers)[number], speed: 540 | 1000, source: string): number | null {
  const row = seriesPower(series, speed).find((figure) => figure.source === source);
  if (row === undefined) return null;
  expect(row.value / kilowattsPerHorsepower).toBeCloseTo(Number(row.printed), 9);
  return Number(row.printed);
}

describe('power of a size', () => {
  for (const [series, hp540, other540, hp1000] of printed) {
    published(
      {
        source: first,
        locator: 'series table',
        kind: 'reads',
        title: `size ${series}: ${hp540} hp at 540 and ${hp1000} hp at 1000 rpm`,
      },
      () => {
        expect(horsepower(series, 540, first)).toBe(hp540);
        expect(horsepower(series, 1000, first)).toBe(hp1000);
      },
    );
    const title = other540 === null ? 'none printed' : `${other540} hp`;
    published(
      {
        source: second,
        locator: 'series and cross table',
        kind: 'reads',
        title: `size ${series}: ${title} at 540 rpm`,
      },
      () => {
        expect(horsepower(series, 540, second)).toBe(other540);
        expect(horsepower(series, 1000, second)).toBeNull();
        const differ = other540 !== null && other540 !== hp540;
        expect(seriesPower(series, 540).every((row) => (row.disputed ?? false) === differ)).toBe(true);
      },
    );
  }
  published(
    {
      source: first,
      locator: 'series table',
      kind: 'reads',
      title: 'nine sizes; 517 hp at 540 and 811 hp at 1000 in all, rising',
    },
    () => {
      const column = (speed: 540 | 1000) => seriesNumbers.map((series) => horsepower(series, speed, first) ?? NaN);
      expect(column(540)).toHaveLength(9);
      expect(sum(column(540))).toBe(517);
      expect(sum(column(1000))).toBe(811);
      expect(rises(column(540)) && rises(column(1000))).toBe(true);
    },
  );
  published(
    {
      source: first,
      locator: 'series table',
      kind: 'computes',
      title: 'every size carries less torque at 1000 rpm than at 540, by a seventh to a fifth',
    },
    () => {
      for (const series of seriesNumbers) {
        const torque = (speed: 540 | 1000): number => torqueOf(seriesPower(series, speed)[0]?.value ?? NaN, speed);
        expect(torque(1000) / torque(540)).toBeGreaterThan(0.8);
        expect(torque(1000) / torque(540)).toBeLessThan(0.87);
      }
    },
  );
});

describe('cross of a size', () => {
  for (const [series, , , , cap, span] of printed) {
    const title = cap === null ? 'none printed' : `caps of ${cap} mm, ${span} mm over the caps`;
    published(
      { source: second, locator: 'series and cross table', kind: 'reads', title: `size ${series}: ${title}` },
      () => {
        const cross = seriesCross(series);
        expect(cross === null ? [null, null] : [cross.cap.value, cross.span.value]).toEqual([cap, span]);
      },
    );
  }
  published(
    { source: second, locator: 'series and cross table', kind: 'reads', title: 'eight spans, rising, 632.4 mm in all' },
    () => {
      const spans = seriesNumbers.map(seriesCross).flatMap((cross) => (cross === null ? [] : [cross.span.value]));
      expect(spans).toHaveLength(8);
      expect(sum(spans)).toBeCloseTo(632.4, 9);
      expect(rises(spans)).toBe(true);
    },
  );
});

describe('lengths as sold, joint centre to joint centre', () => {
  const inches = (source: string, series: (typeof seriesNumbers)[number]) =>
    seriesLengths(series)
      .filter(({ collapsed }) => collapsed.source === source)
      .map(({ collapsed, extended }) => [collapsed, extended].map(({ value }) => Math.round(value / 0.254) / 100));
  published(
    {
      source: first,
      locator: 'length table',
      kind: 'reads',
      title: 'sizes 1 to 4: nine lengths from 28→35 to 59→83 in, 388 and 530 in all',
    },
    () => {
      const rows = [
        [28, 35],
        [31, 41],
        [35, 47],
        [39, 53],
        [43, 59],
        [47, 64],
        [51, 71],
        [55, 77],
        [59, 83],
      ];
      for (const series of [1, 2, 3, 4] as const) expect(inches(first, series)).toEqual(rows);
      expect(sum(rows.map(([collapsed]) => collapsed ?? NaN))).toBe(388);
      expect(sum(rows.map(([, extended]) => extended ?? NaN))).toBe(530);
      expect(rises(rows.map(([collapsed]) => collapsed ?? NaN))).toBe(true);
    },
  );
  published(
    {
      source: first,
      locator: 'length table, its rule for larger sizes',
      kind: 'reads',
      title: 'sizes 5 to 8 come out one inch less, size 9 two',
    },
    () => {
      const longest = (series: (typeof seriesNumbers)[number]) => inches(first, series).at(-1);
      expect(longest(8)).toEqual([59, 82]);
      expect(longest(9)).toEqual([59, 81]);
    },
  );
  published(
    {
      source: second,
      locator: 'length table',
      kind: 'reads',
      title: 'ten lengths from 27→34 to 56→77 in; 42 and 48 printed in two ways; 36→43 out of step',
    },
    () => {
      expect(inches(second, 1)).toEqual([
        [27, 34],
        [30, 40],
        [32, 42],
        [36, 43],
        [37, 50],
        [40, 54],
        [42, 57],
        [48, 64],
        [53, 74],
        [56, 77],
      ]);
      const doubted = seriesLengths(1).filter(({ extended }) => extended.disputed);
      expect(doubted.map(({ collapsed }) => collapsed.printed)).toEqual(['36', '42', '48']);
    },
  );
});
