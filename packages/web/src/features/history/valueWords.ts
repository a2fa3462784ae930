import { fieldRules, partSizesOf, readValue, type FieldRule } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { labelOf } from '@hitchwright/core/words';
import { plainChoices } from '../dimensions/plainChoices.ts';
import { readText } from '../dimensions/readText.ts';
import { partKinds, weightKinds } from '../records/kinds.ts';

/** Machines of a setup that records of a kind may stand for; a customer’s machine may be any of them. */
const sides: Readonly<Record<string, readonly string[]>> = {
  tractor: ['tractor'],
  coupler: ['coupler'],
  implement: ['implement'],
  shaft: ['shaft'],
  state: ['tractor'],
  machine: ['tractor', 'coupler', 'implement'],
};

/** What no rule and no choice has a name for. */
const names: Readonly<Record<string, string>> = {
  name: 'name',
  owner: 'customer',
  model: 'model',
  parent: 'tractor',
  key: 'what an import knows it by',
  note: 'note',
  price: 'price',
  fits: 'fits',
  count: 'count',
  series: 'series',
  outlines: 'outlines',
  tyreLiquid: 'liquid in the rear tyres',
  'contact.phone': 'phone',
  'contact.email': 'e-mail',
  'contact.address': 'address',
};

/** The rule of a figure of a record; undefined for what is chosen or written. */
export function ruleOfField(kind: string, field: string): FieldRule | undefined {
  const side = (sides[kind] ?? []).find((one) => fieldRules.has(`${one}.${field}`));
  if (side !== undefined) return fieldRules.get(`${side}.${field}`);
  const shelf = kind === 'part' ? partKinds : kind === 'weight' ? weightKinds : [];
  return shelf.map(([one]) => partSizesOf(one)[field]).find((rule) => rule !== undefined);
}

/** What a field of a record is called, by its path below the record. */
export function fieldName(kind: string, field: string): string {
  const side = (sides[kind] ?? []).find((one) => fieldRules.has(`${one}.${field}`));
  if (side !== undefined && field.includes('.')) return labelOf(`${side}.${field}`);
  const rule = ruleOfField(kind, field);
  if (rule !== undefined) return rule.label;
  if (field === 'kind') return `kind of ${kind}`;
  return names[field] ?? plainChoices[lastKey(field)]?.label ?? field.split('.').join(', ');
}

function lastKey(field: string): string {
  return field.slice(field.lastIndexOf('.') + 1);
}

/** What a field says, in the person’s units; `nothing` where there is nothing. */
export function valueWords(kind: string, field: string, value: unknown, system: UnitSystem): string {
  if (value === null || value === undefined || value === '') return 'nothing';
  const rule = ruleOfField(kind, field);
  if (rule !== undefined) return figureWords(value, rule, system);
  const choice = kind === 'part' || kind === 'weight' ? undefined : plainChoices[lastKey(field)];
  const said = String(typeof value === 'object' ? '' : value);
  return choice?.options.find(([option]) => option === said)?.[1] ?? plainWords(value);
}

function figureWords(leaf: unknown, rule: FieldRule, system: UnitSystem): string {
  const text = readText(readValue(leaf, rule, '', system).value, rule, system).replace(/^= /, '');
  return text === '' ? plainWords(leaf) : text;
}

function plainWords(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  if (Array.isArray(value)) return value.map(plainWords).join(', ');
  const { amount, currency } = value as { readonly amount?: unknown; readonly currency?: unknown };
  if (typeof amount === 'number' && typeof currency === 'string') return `${amount.toFixed(2)} ${currency}`;
  return JSON.stringify(value);
}
