import { middle, width, type Interval } from '../geometry/index.ts';
import type { Ground } from './ground.ts';
import type { MovablePath } from './plan.ts';
import {
  accepted,
  holdsAt,
  leastValue,
  readsAny,
  widestRange,
  type Places,
  type Range,
  type Search,
} from './search.ts';

/** Ranges by measure; what is left out stays as it is. */
export type Ranges = Readonly<Partial<Record<MovablePath, Range>>>;

const [span, tip, hole] = ['implement.shoulderSpan', 'implement.standOut', 'implement.shoulderToHole'] as const;

/** A range of the spread narrower than this is not asked of anyone who cuts and welds [mm], our own choice. */
const leastWidth = 2;
/** How much of the spread is used where longer pins have to be made for it anyway [mm], our own choice. */
const ampleWidth = 6;

/**
 * Where the lower pins have to stand: with the pins that are there, or where those are too short at every spread, with longer
 * ones as near to where they are as the hooks let them.
 */
export function lowerRanges(ground: Ground): Ranges | null {
  const search = searchOn(ground, [span, tip, hole]);
  if (search.checks.length === 0) return {};
  const asTheyAre = widestRange(search, span, {});
  if (asTheyAre !== null && widthOf(asTheyAre) >= leastWidth) return { [span]: asTheyAre };
  const longer = withLongerPins(ground, search);
  return longer ?? (asTheyAre === null ? null : { [span]: asTheyAre });
}

function withLongerPins(ground: Ground, search: Search): Ranges | null {
  const { question, now } = ground;
  const bySpreadAlone = search.checks.filter((check) => !readsAny(question, check, [tip, hole]));
  const free = widestRange({ ...search, checks: bySpreadAlone }, span, {});
  const present = now[span];
  if (free === null || present === undefined) return null;
  const spread = isInside(present, free) ? null : nearest(free, present);
  const place = spread === null ? present : { low: spread.low as number, high: spread.high as number };
  const longer = longerPins(ground, search, { [span]: place });
  return longer === null ? null : { ...(spread === null ? {} : { [span]: spread }), ...longer };
}

/**
 * The least length of pin, and the nearest hole, that will do; each only where what is there will not. Checks may share a
 * setting, so each is sought with all the others that it does not wait for.
 */
function longerPins({ question, now }: Ground, search: Search, spread: Places): Ranges | null {
  const ranges: Partial<Record<MovablePath, Range>> = {};
  let places = spread;
  for (const [path, later] of [[hole, [tip]] as const, [tip, []] as const]) {
    const one = { ...search, checks: search.checks.filter((check) => !readsAny(question, check, later)) };
    if (holdsAt(one, places)) continue;
    const found = leastValue(one, path, now[path]?.low ?? 0, places);
    if (found === null) return null;
    ranges[path] = found;
    places = { ...places, [path]: { low: found.low, high: accepted(path).high } };
  }
  return withTipBeyondHole(ranges, now[tip]);
}

/** A retaining hole farther out asks for a pin that reaches past it. */
function withTipBeyondHole(ranges: Partial<Record<MovablePath, Range>>, now: Interval | undefined): Ranges {
  const out = ranges[hole]?.low ?? null;
  const reach = ranges[tip]?.low ?? now?.low ?? Infinity;
  if (out === null || reach > out) return ranges;
  return { ...ranges, [tip]: { low: out, high: null, endsBy: ranges[hole]?.endsBy ?? { low: null, high: null } } };
}

/** So much of a range as is nearest to where something is. */
function nearest(range: Range, present: Interval): Range {
  const { low, high, endsBy } = range;
  if (high !== null && middle(present) > high)
    return { low: Math.max(low ?? -Infinity, high - ampleWidth), high, endsBy: { ...endsBy, low: null } };
  const from = low ?? middle(present);
  return { low: from, high: Math.min(high ?? Infinity, from + ampleWidth), endsBy: { ...endsBy, high: null } };
}

/** The search over the checks that read some measures. */
export function searchOn({ question, movableChecks }: Ground, paths: readonly MovablePath[]): Search {
  return { question, checks: movableChecks.filter((check) => readsAny(question, check, paths)) };
}

/** Does a range hold all of what something may be? */
export function isInside(inner: Interval, { low, high }: Pick<Range, 'low' | 'high'>): boolean {
  return (low ?? -Infinity) <= inner.low && inner.high <= (high ?? Infinity);
}

function widthOf({ low, high }: Range): number {
  return width({ low: low ?? -Infinity, high: high ?? Infinity });
}
