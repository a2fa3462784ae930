import { atPath, fieldRules, type Edit, type SetupDocument } from '../../records/index.ts';
import { readQuantity } from '../../units/index.ts';
import { readingOf } from '../advice/index.ts';
import { middle, type Interval } from '../geometry/index.ts';
import { fieldOfPart, partsOf } from './parts.ts';
import { betweenOwnPoints } from './points.ts';
import { takenAs, type Taken, type Taking, type Typed } from './taken.ts';

/** Who read it, and when [ISO 8601]. */
export interface Taker {
  readonly who?: string;
  readonly when: string;
}

type Good = Extract<Taken, { ok: true }>;

/** One of the parts of a field as it was read. */
interface Part {
  readonly taking: Taking;
  readonly taken: Good;
}

/**
 * The change that puts what was read into a setup, with how it was read, by whom and when. Rounded to thousandths outward, so
 * that nothing is lost of what was left open.
 *
 * @param document the setup as far as it is known [JSON]
 * @param field field path, with dots [text]
 * @param takings what was read, of the field or of each end or hole of it [list]
 * @param taker who read it, and when [record]
 * @returns the change; null while an end or a hole is missing or nothing follows from what was read [record]
 */
export function editFor(document: SetupDocument, field: string, takings: readonly Taking[], taker: Taker): Edit | null {
  const paths = partsOf(document, field);
  const parts = paths.map((path) => partRead(document, path, takings));
  const [only] = parts;
  if (paths.length === 1 && paths[0] === field)
    return only == null ? null : { path: field, value: { ...figureOf(only), ...provenance([only], taker) } };
  return settableEdit(document, field, parts, taker);
}

function partRead(document: SetupDocument, path: string, takings: readonly Taking[]): Part | null {
  const taking = takings.find((one) => one.path === path);
  const taken = taking === undefined ? null : takenAs(document, taking);
  return taking === undefined || taken === null || !taken.ok ? null : { taking, taken };
}

function settableEdit(
  document: SetupDocument,
  field: string,
  read: readonly (Part | null)[],
  taker: Taker,
): Edit | null {
  const parts = inSamePoints(document, field, read);
  const found = parts.filter((part) => part !== null);
  const before = endsBefore(document, field, found[0]?.taken.from);
  const ends = parts.map((part, i) => (part === null ? before[i] : figureOf(part)));
  if (found.length === 0 || ends.some((end) => end === undefined || end === null)) return null;
  const form = (atPath(document, `${field}.adjustable`) ?? {}) as Readonly<Record<string, unknown>>;
  const key = 'at' in form ? 'at' : 'between';
  return { path: field, value: { adjustable: { ...form, [key]: ends }, ...provenance(found, taker) } };
}

/** A record names the points of all its ends at once: ends that were read between different points are turned to the field’s own. */
function inSamePoints(document: SetupDocument, field: string, parts: readonly (Part | null)[]): (Part | null)[] {
  const points = new Set(parts.map((part) => (part === null ? undefined : pointsOf(field, part.taken.from))));
  points.delete(undefined);
  if (points.size < 2) return [...parts];
  return parts.map((part) => {
    if (part === null || part.taken.from === undefined) return part;
    const { from, ...taken } = part.taken;
    const range = betweenOwnPoints(document, field, from, taken.range);
    return { ...part, taken: { ...taken, range, method: `turned from ${from}` } };
  });
}

/** The ends or holes that stand in the document, where they were read between the same points. */
function endsBefore(document: SetupDocument, field: string, from: string | undefined): readonly unknown[] {
  const form = atPath(document, `${field}.adjustable`) as { at?: unknown; between?: unknown } | undefined;
  const before = form?.at ?? form?.between;
  const said = atPath(document, `${field}.from`) as string | undefined;
  return Array.isArray(before) && pointsOf(field, said) === pointsOf(field, from) ? (before as unknown[]) : [];
}

function pointsOf(field: string, from: string | undefined): string | undefined {
  return from ?? fieldRules.get(field)?.from?.[0] ?? 'own';
}

/** The figure as typed where every reading says the same and nothing was worked out, else its middle; or its two ends. */
function figureOf({ taking, taken }: Part): Record<string, unknown> {
  const { low, high } = taken.range;
  const [first] = taking.typed;
  const isPlain = taken.method === undefined && taking.aslant !== true;
  const isAsTyped = isPlain && taking.typed.every(({ value }) => value === first.value);
  const centre = isAsTyped ? first.value : nearest(middle(taken.range));
  if (!isPlain || !isMiddle(centre, taken.range)) return { between: [down(low), up(high)] };
  const value = isAsTyped ? asWritten(taking.path, first) : centre;
  const spread = up(Math.max(centre - low, high - centre));
  return spread > 0 ? { value, plusMinus: spread } : { value };
}

/** Whether a range lies evenly about a figure: not where the field cut it off. */
function isMiddle(centre: number, range: Interval): boolean {
  return Math.abs(centre - middle(range)) <= 1 / thousand;
}

/** The text as typed where it means the same in every unit system, else the number. */
function asWritten(path: string, { text, value }: Typed): string | number {
  const dimension = fieldRules.get(fieldOfPart(path))?.dimension ?? 'length';
  const isClear = (['us', 'metric'] as const).every((assume) => {
    const reading = readQuantity(text, { dimension, assume });
    return reading.ok && Math.abs(reading.value - value) < rounding;
  });
  return isClear ? text : value;
}

function provenance(parts: readonly Part[], { who, when }: Taker): Record<string, unknown> {
  const [first] = parts;
  const from = first?.taken.from;
  const tool = first === undefined ? undefined : toolOf(first);
  const method = methodOf(parts);
  return {
    ...(from === undefined ? {} : { from }),
    ...(method === '' ? {} : { method }),
    ...(tool === undefined ? {} : { tool }),
    ...(who === undefined || who === '' ? {} : { who }),
    when,
  };
}

/** How it was read where that is more than one reading of the figure itself. */
function methodOf(parts: readonly Part[]): string {
  const ways = new Set(parts.map(({ taken }) => taken.method));
  const isAslant = parts.some(({ taking }) => taking.aslant === true);
  const isPlain = parts.every(({ taking, taken }) => taking.typed.length === 1 && taken.method === undefined);
  const texts = parts.map(({ taking }) => taking.typed.map(({ text }) => text).join(' and '));
  const said = [
    ...ways,
    ...(isAslant ? ['perhaps not standing level'] : []),
    ...(isPlain && !isAslant ? [] : [`read as ${texts.join('; ')}`]),
  ];
  return said.filter(Boolean).join('; ').slice(0, longestMethod);
}

/** As long as a record takes it [characters]. */
const longestMethod = 2000;

function toolOf({ taking, taken }: Part): string | undefined {
  const tool = taken.tool ?? readingOf(fieldOfPart(taking.path), 0).tool;
  return tool === 'word' ? undefined : tool;
}

/** Thousandths: what a tape reads in a document that people may open. */
const thousand = 1000;
/** Less than the last digit of a number in the document can tell. */
const rounding = 1e-9;

function nearest(value: number): number {
  return Math.round(value * thousand) / thousand;
}

function down(value: number): number {
  return Math.floor(value * thousand + rounding * thousand) / thousand;
}

function up(value: number): number {
  return Math.ceil(value * thousand - rounding * thousand) / thousand;
}
