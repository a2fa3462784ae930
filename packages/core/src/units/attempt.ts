import type { UnitSystem, Dimension } from './dimensions.ts';
import type { Figure } from './figure.ts';
import type { Unit } from './known.ts';

/** How a typed figure is to be read. */
export interface ReadOptions {
  readonly dimension: Dimension;
  /** Smallest and largest value that the field takes, ends included [canonical unit]. */
  readonly range?: { readonly min: number; readonly max: number };
  /** Whose unit a figure without one is in: `us` in, lb, lbf, hp, lb·ft, mph, gpm, psi; `metric` (also when left out) the canonical unit. */
  readonly assume?: UnitSystem;
}

/** Why a typed figure was refused. */
export type RefusalCode = 'empty' | 'not-a-quantity' | 'wrong-unit' | 'ambiguous' | 'out-of-range' | 'not-finite';

/** One way to understand what was typed. */
export interface Reading {
  readonly figure: Figure;
  readonly unit: Unit;
  /** The unit as reported, e.g. `in`, or `ft in` for feet and inches. */
  readonly unitRead: string;
  /** Whether the unit was written rather than assumed. */
  readonly written: boolean;
}

/** A refusal that doesn't depend on the field's range. */
export interface Refused {
  readonly code: RefusalCode;
  readonly hint: string;
  readonly readings?: readonly string[];
}

/** What a reader of text hands on: the possible readings, or a refusal. */
export type Attempt = readonly Reading[] | Refused;

/** Whether an attempt was refused. */
export function isRefused(attempt: Attempt): attempt is Refused {
  return 'code' in attempt;
}

/** A refusal of text with more than one meaning; the hint names every reading. */
export function refuseAmbiguous(readings: readonly string[], advice: string): Refused {
  return { code: 'ambiguous', readings, hint: `Was ${readings.join(' meant, or ')}? ${advice}` };
}

/** How one reading is shown: its figure, with the unit where it was written. */
export function readingText(reading: Reading): string {
  return reading.written ? `${reading.figure.label} ${reading.unit.name}` : reading.figure.label;
}
