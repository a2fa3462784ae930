import { readSetup, type Value } from '@hitchwright/core/records';

/**
 * Whether a setup says the same as an earlier one, but for figures that are known closer now. An answer that works was proven for everything
 * the earlier figures left open, so it works for the closer ones too: there is nothing to check again. Only figures that are given by a range or with
 * a tolerance may differ; what can be set, choices, names and what is not known have to be the same.
 *
 * @param before the setup that was checked [JSON]
 * @param now the same question today [JSON]
 * @returns whether it is the same or closer [flag]
 */
export function isNarrowed(before: unknown, now: unknown): boolean {
  const [earlier, later] = [readSetup(before), readSetup(now)];
  return earlier.ok && later.ok && isWithin(earlier.setup, later.setup);
}

function isWithin(before: unknown, now: unknown): boolean {
  if (Object.is(before, now)) return true;
  if (!isObject(before) || !isObject(now)) return false;
  const [earlier, later] = [figureOf(before), figureOf(now)];
  if (earlier !== null && later !== null) return isCloser(earlier, later);
  if (Array.isArray(before) !== Array.isArray(now)) return false;
  const keys = new Set([...Object.keys(before), ...Object.keys(now)]);
  return [...keys].every((key) => key === 'provenance' || isWithin(before[key], now[key]));
}

type Figure = Extract<Value, { readonly kind: 'stated' | 'uncertain' }>;

function isCloser(before: Figure, now: Figure): boolean {
  return (
    before.provenance.from === now.provenance.from &&
    now.bound.low >= before.bound.low &&
    now.bound.high <= before.bound.high
  );
}

function figureOf(node: Readonly<Record<string, unknown>>): Figure | null {
  const isOne = (node['kind'] === 'stated' || node['kind'] === 'uncertain') && isObject(node['bound']);
  return isOne ? (node as unknown as Figure) : null;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
