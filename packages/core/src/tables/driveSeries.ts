import type { Cite } from './citations.ts';
import { shaftLengthsA, shaftLengthsB, shaftSeriesA, shaftSeriesB } from './driveCitations.ts';
import type { Figure, FigureExtra } from './figure.ts';

/** 550 ft·lbf/s */
const kilowattsPerHorsepower = 0.7456998715822702;

/** The sizes in which drive shafts are sold, by the number stamped on them. */
export const seriesNumbers = [1, 2, 3, 4, 5, 6, 7, 8, 9] as const;

/** One size of drive shaft by its number. */
export type SeriesNumber = (typeof seriesNumbers)[number];

interface SeriesRow {
  /** [hp] at 540 rpm: both shop tables, null where the second prints none */
  readonly at540: readonly [number, number | null];
  /** [hp] at 1000 rpm: the first table only */
  readonly at1000: number;
  /** cap diameter and span over the caps of the cross [mm] */
  readonly cross: readonly [number, number] | null;
}

const rows: Readonly<Record<SeriesNumber, SeriesRow>> = {
  1: { at540: [16, 16], at1000: 24, cross: [22, 54] },
  2: { at540: [21, 20], at1000: 32, cross: [23.8, 61.3] },
  3: { at540: [30, 30], at1000: 47, cross: [27, 70] },
  4: { at540: [35, 35], at1000: 54, cross: [27, 74.6] },
  5: { at540: [47, 47], at1000: 72, cross: [30.2, 80] },
  6: { at540: [62, 62], at1000: 98, cross: [30.2, 92] },
  7: { at540: [74, 77], at1000: 114, cross: [35, 94] },
  8: { at540: [91, 95], at1000: 145, cross: [35, 106.5] },
  9: { at540: [141, null], at1000: 225, cross: null },
};

function horsepower(cite: Cite, hp: number, extra: FigureExtra = {}): Figure {
  return cite(hp * kilowattsPerHorsepower, String(hp), 'hp', { bound: 'most', ...extra });
}

/**
 * Power that shops print for a size of drive shaft at a PTO speed. Common practice of the trade, no standard; the tables
 * differ at 540 rpm for sizes 2, 7 and 8, and only one of them prints 1000 rpm and size 9.
 *
 * @param series size [1–9]
 * @param speed PTO speed [rpm]
 * @returns rows, printed in hp [kW]
 * @example seriesPower(4, 540).map((row) => row.printed); // ['35', '35']
 * @source shop-shaft-series-a, shop-shaft-series-b
 */
export function seriesPower(series: SeriesNumber, speed: 540 | 1000): readonly Figure[] {
  const { at540, at1000 } = rows[series];
  if (speed === 1000) return [horsepower(shaftSeriesA, at1000)];
  const [first, second] = at540;
  const extra = second === null || second === first ? {} : ({ disputed: true } as const);
  if (second === null) return [horsepower(shaftSeriesA, first)];
  return [horsepower(shaftSeriesA, first, extra), horsepower(shaftSeriesB, second, extra)];
}

/** The cross of one size of joint. */
export interface SeriesCross {
  /** diameter of a bearing cap [mm] */
  readonly cap: Figure;
  /** from cap to cap over the cross [mm] */
  readonly span: Figure;
}

/**
 * Bearing caps and span of the cross by which a size can be told with a caliper. Sizes 3 and 4, 5 and 6, 7 and 8 share
 * their caps: the span decides.
 *
 * @param series size [1–9]
 * @returns cap and span, null for size 9, which no source read here prints [mm]
 * @source shop-shaft-series-b
 */
export function seriesCross(series: SeriesNumber): SeriesCross | null {
  const { cross } = rows[series];
  if (cross === null) return null;
  const [cap, span] = cross;
  return { cap: shaftSeriesB(cap, String(cap), 'mm'), span: shaftSeriesB(span, String(span), 'mm') };
}

/** One shaft as sold, joint centre to joint centre. */
export interface ShaftLength {
  /** pushed fully together [mm] */
  readonly collapsed: Figure;
  /** pulled out as far as the shop allows [mm] */
  readonly extended: Figure;
}

const listA: readonly (readonly [number, number])[] = [
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

/** [collapsed, extended, extended as another page of the shop prints it] in inches */
const listB: readonly (readonly [number, number, number?])[] = [
  [27, 34],
  [30, 40],
  [32, 42],
  [36, 43],
  [37, 50],
  [40, 54],
  [42, 57, 58],
  [48, 64, 65],
  [53, 74],
  [56, 77],
];

function inches(cite: Cite, from: number, to?: number): Figure {
  if (to === undefined) return cite(from * 25.4, String(from), 'in');
  return cite(from * 25.4, `${from} or ${to}`, 'in', { high: to * 25.4, disputed: true });
}

/** How much less far larger sizes come out, as the first table says once for all lengths [in]. */
function shortfall(series: SeriesNumber): number {
  if (series <= 4) return 0;
  return series === 9 ? 2 : 1;
}

function lengthA(collapsed: number, extended: number, less: number): ShaftLength {
  const full = inches(shaftLengthsA, extended - less);
  const told = { status: 'derived', note: `${less} in less than for sizes 1 to 4` } as const;
  return { collapsed: inches(shaftLengthsA, collapsed), extended: less === 0 ? full : { ...full, ...told } };
}

function lengthB([collapsed, extended, other]: readonly [number, number, number?]): ShaftLength {
  const odd = collapsed === 36 ? ({ disputed: true, note: 'out of step with its neighbours' } as const) : {};
  return {
    collapsed: inches(shaftLengthsB, collapsed),
    extended: { ...inches(shaftLengthsB, extended, other), ...odd },
  };
}

/**
 * Lengths in which shafts are sold, both lists: the first by size, the second without saying for which sizes. A short
 * shaft comes out by a quarter of its length, a long one by two fifths, because yokes take a fixed part.
 *
 * @param series size [1–9]
 * @returns shafts, joint centre to joint centre, shortest first within each list [mm]
 * @example seriesLengths(1)[0]?.extended.value; // 889
 * @source shop-shaft-series-a, shop-shaft-series-b
 */
export function seriesLengths(series: SeriesNumber): readonly ShaftLength[] {
  const less = shortfall(series);
  return [...listA.map(([collapsed, extended]) => lengthA(collapsed, extended, less)), ...listB.map(lengthB)];
}
