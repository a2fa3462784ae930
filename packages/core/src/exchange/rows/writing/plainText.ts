import type { FieldSpec } from '../catalogue/fieldSpec.ts';
import type { Plain } from '../cells/plainCell.ts';
import { plainNumber } from './leafText.ts';

/** A plain value as one cell that reads back to it. */
export function plainValueText(value: Plain, spec: FieldSpec): string {
  switch (spec.form) {
    case 'choice':
      return spec.options.find(({ said }) => said === value)?.spellings[0] ?? String(value);
    case 'speed':
      return `${String(value)} rpm`;
    case 'speeds':
      return (value as readonly number[]).join('; ');
    case 'names':
      return namesText(value as readonly string[]);
    case 'price': {
      const { amount, currency } = value as { readonly amount: number; readonly currency: string };
      return `${plainNumber(amount)} ${currency}`;
    }
    case 'json':
      return JSON.stringify(value);
    default:
      return String(value);
  }
}

function namesText(names: readonly string[]): string {
  const isPlain =
    names.every((name) => name !== '' && name === name.trim() && !name.includes(';')) && !names[0]?.startsWith('[');
  return isPlain ? names.join('; ') : JSON.stringify(names);
}
