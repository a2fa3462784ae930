import { describe, expect, test } from 'vitest';
import { suitcaseFigures, wheelWeights } from './castWeights.ts';
import { clayLoamDrafts, draftMachines, draftRow } from './draft.ts';
import {
  cutterPowers,
  drawbarShare,
  drivenMachines,
  driveTypes,
  fieldPace,
  fieldWorks,
  ptoDemand,
  ptoShare,
  surfaces,
} from './fieldWork.ts';
import { highestOf, lowestOf, type Figure } from './figure.ts';
import { disputedIndices, loadIndexFigure, loadIndexMass } from './loadIndex.ts';
import { operatorMass } from './operator.ts';
import { speedSymbolFigure, speedSymbols } from './speedSymbol.ts';
import {
  axleShareFigures,
  rearRuleNames,
  rearRules,
  standingParts,
  steeringRuleNames,
  steeringRules,
} from './steeringShare.ts';
import {
  fillSpread,
  fullestFill,
  tyreFillFigure,
  tyreFluid,
  tyreFluids,
  tyreLiquidMass,
  tyreSizes,
} from './tyreLiquid.ts';

const indices = Array.from({ length: 181 }, (_, index) => index);

const everyRow: readonly Figure[] = [
  ...indices.map(loadIndexFigure).filter((row) => row !== null),
  ...disputedIndices.map(({ figure }) => figure),
  ...speedSymbols.map(speedSymbolFigure),
  ...tyreFluids
    .map(tyreFluid)
    .flatMap(({ density, otherDensities, freezing }) => [density, ...otherDensities, ...freezing]),
  ...tyreSizes.map(tyreFillFigure).filter((row) => row !== null),
  ...[...steeringRuleNames, ...rearRuleNames].flatMap(axleShareFigures),
  ...suitcaseFigures(),
  ...wheelWeights.flatMap(({ mass, most }) => [mass, ...most]),
  ...fieldWorks.map(fieldPace).flatMap(({ speed, efficiency }) => [speed, efficiency]),
  ...drivenMachines.map(ptoDemand),
  ...cutterPowers.map(({ power }) => power),
  ...surfaces.flatMap((surface) => driveTypes.map((drive) => drawbarShare(surface, drive))),
  ...draftMachines
    .map(draftRow)
    .flatMap(({ a, b, c, soil, otherSoil, spread }) => [
      ...[a, b, c, spread],
      ...Object.values(soil),
      ...Object.values(otherSoil),
    ]),
  ...Object.values(clayLoamDrafts).flat(),
  ...[operatorMass, fullestFill, fillSpread, ptoShare],
];

const units = {
  kg: 1,
  lb: 0.45359237,
  '°C': 1,
  'km/h': 1,
  mph: 1.609344,
  'kg/L': 1,
  'lb/US gal': 0.45359237 / 3.785411784,
  'US gal': 3.785411784,
  '%': 0.01,
  'kW/m': 1,
  A: 1,
  B: 1,
  C: 1,
  F1: 1,
  F2: 1,
  F3: 1,
  F: 1,
  '± %': 0.01,
};

describe('every row about loads, tyres and power', () => {
  test('says what was printed, where, and how it is known', () => {
    expect(everyRow.length).toBeGreaterThan(450);
    for (const row of everyRow) {
      expect(row.printed).not.toBe('');
      expect(row.locator).not.toBe('');
      expect(Number.isFinite(lowestOf(row)) && highestOf(row) >= lowestOf(row)).toBe(true);
    }
  });

  test('has a confidence exactly when it comes from memory', () => {
    for (const row of everyRow) {
      expect(row.confidence !== undefined).toBe(row.status === 'memory');
      expect(row.source === 'memory').toBe(row.status === 'memory');
    }
  });

  test('printed as a plain number is that number in its unit', () => {
    const plain = everyRow.filter((row) => /^-?[\d.]+$/.test(row.printed) && row.printedUnit in units);
    expect(plain.length).toBeGreaterThan(350);
    for (const row of plain) {
      expect(row.value).toBeCloseTo(Number(row.printed) * units[row.printedUnit as keyof typeof units], 9);
    }
  });
});

describe('load index', () => {
  test('rises without a gap from 0 to 180 and ends there', () => {
    const masses = indices.map((index) => loadIndexMass(index) ?? NaN);
    for (const index of indices.slice(1)) expect(masses[index]).toBeGreaterThan(masses[index - 1] ?? NaN);
    expect([loadIndexMass(-1), loadIndexMass(181), loadIndexMass(99.5)]).toEqual([null, null, null]);
  });

  test('above 160 only 165 and 168 were read', () => {
    const seen = indices.slice(161).filter((index) => loadIndexFigure(index)?.status === 'read');
    expect(seen).toEqual([165, 168]);
    // Ten times the row 80 below it, as everywhere: half a kilogram is dropped in print.
    for (const index of indices.slice(161)) {
      expect(Math.abs((loadIndexMass(index) ?? NaN) / 10 - (loadIndexMass(index - 80) ?? NaN))).toBeLessThan(0.6);
    }
  });
});

test('speed symbols rise', () => {
  const speeds = speedSymbols.map((symbol) => speedSymbolFigure(symbol).value);
  expect([...speeds].sort((a, b) => a - b)).toEqual(speeds);
});

describe('liquid in tyres', () => {
  test('weighs by volume, fill and density, 15 % either way', () => {
    const water = tyreLiquidMass('16.9-34', 'water');
    const litres = 82 * 3.785411784;
    expect(water?.low).toBeCloseTo(litres * tyreFluid('water').density.value * 0.85, 9);
    expect(water?.high).toBeCloseTo(litres * tyreFluid('water').density.value * 1.15, 9);
    const less = tyreLiquidMass('16.9-34', 'water', 0.4);
    expect((less?.high ?? NaN) / (water?.high ?? NaN)).toBeCloseTo(0.4 / 0.75, 12);
  });

  test('finds a size however it is written, and no size that the chart does not list', () => {
    expect(tyreLiquidMass('16.9 r 34', 'water')).toEqual(tyreLiquidMass('16.9-34', 'water'));
    expect(tyreLiquidMass('17.5l-24', 'water')).toEqual(tyreLiquidMass('17.5L-24', 'water'));
    expect(tyreLiquidMass('9.50-16', 'water')).toBeNull();
    expect(tyreLiquidMass('toString', 'water')).toBeNull();
  });

  test('a stronger solution is heavier and freezes lower', () => {
    const pairs = [
      ['calciumChloride2lb', 'calciumChloride3_5lb'],
      ['calciumChloride3_5lb', 'calciumChloride5lb'],
      ['ethyleneGlycol38', 'ethyleneGlycol50'],
      ['propyleneGlycol40', 'propyleneGlycol50'],
    ] as const;
    for (const [weak, strong] of pairs) {
      expect(tyreFluid(strong).density.value).toBeGreaterThan(tyreFluid(weak).density.value);
      expect(tyreFluid(strong).freezing[0]?.value).toBeLessThan(tyreFluid(weak).freezing[0]?.value ?? NaN);
    }
  });
});

describe('rules for the shares of the axles', () => {
  const rules = [...steeringRuleNames.map(steeringRules), ...rearRuleNames.map(rearRules)];

  test('take a share that all their sources print', () => {
    for (const rule of rules) {
      const rows = axleShareFigures(rule.name);
      expect(new Set(rows.map(({ value }) => value))).toEqual(new Set([rule.share.value]));
      expect([rule.share.source, ...rule.share.also]).toEqual(rows.map(({ source }) => source));
    }
  });

  test('count everything in the total, and nothing that hangs behind in the tractor', () => {
    for (const rule of rules) {
      if (rule.base === 'total') expect(rule.counted).toEqual(standingParts);
      else expect(rule.counted.some((part) => ['implement', 'coupler', 'hungWeights'].includes(part))).toBe(false);
    }
  });
});

test('the ranges of the brush cutter page hold the rule of 5 hp/ft', () => {
  const rule = (5 * 0.7456998715822702) / 0.3048;
  expect([lowestOf(ptoDemand('brushCutter')), highestOf(ptoDemand('brushCutter'))].map((one) => one / rule)).toEqual([
    expect.closeTo(0.8, 9),
    expect.closeTo(1.4, 9),
  ]);
  for (const { width, power } of cutterPowers) {
    expect((rule * width) / 1000).toBeGreaterThanOrEqual(power.value);
    expect((rule * width) / 1000).toBeLessThanOrEqual(highestOf(power));
  }
});
