import { readQuantity } from '@hitchwright/core/units';
import type { FieldRule } from '@hitchwright/core/records';

/** What is half typed, read: a figure with its unit, or what is wrong with it. */
export type DraftReading =
  { readonly ok: true; readonly text: string; readonly value: number } | { readonly ok: false; readonly words: string };

/** Reads what was typed; whoever writes a unit by hand is taken at their word. */
export function readDraft(draft: string, unit: string, rule: FieldRule): DraftReading {
  const hasUnit = /[a-zµ°'"′″’”]/i.test(draft);
  const text = hasUnit ? draft.trim() : `${draft.trim()} ${unit}`;
  const reading = readQuantity(text, { dimension: rule.dimension, range: rule });
  if (reading.ok) return { ok: true, text, value: reading.value };
  return { ok: false, words: `Expected ${reading.expected}, got ${draft.trim()}. ${reading.hint}` };
}
