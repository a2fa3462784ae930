import { atPath, fieldRules, readValue, type SetupDocument, type Value } from '../../records/index.ts';
import type { Category } from '../../tables/index.ts';
import { interval, type Interval } from '../geometry/index.ts';
import { standInFor } from '../inputs/index.ts';

/** What a document says of a field, as a range [canonical unit]; null where it says nothing that can be read. */
export function givenAt(document: SetupDocument, path: string): Interval | null {
  const rule = fieldRules.get(path);
  const raw = atPath(document, path);
  if (rule === undefined || raw === undefined || raw === null) return null;
  const units = document['units'] === 'metric' ? 'metric' : 'us';
  const { value } = readValue(raw, rule, path, units);
  return value === null ? null : rangeOf(value);
}

function rangeOf(value: Value): Interval | null {
  if (value.kind === 'unknown') return null;
  if (value.kind === 'adjustable') return interval(value.lowest.low, value.highest.high);
  if (value.kind === 'stops')
    return interval(Math.min(...value.at.map(({ low }) => low)), Math.max(...value.at.map(({ high }) => high)));
  return interval(value.bound.low, value.bound.high);
}

/** The range in which a field is expected by the category of its machine [canonical unit]; null where no class says. */
export function expectedAt(document: SetupDocument, path: string): Interval | null {
  const { low, high, origin } = standInFor(path, categoryAt(document, path));
  return origin === 'class' ? interval(low, high) : null;
}

/** What is known of a field, or taken in its place [canonical unit]. */
export function knownAt(document: SetupDocument, path: string): Interval {
  const given = givenAt(document, path);
  if (given !== null) return given;
  const { low, high } = standInFor(path, categoryAt(document, path));
  return interval(low, high);
}

/** The category stamped on the machine that a path belongs to. */
export function categoryAt(document: SetupDocument, path: string): Category | undefined {
  const [machine = ''] = path.split('.');
  return atPath(document, `${machine}.category`) as Category | undefined;
}

/** A field of the same machine, or of the same pins. */
export function besideOf(path: string, field: string): string {
  return `${path.slice(0, path.lastIndexOf('.'))}.${field}`;
}
