import { fieldRules } from '@hitchwright/core/records';
import { plainChoices } from '../dimensions/plainChoices.ts';

/** Plain fields that every record may have. */
const beside: Readonly<Record<string, string>> = {
  name: 'name',
  note: 'note',
  price: 'price',
  contact: 'how to reach them',
  fits: 'meant for',
  kind: 'kind',
};

/** What a person calls a field of a record. */
export function fieldWords(field: string): string {
  const key = field.slice(field.lastIndexOf('.') + 1);
  const rule = (['implement', 'tractor', 'coupler', 'shaft'] as const)
    .map((side) => fieldRules.get(`${side}.${field}`))
    .find((one) => one !== undefined);
  return rule?.label ?? beside[field] ?? plainChoices[key]?.label ?? field;
}

/** A plain field’s value as a person reads it. */
export function plainText(value: unknown): string {
  if (value === null || value === undefined || value === '') return 'nothing';
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.map(plainText).join(', ');
  return Object.entries(value)
    .map(([key, one]) => `${key} ${plainText(one)}`)
    .join(', ');
}
