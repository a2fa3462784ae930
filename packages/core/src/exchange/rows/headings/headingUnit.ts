import { canonicalUnit, readQuantity, type Dimension } from '../../../units/index.ts';

/** What a unit is of: a dimension, or money for a currency. */
export type Measured = Dimension | 'money';

/** A unit that somebody wrote, by its name here, and what it measures. */
export interface WrittenUnit {
  readonly unit: string;
  readonly dimension: Measured;
}

/** A heading without its unit, and the unit. */
export interface SplitHeading {
  readonly text: string;
  readonly unit: WrittenUnit | null;
}

const dimensions = Object.keys(canonicalUnit) as Dimension[];
const known = new Map<string, WrittenUnit | null>();
const mostKnown = 2000;

/** Spellings that stand in sheets but in no table of units. */
const sheetSpellings: ReadonlyMap<string, string> = new Map([
  ['ins', 'in'],
  ['mms', 'mm'],
  ['cms', 'cm'],
  ["''", 'in'],
  ['#', 'lb'],
  ['pto hp', 'hp'],
  ['engine hp', 'hp'],
]);

/** The unit that a text names, such as `lbs` or `inches`; null where it names none. */
export function unitOf(text: string): WrittenUnit | null {
  const written = text.trim().replace(/\.$/, '');
  const before = known.get(written);
  if (before !== undefined) return before;
  const found = lookedUp(sheetSpellings.get(written.toLowerCase()) ?? written);
  if (known.size < mostKnown) known.set(written, found);
  return found;
}

/** Signs that stand for one currency only; a dollar sign stands for many. */
const currencySigns: ReadonlyMap<string, string> = new Map([
  ['€', 'EUR'],
  ['£', 'GBP'],
]);
const currencyCodes = /^(?:USD|EUR|GBP|CAD|AUD|NZD|CHF|SEK|NOK|DKK|PLN|CZK|ZAR|JPY|INR|BRL|MXN|HUF|RON)$/;

/** The currency that a text names by its code or its sign; null where it names none. */
export function currencyOf(text: string): string | null {
  const written = text.trim();
  return currencySigns.get(written) ?? (currencyCodes.test(written) ? written : null);
}

function lookedUp(text: string): WrittenUnit | null {
  const currency = currencyOf(text);
  if (currency !== null) return { unit: currency, dimension: 'money' };
  if (text === '' || text.length > 20 || /^[\d\s.,/+-]/.test(text)) return null;
  for (const dimension of dimensions) {
    const reading = readQuantity(`1 ${text}`, { dimension });
    if (reading.ok) return { unit: reading.unit, dimension };
  }
  return null;
}

const bracketed = /[([{]([^()[\]{}]*)[)\]}]/g;
/** Units that a heading may end in without brackets: no single letters, which may be anything. */
const trailing = /[\s,/_-]+([a-z]{2,11}\.?|[a-z]{1,3}[/·-][a-z]{1,3}|°|")$/i;

/** Takes the unit off a heading: `Mast ht (in)`, `weight lbs`, `span, mm`, `mast_height_mm`. */
export function splitHeading(heading: string): SplitHeading {
  for (const [whole, inner = ''] of heading.matchAll(bracketed)) {
    const unit = unitOf(inner.replace(/^\s*(?:in|all in)\s+(?=\S)/i, '')) ?? unitOf(inner);
    if (unit !== null) return { text: heading.replace(whole, ' ').trim(), unit };
  }
  const apart = heading.replace(/([a-z])(Mm|Kg|Deg|Kw)$/, '$1 $2');
  const [whole, inner = ''] = trailing.exec(apart) ?? [];
  const unit = unitOf(inner);
  if (whole !== undefined && unit !== null) return { text: apart.slice(0, -whole.length).trim(), unit };
  const alone = unitOf(heading);
  return alone === null || alone.dimension === 'length' ? { text: heading, unit: null } : { text: '', unit: alone };
}

/** What a column measures that is headed with nothing but its unit, or whose heading leaves the word out: `PTO hp`. */
export const wordOfDimension: Readonly<Partial<Record<Measured, string>>> = {
  mass: 'mass',
  power: 'power',
  pressure: 'pressure',
  flow: 'flow',
  torque: 'torque',
  speed: 'speed',
  rotation: 'speed',
  money: 'price',
};
