import { atPath, fieldRules, readValue, type Bound, type SetupDocument, type Value } from '../../records/index.ts';
import {
  categories,
  classFields,
  classRange,
  linkageClassFields,
  linkageClassRange,
  type Category,
} from '../../tables/index.ts';
import { interval, type Interval } from '../geometry/index.ts';
import { standInFor } from '../inputs/index.ts';
import { fieldOfPart } from './parts.ts';

/** What a document says of a field, as a range [canonical unit]; null where it says nothing that can be read. */
export function givenAt(document: SetupDocument, path: string): Interval | null {
  const bounds = boundsOf(valueAt(document, path));
  return bounds.length === 0 ? null : wholeOf(bounds);
}

/** What a document says of a field; null where it says nothing that can be read. */
export function valueAt(document: SetupDocument, path: string): Value | null {
  return valueIn(document, path, atPath(document, path));
}

/** What a raw figure says, read as the document’s own would be; null where it says nothing. */
export function valueIn(document: SetupDocument, path: string, raw: unknown): Value | null {
  const rule = fieldRules.get(path);
  if (rule === undefined || raw === undefined) return null;
  const units = document['units'] === 'metric' ? 'metric' : 'us';
  const { value } = readValue(raw, rule, path, units);
  return value?.kind === 'unknown' ? null : value;
}

/** The range that holds all of several, at least one. */
export function wholeOf(ranges: readonly Bound[]): Interval {
  return interval(Math.min(...ranges.map(({ low }) => low)), Math.max(...ranges.map(({ high }) => high)));
}

/** What a value says: its one range, those of the two ends that it can be set to, or those of its holes. */
export function boundsOf(value: Value | null): readonly Bound[] {
  if (value === null || value.kind === 'unknown') return [];
  if (value.kind === 'adjustable') return [value.lowest, value.highest];
  return value.kind === 'stops' ? value.at : [value.bound];
}

/** The range in which a figure is expected by the category of its machine [canonical unit]; null where no class says. */
export function expectedAt(document: SetupDocument, path: string): Interval | null {
  const category = categoryAt(document, path);
  if (category === undefined) return null;
  const field = fieldOfPart(path);
  const link = linkageClassFields.find((one) => one === field);
  if (link !== undefined) return linkageClassRange(category, link);
  const names = classNames(path, field);
  const named = classFields.find((one) => names.includes(one));
  const range = named === undefined ? null : classRange(category, named);
  return range === null ? null : interval(range.low, range.high);
}

/** A class has its own ranges for the narrowest and the widest that links can be set to; a coupler’s front has pins like an implement. */
function classNames(path: string, field: string): readonly string[] {
  const own = field.replace(/^coupler\.front\./, 'implement.');
  if (path.endsWith('.between.0')) return [own, `${own}Narrowest`];
  return path.endsWith('.between.1') ? [own, `${own}Widest`] : [own];
}

/** What is known of a field, or taken in its place [canonical unit]; null where all that the field accepts would be. */
export function likelyAt(document: SetupDocument, path: string): Interval | null {
  const told = givenAt(document, path) ?? expectedAt(document, path);
  if (told !== null) return told;
  if (!fieldRules.has(path)) return null;
  const { low, high, origin } = standInFor(path, categoryAt(document, path));
  return origin === 'unknown' ? null : interval(low, high);
}

/** The same, or else all that the field accepts [canonical unit]. */
export function knownAt(document: SetupDocument, path: string): Interval {
  const { min, max } = fieldRules.get(path) ?? { min: -Infinity, max: Infinity };
  return likelyAt(document, path) ?? interval(min, max);
}

/** The category stamped on the machine that a path belongs to. */
export function categoryAt(document: SetupDocument, path: string): Category | undefined {
  const [machine = ''] = path.split('.');
  const stamped = atPath(document, `${machine}.category`);
  return categories.find((one) => one === stamped);
}

/** A field of the same machine, or of the same pins. */
export function besideOf(path: string, field: string): string {
  return `${path.slice(0, path.lastIndexOf('.'))}.${field}`;
}

/** +1 where the lower pins that a field belongs to point outward, −1 inward. */
export function signOf(document: SetupDocument, path: string): 1 | -1 {
  return atPath(document, besideOf(path, 'pinsPoint')) === 'in' ? -1 : 1;
}
