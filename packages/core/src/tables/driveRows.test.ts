import { expect, test } from 'vitest';
import { clearanceFigures, jointAngleFigures, overlapFigures } from './driveBands.ts';
import { driveRuleNames, driveRules } from './driveRules.ts';
import { seriesCross, seriesLengths, seriesNumbers, seriesPower } from './driveSeries.ts';
import { highestOf, lowestOf, type Figure } from './figure.ts';
import { ptoTypeNumbers } from './ptoTypes.ts';
import {
  drawbarPinDistance,
  endToCrossCentres,
  guardOverlap,
  passageClearance,
  sixSplinePowerCap,
  stubClearZone,
} from './shaftSurroundings.ts';

const everyRow: readonly Figure[] = [
  ...clearanceFigures(),
  ...overlapFigures().map(({ figure }) => figure),
  ...jointAngleFigures().map(({ figure }) => figure),
  ...seriesNumbers.flatMap((series) => [
    ...seriesPower(series, 540),
    ...seriesPower(series, 1000),
    ...Object.values(seriesCross(series) ?? {}),
    ...seriesLengths(series).flatMap(({ collapsed, extended }) => [collapsed, extended]),
  ]),
  ...ptoTypeNumbers.flatMap(drawbarPinDistance),
  ...(['1', '2', '3'] as const).flatMap((category) => endToCrossCentres(category) ?? []),
  ...[guardOverlap, passageClearance, sixSplinePowerCap, stubClearZone],
];

const plainly = { in: 25.4, mm: 1, cm: 10, kW: 1, '°': 1, hp: 0.7456998715822702 } as const;

test('every row of the drive shaft was seen in print or counted from it, and says where', () => {
  for (const row of everyRow) {
    expect(row.locator).not.toBe('');
    expect(['read', 'readSecondHand', 'derived']).toContain(row.status);
    expect(highestOf(row)).toBeGreaterThanOrEqual(lowestOf(row));
  }
});

test('what is printed as a plain number is that number in its unit', () => {
  const plain = everyRow.filter((row) => /^[\d.]+$/.test(row.printed));
  expect(plain.length).toBeGreaterThan(300);
  for (const row of plain) {
    expect(row.value).toBeCloseTo(Number(row.printed) * plainly[row.printedUnit as keyof typeof plainly], 9);
  }
});

test('a shaft comes out, and a longer one comes out farther', () => {
  for (const series of seriesNumbers) {
    for (const { collapsed, extended } of seriesLengths(series)) {
      expect(extended.value).toBeGreaterThan(1.15 * collapsed.value);
      expect(extended.value).toBeLessThan(1.45 * collapsed.value);
    }
  }
});

test('no set is laxer than the least cautious, or stricter than the most, by the millimetre', () => {
  const most = driveRules('mostCautious');
  const least = driveRules('leastCautious');
  for (const rules of driveRuleNames.map(driveRules)) {
    expect(rules.clearance.value).toBeLessThanOrEqual(most.clearance.value);
    expect(rules.clearance.value).toBeGreaterThanOrEqual(least.clearance.value);
    expect(rules.turningAngle.value).toBeGreaterThanOrEqual(most.turningAngle.value);
    expect(rules.turningAngle.value).toBeLessThanOrEqual(least.turningAngle.value);
    expect(rules.stopAngle.value).toBeGreaterThanOrEqual(most.stopAngle.value);
    expect(rules.stopAngle.value).toBeLessThanOrEqual(least.stopAngle.value);
    if (rules.overlap.kind === 'share') continue;
    expect(rules.overlap.figure.value).toBeLessThanOrEqual(most.overlap.figure.value);
    expect(rules.overlap.figure.value).toBeGreaterThanOrEqual(least.overlap.figure.value);
  }
});
