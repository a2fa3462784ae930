import type { SetupDocument } from '../../records/index.ts';
import { readingOf, type Tool } from '../advice/index.ts';
import { hull, interval, middle, width, type Interval } from '../geometry/index.ts';
import { besideOf, knownAt } from './known.ts';

/** What several readings of one length come to. */
export type Agreement =
  /** One reading so far. */
  | { readonly kind: 'once'; readonly range: Interval }
  /** Two of them agree; others are set aside. */
  | { readonly kind: 'agrees'; readonly range: Interval; readonly setAside: number }
  /** They are farther apart than the tool explains. */
  | {
      readonly kind: 'disagrees';
      /** What all of them together leave open. */
      readonly range: Interval;
      /** How far the closest two are apart [canonical unit]. */
      readonly apart: number;
      readonly allowed: number;
      readonly looksLike: Suspicion | null;
    };

/** What a difference between two readings looks like: other edges of a pin, or two sides that don’t stand alike. */
export type Suspicion = 'edges' | 'uneven';

/** Readings that are best taken once on the left and once on the right: a fault on one side then shows. */
const twoSided =
  /\.(ballHeightLow|ballHeightHigh|parkedPinHeight|workPinHeight|standOut|shoulderToHole|lowerPinDiameter|lowerBallBore|lowerBallWidth|tyreRadius)$/;

/** How far apart two sides of a lift may stand before the arms want levelling [mm]. Common practice, no source. */
const unevenFrom = 10;

/**
 * Whether the second reading of a field is best taken on the other side of the machine.
 *
 * @param path field path, with dots [text]
 * @returns true for what there is one of on each side [flag]
 */
export function isTwoSided(path: string): boolean {
  return twoSided.test(path);
}

/**
 * How far apart two readings of one figure may lie and still be the same: twice what the tool may be off.
 *
 * @param path field path, with dots [text]
 * @param about the figure, roughly [canonical unit]
 * @param tool what it was read with, where another than usual [name]
 * @returns largest difference [canonical unit]
 * @source common practice, no source
 */
export function allowedApart(path: string, about: number, tool?: Tool): number {
  return 2 * readingOf(path, about, tool).accuracy;
}

/**
 * What several readings of one figure come to. Two that agree are kept, their middle with what the tool may be off; where no
 * two agree, everything that they leave open is kept and said.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, with dots [text]
 * @param values the readings, in the order taken, at least one [canonical unit]
 * @param tool what they were read with, where another than usual [name]
 * @returns the range that they leave open, and how they agree [record]
 */
export function agreementOf(
  document: SetupDocument,
  path: string,
  values: readonly [number, ...number[]],
  tool?: Tool,
): Agreement {
  const { accuracy } = readingOf(path, Math.max(...values.map(Math.abs)), tool);
  const around = (a: number, b = a): Interval => interval(Math.min(a, b) - accuracy, Math.max(a, b) + accuracy);
  if (values.length === 1) return { kind: 'once', range: around(values[0]) };
  const [closest] = pairsOf(values).sort((a, b) => width(a) - width(b));
  if (closest === undefined) throw new Error('invariant: two readings make a pair');
  const apart = width(closest);
  if (apart <= allowedApart(path, middle(closest), tool) + rounding) {
    const kept = interval(
      Math.min(middle(closest) - accuracy, closest.low),
      Math.max(middle(closest) + accuracy, closest.high),
    );
    return { kind: 'agrees', range: kept, setAside: values.length - 2 };
  }
  const range = values.map((value) => around(value)).reduce(hull);
  const allowed = allowedApart(path, middle(closest), tool);
  return { kind: 'disagrees', range, apart, allowed, looksLike: suspicion(document, path, apart) };
}

const rounding = 1e-9;

function pairsOf(values: readonly number[]): Interval[] {
  return values.flatMap((a, i) => values.slice(i + 1).map((b) => interval(Math.min(a, b), Math.max(a, b))));
}

/** Heights of pins and links tell uneven arms; lengths between pins tell edges where they differ by about one pin. */
function suspicion(document: SetupDocument, path: string, apart: number): Suspicion | null {
  if (/\.(ballHeight\w+|parkedPinHeight|workPinHeight)$/.test(path)) return apart >= unevenFrom ? 'uneven' : null;
  if (!/\.(shoulderSpan|mastHeight|standOut|hookSpan)$/.test(path)) return null;
  const pin = knownAt(document, besideOf(path, 'lowerPinDiameter').replace(/^coupler\.(?!front)/, 'implement.'));
  return [0.5, 1].some((part) => apart >= part * pin.low - 2 && apart <= part * pin.high + 2) ? 'edges' : null;
}
