import type { Price } from '../../records/index.ts';
import { canonicalUnit, type Dimension } from '../../units/index.ts';
import type { ListedFact } from './facts.ts';

/** Codes of units, UN/ECE Recommendation 20; a unit whose code was not looked up is told by its name alone. */
const unitCodes: Readonly<Partial<Record<Dimension, string>>> = {
  length: 'MMT',
  mass: 'KGM',
  power: 'KWT',
  pressure: 'BAR',
  angle: 'DD',
};

/** One figure of a machine as schema.org has it. */
export interface PropertyValueJson {
  readonly '@type': 'PropertyValue';
  readonly name: string;
  readonly propertyID: string;
  readonly value?: number;
  readonly minValue?: number;
  readonly maxValue?: number;
  readonly unitCode?: string;
  readonly unitText: string;
  readonly description: string;
  readonly measurementTechnique?: string;
}

/** A machine as schema.org has it, JSON-LD. */
export interface ProductJson {
  readonly '@context': 'https://schema.org';
  readonly '@type': 'Product';
  readonly name: string;
  readonly description: string;
  readonly category: string;
  readonly additionalProperty: readonly PropertyValueJson[];
  readonly offers?: {
    readonly '@type': 'Offer';
    readonly price: number;
    readonly priceCurrency: string;
  };
}

/** What a shop’s page says of a machine to machines. */
export function productOf(
  name: string,
  category: string,
  facts: readonly ListedFact[],
  { description, price }: { readonly description: string; readonly price: Price | null },
): ProductJson {
  return {
    '@context': 'https://schema.org',
    '@type': 'Product',
    name,
    description,
    category,
    additionalProperty: facts.map(propertyOf),
    ...(price === null ? {} : { offers: { '@type': 'Offer', price: price.amount, priceCurrency: price.currency } }),
  };
}

function propertyOf({
  path,
  name,
  low,
  high,
  between,
  measured,
  dimension,
  settable,
  figure,
}: ListedFact): PropertyValueJson {
  const code = unitCodes[dimension];
  const middle = tidy((low + high) / 2);
  return {
    '@type': 'PropertyValue',
    name,
    propertyID: path,
    ...(settable ? {} : { value: middle }),
    ...(low === high ? {} : { minValue: tidy(low), maxValue: tidy(high) }),
    ...(code === undefined ? {} : { unitCode: code }),
    unitText: canonicalUnit[dimension],
    description: `${figure}. ${between}`.trim(),
    ...(measured === '' ? {} : { measurementTechnique: measured }),
  };
}

/** To a thousandth: nothing that rounding errors have left behind. */
function tidy(value: number): number {
  return Math.round(value * 1000) / 1000;
}

/** JSON that may stand inside a script element of a page: no sign in it can end the element. */
export function scriptJson(data: unknown): string {
  return JSON.stringify(data, null, 2).replace(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
