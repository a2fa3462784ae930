import { expect } from 'vitest';
import { highestOf, lowestOf, ptoSpeedBand, ptoSpeedCap, ptoType } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf } from './rows.ts';

for (const [type, speed] of [
  [1, 540],
  [2, 1000],
  [3, 1000],
  [4, 1300],
] as const) {
  published(
    {
      source: 'encyclopedia-pto',
      locator: 'type table after ISO 500-1:2014',
      kind: 'reads',
      title: `type ${type} turns at ${speed} rpm`,
    },
    () => {
      expect(ptoType(type).speed.value).toBe(speed);
    },
  );
}

const source = 'tractor-code-of-practice';
const locator = 'ch. 8, pp. 13–15';

for (const [speed, low, high] of [
  [540, 530, 550],
  [1000, 975, 1025],
] as const) {
  published(
    { source, locator, kind: 'reads', title: `${speed} rpm under load stays within ${low}–${high} rpm` },
    () => {
      const row = rowOf(ptoSpeedBand(speed), source);
      expect([lowestOf(row), highestOf(row)]).toEqual([low, high]);
    },
  );
}

published({ source, locator, kind: 'reads', title: 'overspeed limits 630 and 1150 rpm' }, () => {
  expect(rowOf(ptoSpeedCap(540), source).value).toBe(630);
  expect(rowOf(ptoSpeedCap(1000), source).value).toBe(1150);
});

published(
  {
    source: 'manual-pto-overspeed',
    locator: 'overspeed table',
    kind: 'reads',
    title: 'a maker’s 1170 rpm stands beside 1150, both marked as disputed',
  },
  () => {
    expect(rowOf(ptoSpeedCap(1000), 'manual-pto-overspeed').value).toBe(1170);
    expect(ptoSpeedCap(1000).every((figure) => figure.disputed)).toBe(true);
  },
);
