import type { SetupDocument } from '../../records/index.ts';
import { readingOf, type Tool } from '../advice/index.ts';
import { hull, interval, middle, width, type Interval } from '../geometry/index.ts';
import { suspicionsOf, type Suspicion } from './suspicion.ts';

/** What several readings of one length come to. */
export type Agreement =
  /** One reading so far. */
  | { readonly kind: 'once'; readonly range: Interval }
  /** So many of them agree; others are set aside. */
  | { readonly kind: 'agrees'; readonly range: Interval; readonly kept: number; readonly setAside: number }
  /** They are farther apart than the tool explains. */
  | {
      readonly kind: 'disagrees';
      /** What all of them together leave open. */
      readonly range: Interval;
      /** How far the closest two are apart [canonical unit]. */
      readonly apart: number;
      readonly allowed: number;
      /** What a difference like this comes from, the most telling first. */
      readonly looksLike: readonly Suspicion[];
    };

/** Readings that are best taken once on the left and once on the right: a fault on one side then shows. */
const twoSided =
  /\.(ballHeightLow|ballHeightHigh|parkedPinHeight|workPinHeight|standOut|shoulderToHole|lowerPinDiameter|lowerBallBore|lowerBallWidth|tyreRadius)$/;

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
 * What several readings of one figure come to, in whichever order they were taken. The most of them that agree are kept, the
 * middle between them with what the tool may be off; where no two agree, everything that they leave open is kept and said.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, with dots [text]
 * @param values the readings, at least one [canonical unit]
 * @param tool what they were read with, where another than usual [name]
 * @returns the range that they leave open, and how they agree [record]
 */
export function agreementOf(
  document: SetupDocument,
  path: string,
  values: readonly [number, ...number[]],
  tool?: Tool,
): Agreement {
  const sorted = [...values].sort((a, b) => a - b);
  const { accuracy } = readingOf(path, Math.max(...values.map(Math.abs)), tool);
  const around = ({ low, high }: Interval): Interval => {
    const centre = (low + high) / 2;
    return interval(Math.min(low, centre - accuracy), Math.max(high, centre + accuracy));
  };
  const whole = interval(sorted[0] as number, sorted.at(-1) as number);
  if (sorted.length === 1) return { kind: 'once', range: around(whole) };
  const groups = groupsIn(sorted, (a, b) => (allowedApart(path, a, tool) + allowedApart(path, b, tool)) / 2);
  if (groups.length > 0) {
    const kept = sorted.filter((value) => groups.some(({ low, high }) => value >= low && value <= high)).length;
    return { kind: 'agrees', range: groups.map(around).reduce(hull), kept, setAside: sorted.length - kept };
  }
  const closest = neighbours(sorted).reduce((best, pair) => (width(pair) < width(best) ? pair : best));
  const apart = width(closest);
  const range = interval(whole.low - accuracy, whole.high + accuracy);
  const allowed = allowedApart(path, middle(closest), tool);
  return { kind: 'disagrees', range, apart, allowed, looksLike: suspicionsOf(document, path, apart, accuracy) };
}

const rounding = 1e-9;

/** The largest groups of readings that all agree with one another, at least two in each, from the lowest to the highest of each. */
function groupsIn(sorted: readonly number[], allowed: (a: number, b: number) => number): Interval[] {
  const groups = sorted.map((low, i) => {
    const agreeing = sorted.slice(i).filter((high) => high - low <= allowed(low, high) + rounding);
    return { low, high: agreeing.at(-1) as number, size: agreeing.length };
  });
  const most = Math.max(...groups.map(({ size }) => size));
  return most < 2 ? [] : groups.filter(({ size }) => size === most);
}

function neighbours(sorted: readonly number[]): Interval[] {
  return sorted.slice(1).map((high, i) => interval(sorted[i] as number, high));
}
