import type { Dimension } from '../units/index.ts';
import type { FieldRule } from './value.ts';

/** Rules by field name. */
export type Rules = Readonly<Record<string, FieldRule>>;

/** A length field [mm]. */
export function length(min: number, max: number, label: string, measure: string, from?: readonly string[]): FieldRule {
  const rule: FieldRule = { dimension: 'length', min, max, label, measure };
  return from === undefined ? rule : { ...rule, from };
}

/** A field of another dimension [its canonical unit]. */
export function sized(dimension: Dimension, min: number, max: number, label: string, measure: string): FieldRule {
  return { dimension, min, max, label, measure };
}
