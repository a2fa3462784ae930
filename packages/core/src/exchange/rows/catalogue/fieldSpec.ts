import type { FieldRule } from '../../../records/index.ts';

/** What a document says for a choice. */
export type Said = string | number | boolean;

/** One way to choose: what a document says, and how people write it; the first is written into a sheet. */
export interface Option {
  readonly said: Said;
  readonly spellings: readonly string[];
}

/** What a column can hold: a measured quantity, or one of the forms of a plain field. */
export type FieldSpec = { readonly label: string } & (
  | { readonly form: 'quantity'; readonly rule: FieldRule }
  | { readonly form: 'choice'; readonly options: readonly Option[] }
  /** A whole number. */
  | { readonly form: 'count'; readonly min: number; readonly max: number }
  /** Speeds of turning [rpm]: one, or a list. */
  | { readonly form: 'speed' }
  | { readonly form: 'speeds' }
  | { readonly form: 'category' }
  /** An amount of money with its currency. */
  | { readonly form: 'price' }
  /** Names, set apart by semicolons. */
  | { readonly form: 'names' }
  | { readonly form: 'text'; readonly longest: number }
  /** What no cell holds in a plain way, as JSON. */
  | { readonly form: 'json' }
);

/** Fields of a record by their path below it, as in `secondRow.shoulderSpan`. */
export type Catalogue = ReadonlyMap<string, FieldSpec>;

/** A choice by what a document says and how people write it. */
export function choice(label: string, options: Readonly<Record<string, readonly string[]>>): FieldSpec {
  return {
    form: 'choice',
    label,
    options: Object.entries(options).map(([said, spellings]) => ({ said, spellings })),
  };
}

/** Yes or no. */
export function flag(label: string): FieldSpec {
  return {
    form: 'choice',
    label,
    options: [
      { said: true, spellings: ['yes', 'y', 'true', 'x', '✓', '✔'] },
      { said: false, spellings: ['no', 'n', 'false'] },
    ],
  };
}

/** A whole number. */
export function count(label: string, min: number, max: number): FieldSpec {
  return { form: 'count', label, min, max };
}
