import { kgPerPound, litresPerGallon } from '../units/index.ts';
import { own, type Cite } from './citations.ts';
import { highestOf, lowestOf, type Figure, type FigureExtra } from './figure.ts';
import {
  beetPage,
  brines,
  coolant,
  fillChart,
  fluidDealer,
  fluidForum,
  fluidPages,
  liquidDerived,
  liquidManual,
  methanol,
} from './loadCitations.ts';

/** Liquids that tyres are filled with; a number is a share in per cent, or pounds of salt to the US gallon of water. */
export const tyreFluids = [
  'water',
  'calciumChloride2lb',
  'calciumChloride3_5lb',
  'calciumChloride5lb',
  'beetJuice',
  'ethyleneGlycol38',
  'ethyleneGlycol50',
  'propyleneGlycol40',
  'propyleneGlycol50',
  'methanol30',
  'methanol35',
  'methanol40',
  'magnesiumChloride21',
  'magnesiumChloride25',
] as const;

/** One liquid by its name. */
export type TyreFluid = (typeof tyreFluids)[number];

/** What is known of one liquid. */
export interface TyreFluidFacts {
  /** the row that is reckoned with [kg/L] */
  readonly density: Figure;
  /** rows that are not followed; their notes say why [kg/L] */
  readonly otherDensities: readonly Figure[];
  /** down to where it stays liquid [°C] */
  readonly freezing: readonly Figure[];
}

const perGallon = (source: Cite, pounds: number, extra: FigureExtra = {}): Figure =>
  source((pounds * kgPerPound) / litresPerGallon, String(pounds), 'lb/US gal', extra);
const heavier = (source: Cite, percent: number, extra: FigureExtra = {}): Figure =>
  source(1 + percent / 100, String(percent), '% over water', extra);
const dense = (source: Cite, density: number, extra: FigureExtra = {}): Figure =>
  source(density, String(density), 'kg/L', extra);
const celsius = (source: Cite, degrees: number, note?: string): Figure =>
  source(degrees, String(degrees), '°C', note === undefined ? {} : { note });
const fahrenheit = (source: Cite, degrees: number): Figure => source(((degrees - 32) * 5) / 9, String(degrees), '°F');

const aside = (note: string): FigureExtra => ({ disputed: true, note });
const unstated = aside('does not say how strong the solution is');
const fromHandbook = (density: Figure, freezing: Figure): TyreFluidFacts => ({
  density,
  otherDensities: [],
  freezing: [freezing],
});

const fluids: Readonly<Record<TyreFluid, TyreFluidFacts>> = {
  water: {
    density: perGallon(fluidPages, 8.34),
    otherDensities: [perGallon(fluidPages, 8.3, { note: 'rounded' }), perGallon(fluidForum, 8.35)],
    freezing: [celsius(fluidPages, 0)],
  },
  calciumChloride2lb: {
    density: heavier(liquidDerived, 10, { note: '342 kg of it where the fill chart holds 310 kg of water' }),
    otherDensities: [],
    freezing: [celsius(liquidManual, -10, 'free of slush'), celsius(liquidManual, -30, 'solid')],
  },
  calciumChloride3_5lb: {
    density: heavier(fluidDealer, 20),
    otherDensities: [],
    freezing: [celsius(liquidManual, -24, 'free of slush')],
  },
  calciumChloride5lb: {
    density: heavier(fluidDealer, 28),
    otherDensities: [
      perGallon(fluidPages, 11, unstated),
      perGallon(fluidPages, 11.3, unstated),
      perGallon(fluidPages, 11.5, unstated),
      perGallon(fluidPages, 13, aside('more than any solution weighs in the other sources')),
      heavier(fluidForum, 40, unstated),
    ],
    freezing: [celsius(liquidManual, -47, 'free of slush')],
  },
  beetJuice: {
    density: perGallon(beetPage, 11),
    otherDensities: [heavier(fluidPages, 30, aside('1.4 % below the other page'))],
    freezing: [fahrenheit(beetPage, -35), fahrenheit(fluidPages, -32)],
  },
  ethyleneGlycol38: {
    density: dense(coolant, 1.0506, { note: '38.5 %' }),
    otherDensities: [],
    freezing: [celsius(coolant, -20)],
  },
  ethyleneGlycol50: {
    density: dense(coolant, 1.0671, { note: 'at 20 °C' }),
    otherDensities: [
      perGallon(fluidPages, 9.4, aside('nearly what glycol weighs without any water')),
      heavier(fluidForum, 0, aside('as light as water, which no mix is')),
    ],
    freezing: [celsius(coolant, -35)],
  },
  propyleneGlycol40: fromHandbook(dense(brines, 1.032, { note: 'by volume' }), celsius(brines, -20.6)),
  propyleneGlycol50: fromHandbook(dense(brines, 1.04, { note: 'by volume' }), celsius(brines, -33.3)),
  methanol30: fromHandbook(dense(methanol, 0.963, { note: 'by volume' }), celsius(methanol, -20)),
  methanol35: fromHandbook(dense(methanol, 0.956, { note: 'by volume' }), celsius(methanol, -25)),
  methanol40: {
    density: dense(methanol, 0.949, { note: 'by volume; much like screen-washer fluid' }),
    otherDensities: [
      perGallon(fluidPages, 7.6, aside('washer fluid of a strength not told')),
      perGallon(fluidPages, 7.8, aside('washer fluid of a strength not told; printed as approximate')),
      perGallon(fluidDealer, 6.5, aside('pure methanol, not the mix')),
      heavier(fluidForum, 0, aside('as light as water, which the mix is not')),
    ],
    freezing: [celsius(methanol, -30)],
  },
  magnesiumChloride21: fromHandbook(dense(brines, 1.19, { note: 'by weight' }), celsius(brines, -31)),
  magnesiumChloride25: fromHandbook(dense(brines, 1.23, { note: 'by weight' }), celsius(brines, -23)),
};

/**
 * What is known of a liquid that tyres are filled with.
 *
 * @param fluid which liquid [one of tyreFluids]
 * @returns its density, rows not followed, and where it freezes [kg/L, °C]
 * @example tyreFluid('calciumChloride5lb').density.value; // 1.28
 * @source fluid-pages, forum-tyre-liquid, tyre-dealer-liquid, beet-juice-page, manual-tyre-liquid, engine-manual-coolant,
 * handbook-brines, handbook-methanol
 */
export function tyreFluid(fluid: TyreFluid): TyreFluidFacts {
  return fluids[fluid];
}

/** How full a tyre may be, the valve standing at the top: full to the brim it has no cushion of air [share]. @source manual-tyre-liquid */
export const fullestFill: Figure = liquidManual(0.75, '75', '% of the tyre', { bound: 'most' });

/** How far makers' figures stand from the chart, either way [share]. The figures read differ by up to 10 %. */
export const fillSpread: Figure = own(0.15, '15', '%', { note: 'between makers, for the same size at 75 %' });

/** US gallons by size as the dealer's chart prints them; it does not say how full, but agrees with manuals at 75 %. */
const gallons = {
  '4.00-12': 2,
  '5.00-15': 3.5,
  '6.00-12': 4.5,
  '6.00-14': 5,
  '6.00-16': 6,
  '7.2-24': 9,
  '7.50-16': 9,
  '8.3-24': 13,
  '9.5-16': 12,
  '9.5-24': 17,
  '9.50-20': 18,
  '11.2-24': 24,
  '11.2-28': 27,
  '12.4-16': 21,
  '12.4-24': 30,
  '12.4-28': 35,
  '13.6-24': 38,
  '13.6-28': 43,
  '13.6-38': 57,
  '14.9-24': 47,
  '14.9-28': 53,
  '14.9-38': 67,
  '16.9-24': 61,
  '16.9-28': 69,
  '16.9-30': 73,
  '16.9-34': 82,
  '16.9-38': 90,
  '17.5L-24': 55,
  '18.4-30': 89,
  '18.4-34': 100,
  '18.4-38': 110,
  '19.5L-24': 73,
  '20.8-38': 140,
} as const;

/** One size of the chart, as it is printed there. */
export type TyreSize = keyof typeof gallons;

/** The sizes of the chart. */
export const tyreSizes = Object.keys(gallons) as readonly TyreSize[];

/** 16.9R34 and 16.9 - 34 are the chart's 16.9-34. */
const asCharted = (size: string): string => size.toUpperCase().replace(/\s/g, '').replace(/[R–/]/, '-');

/**
 * How much liquid a tyre of a size holds when filled to 75 %.
 *
 * @param size size as it stands on the tyre; R and - mean the same here [text]
 * @returns the chart's row, null for a size it does not list [L]
 * @source fill-chart
 */
export function tyreFillFigure(size: string): Figure | null {
  const charted = tyreSizes.find((one) => one === asCharted(size));
  if (charted === undefined) return null;
  const volume = gallons[charted];
  return fillChart(volume * litresPerGallon, String(volume), 'US gal');
}

/**
 * What the liquid in one tyre weighs: the chart's volume at the given fill times the density, with the spread between
 * makers either way. It counts on the weighbridge and towards axle, total and, cautiously, the tyre's own limit.
 *
 * @param size size as it stands on the tyre; R and - mean the same here [text]
 * @param fluid which liquid [one of tyreFluids]
 * @param fill how full the tyre is [0–1 of its volume]
 * @returns least and most, null for a size that the chart does not list [kg per tyre]
 * @example tyreLiquidMass('16.9-34', 'water'); // { low: 263.7, high: 356.7 }
 * @source fill-chart, and those of tyreFluid
 */
export function tyreLiquidMass(
  size: string,
  fluid: TyreFluid,
  fill: number = fullestFill.value,
): { readonly low: number; readonly high: number } | null {
  const volume = tyreFillFigure(size);
  if (volume === null) return null;
  const litres = (volume.value * fill) / fullestFill.value;
  const { density } = fluids[fluid];
  return {
    low: litres * lowestOf(density) * (1 - fillSpread.value),
    high: litres * highestOf(density) * (1 + fillSpread.value),
  };
}
