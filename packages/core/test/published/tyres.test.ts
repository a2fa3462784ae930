import { describe, expect } from 'vitest';
import {
  disputedIndices,
  loadIndexFigure,
  loadIndexMass,
  speedSymbolFigure,
  tyreFillFigure,
  tyreFluid,
  tyreLiquidMass,
  tyreSizes,
  type SourceId,
  type TyreFluid,
} from '../../src/tables/index.ts';
import { kgPerPound, litresPerGallon } from '../../src/units/index.ts';
import { published } from './register.ts';
import { rises, sum } from './rows.ts';

const upTo = (last: number): number[] => Array.from({ length: last + 1 }, (_, index) => index);

describe('load index', () => {
  const spots: readonly (readonly [SourceId, string, number, number])[] = [
    ['tyre-marking-page', 'the example 133A8', 133, 2060],
    ['tyre-article', 'paragraph on the marking of a tyre', 142, 2650],
    ['tyre-article', 'paragraph on the marking of a tyre', 157, 4125],
    ['manual-tyre-limits', 'tyre tables, pp. 174 and 222', 165, 5150],
    ['manual-tyre-limits', 'tyre tables, pp. 174 and 222', 168, 5600],
  ];
  for (const [source, locator, index, mass] of spots) {
    published({ source, locator, kind: 'reads', title: `load index ${index}: ${mass} kg` }, () => {
      expect(loadIndexMass(index)).toBe(mass);
      expect(loadIndexFigure(index)?.status).toBe('read');
    });
  }
  published(
    {
      source: 'load-index-open-tables',
      locator: 'load index tables, 42 to 160',
      kind: 'computes',
      title: 'rises from 0 to 160, and 80 steps further up a tyre carries ten times as much',
    },
    () => {
      const masses = upTo(160).map((index) => loadIndexMass(index) ?? NaN);
      expect(rises(masses)).toBe(true);
      // Halves are dropped in print: 387 stands for 387.5.
      for (const index of upTo(80)) {
        const tenth = (masses[index + 80] ?? NaN) / 10;
        expect(tenth - (masses[index] ?? NaN)).toBeGreaterThanOrEqual(0);
        expect(tenth - (masses[index] ?? NaN)).toBeLessThan(0.6);
      }
    },
  );
  const slips: readonly (readonly [SourceId, string, number, number, number])[] = [
    ['load-index-page', 'load index table, 0 to 119', 53, 205, 206],
    ['load-index-page', 'load index table, 0 to 119', 62, 165, 265],
    ['load-index-trailer-page', 'load index table', 83, 478, 487],
    ['load-index-tyre-page', 'load index table, 75 to 150', 135, 2190, 2180],
  ];
  for (const [source, locator, index, printed, followed] of slips) {
    published(
      { source, locator, kind: 'reads', title: `its ${printed} kg for ${index} is kept but not followed: ${followed}` },
      () => {
        expect(loadIndexMass(index)).toBe(followed);
        expect(loadIndexFigure(index)?.disputed).toBe(true);
        const kept = disputedIndices.filter((row) => row.index === index);
        expect(kept.map(({ figure }) => [figure.source, figure.value])).toEqual([[source, printed]]);
      },
    );
  }
});

describe('speed symbols', () => {
  const printed = [
    ['manual-tyre-limits', 'tyre tables, pp. 174 and 222', 'A8', 40],
    ['manual-tyre-limits', 'tyre tables, pp. 174 and 222', 'B', 50],
    ['tyre-article', 'paragraph on the marking of a tyre', 'D', 65],
    ['load-index-open-tables', 'speed table', 'J', 100],
    ['load-index-open-tables', 'speed table', 'K', 110],
    ['load-index-open-tables', 'speed table', 'L', 120],
  ] as const;
  for (const [source, locator, symbol, speed] of printed) {
    published({ source, locator, kind: 'reads', title: `speed symbol ${symbol}: ${speed} km/h` }, () => {
      expect(speedSymbolFigure(symbol)).toMatchObject({ value: speed, status: 'read', source });
    });
  }
});

describe('liquid in tyres', () => {
  /** Half way between what the spread gives: the chart itself. */
  const charted = (size: string, fluid: TyreFluid): number => {
    const mass = tyreLiquidMass(size, fluid);
    if (mass === null) throw new Error(`the chart has no ${size}`);
    return (mass.low + mass.high) / 2;
  };
  published({ source: 'fill-chart', locator: 'the chart', kind: 'computes', title: '16.9-34: 684 lb of water' }, () => {
    expect(charted('16.9-34', 'water') / kgPerPound).toBeCloseTo(684, 0);
  });
  const pounds = {
    '4.00-12': 17,
    '5.00-15': 29,
    '6.00-12': 37,
    '6.00-14': 41,
    '6.00-16': 50,
    '7.2-24': 75,
    '7.50-16': 75,
    '8.3-24': 108,
    '9.5-16': 100,
    '9.5-24': 142,
    '9.50-20': 150,
    '11.2-24': 200,
    '11.2-28': 225,
    '12.4-16': 175,
    '12.4-24': 250,
    '12.4-28': 292,
    '13.6-24': 317,
    '13.6-28': 359,
    '13.6-38': 475,
    '14.9-24': 392,
    '14.9-28': 442,
    '14.9-38': 559,
    '16.9-24': 509,
    '16.9-28': 575,
    '16.9-30': 609,
    '16.9-34': 684,
    '16.9-38': 751,
    '17.5L-24': 459,
    '18.4-30': 742,
    '18.4-34': 834,
    '18.4-38': 917,
    '19.5L-24': 609,
    '20.8-38': 1168,
  };
  published(
    {
      source: 'fill-chart',
      locator: 'the chart',
      kind: 'computes',
      title: 'its 33 sizes: gallons times the weight of water are the printed pounds within 1 lb',
    },
    () => {
      expect([...tyreSizes].sort()).toEqual(Object.keys(pounds).sort());
      for (const [size, printed] of Object.entries(pounds)) {
        expect(Math.abs(charted(size, 'water') / kgPerPound - printed)).toBeLessThanOrEqual(1);
      }
      expect(sum(tyreSizes.map((size) => tyreFillFigure(size)?.value ?? NaN)) / litresPerGallon).toBeCloseTo(1483, 6);
    },
  );
  const source = 'manual-tyre-liquid';
  const locator = 'liquid ballast tables, pp. 74 and 72';
  for (const [fluid, printed] of [
    ['calciumChloride3_5lb', 376],
    ['calciumChloride5lb', 399],
  ] as const) {
    published({ source, locator, kind: 'computes', title: `16.9R34 at 75 %, ${fluid}: ${printed} kg` }, () => {
      expect(Math.abs(charted('16.9R34', fluid) / printed - 1)).toBeLessThan(0.01);
    });
  }
  const masses = [
    ['16.9R34', 342, 376, 399],
    ['18.4R34', null, 457, 491],
    ['12.4-16', 85, 89, 94],
  ] as const;
  const salts = ['calciumChloride2lb', 'calciumChloride3_5lb', 'calciumChloride5lb'] as const;
  for (const [size, ...printed] of masses) {
    const told = printed.filter((mass) => mass !== null);
    published(
      { source, locator, kind: 'computes', title: `${size}: ${told.join(', ')} kg lie within the spread` },
      () => {
        printed.forEach((mass, at) => {
          const range = tyreLiquidMass(size, salts[at] ?? 'water');
          if (mass === null) return;
          expect(range?.low).toBeLessThan(mass);
          expect(range?.high).toBeGreaterThan(mass);
        });
      },
    );
  }
  published(
    {
      source,
      locator,
      kind: 'computes',
      title: 'the 378 kg of its weakest salt in an 18.4R34 is what plain water weighs, and is not followed',
    },
    () => {
      expect(Math.abs(charted('18.4R34', 'water') / 378 - 1)).toBeLessThan(0.005);
      expect(charted('18.4R34', 'calciumChloride2lb') / 378).toBeGreaterThan(1.09);
    },
  );
  const densities: readonly (readonly [SourceId, string, TyreFluid, number, number])[] = [
    ['engine-manual-coolant', 'coolant table, p. 48', 'ethyleneGlycol50', 1.0671, -35],
    ['engine-manual-coolant', 'coolant table, p. 48', 'ethyleneGlycol38', 1.0506, -20],
    ['handbook-brines', 'brine tables, pp. 458 and 459', 'propyleneGlycol40', 1.032, -20.6],
    ['handbook-brines', 'brine tables, pp. 458 and 459', 'propyleneGlycol50', 1.04, -33.3],
    ['handbook-brines', 'brine tables, pp. 458 and 459', 'magnesiumChloride21', 1.19, -31],
    ['handbook-brines', 'brine tables, pp. 458 and 459', 'magnesiumChloride25', 1.23, -23],
    ['handbook-methanol', 'antifreeze table, p. 7', 'methanol30', 0.963, -20],
    ['handbook-methanol', 'antifreeze table, p. 7', 'methanol35', 0.956, -25],
    ['handbook-methanol', 'antifreeze table, p. 7', 'methanol40', 0.949, -30],
  ];
  for (const [from, where, fluid, density, freezing] of densities) {
    published(
      { source: from, locator: where, kind: 'reads', title: `${fluid}: ${density} kg/L, liquid to ${freezing} °C` },
      () => {
        const facts = tyreFluid(fluid);
        expect(facts.density).toMatchObject({ value: density, source: from, status: 'read' });
        expect(facts.freezing.map(({ value }) => value)).toEqual([freezing]);
      },
    );
  }
});
