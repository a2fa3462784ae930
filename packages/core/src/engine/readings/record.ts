import { atPath, type Edit, type SetupDocument } from '../../records/index.ts';
import { readingOf } from '../advice/index.ts';
import { middle, width } from '../geometry/index.ts';
import { partsOf } from './parts.ts';
import { fieldOfPart, takenAs, type Taken, type Taking } from './taken.ts';

/** Who read it, and when [ISO 8601]. */
export interface Taker {
  readonly who?: string;
  readonly when: string;
}

type Good = Extract<Taken, { ok: true }>;

/**
 * The change that puts what was read into a setup, with how it was read, by whom and when.
 *
 * @param document the setup as far as it is known [JSON]
 * @param field field path, with dots [text]
 * @param takings what was read, of the field or of each end or hole of it [list]
 * @param taker who read it, and when [record]
 * @returns the change; null while an end or a hole is missing or nothing follows from what was read [record]
 */
export function editFor(document: SetupDocument, field: string, takings: readonly Taking[], taker: Taker): Edit | null {
  const parts = partsOf(document, field);
  const [only, ...more] = parts;
  const first = takings.find(({ path }) => path === only);
  if (only === undefined || (first === undefined && more.length === 0)) return null;
  if (only === field && first !== undefined) {
    const taken = takenAs(document, first);
    return taken.ok
      ? { path: field, value: { ...figureOf(first, taken), ...provenance([first], taken, taker) } }
      : null;
  }
  return settableEdit(document, field, parts, takings, taker);
}

function settableEdit(
  document: SetupDocument,
  field: string,
  parts: readonly string[],
  takings: readonly Taking[],
  taker: Taker,
): Edit | null {
  const form = atPath(document, `${field}.adjustable`) as Record<string, unknown> | undefined;
  const key = parts[0]?.includes('.at.') === true ? 'at' : 'between';
  const before = Array.isArray(form?.[key]) ? (form[key] as unknown[]) : [];
  const used = takings.filter(({ path }) => parts.includes(path));
  const read = parts.map((path, i) => {
    const taking = used.find((one) => one.path === path);
    const taken = taking === undefined ? null : takenAs(document, taking);
    if (taking === undefined || taken === null || !taken.ok) return { value: before[i], taken: null };
    return { value: figureOf(taking, taken), taken };
  });
  const known = read.find((one): one is { value: Record<string, unknown>; taken: Good } => one.taken !== null);
  if (known === undefined || read.some(({ value }) => value === undefined || value === null)) return null;
  const adjustable = { ...form, [key]: read.map(({ value }) => value) };
  return { path: field, value: { adjustable, ...provenance(used, known.taken, taker) } };
}

/** The figure as typed where every reading says the same, else its middle or its ends [canonical unit]. */
function figureOf({ typed, aslant }: Taking, { range, method }: Good): Record<string, unknown> {
  const [first] = typed;
  const half = width(range) / 2;
  if (method !== undefined && half > 0) return { between: [tidy(range.low), tidy(range.high)] };
  const isAsTyped = aslant !== true && method === undefined && typed.every(({ value }) => value === first.value);
  const value = isAsTyped ? first.text : tidy(middle(range));
  return half > 0 ? { value, plusMinus: tidy(half) } : { value };
}

function provenance(takings: readonly Taking[], { from, method }: Good, { who, when }: Taker): Record<string, unknown> {
  const [first] = takings;
  const texts = takings.map(({ typed }) => typed.map(({ text }) => text).join(' and '));
  const isPlain = takings.every(({ typed }) => typed.length === 1) && method === undefined;
  const tool = first === undefined ? undefined : (first.tool ?? readingOf(fieldOfPart(first.path), 0).tool);
  return {
    ...(from === undefined ? {} : { from }),
    ...(isPlain ? {} : { method: [method, `read as ${texts.join('; ')}`].filter(Boolean).join('; ') }),
    ...(tool === undefined ? {} : { tool }),
    ...(who === undefined || who === '' ? {} : { who }),
    when,
  };
}

/** To a thousandth: what a tape reads in a document that people may open. */
function tidy(value: number): number {
  return Math.round(value * 1000) / 1000;
}
