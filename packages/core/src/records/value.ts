import type { Dimension } from '../units/index.ts';

/** Where a figure came from; everything is optional and nothing of it enters the computation. */
export interface Provenance {
  /** Reference points of the reading, e.g. `shoulder` or `ballCentre`. */
  readonly from?: string;
  readonly method?: string;
  readonly tool?: string;
  readonly who?: string;
  readonly when?: string;
  readonly source?: string;
  readonly note?: string;
}

/** A number known to lie in [low, high] [canonical unit]; the ends are equal where no tolerance was given. */
export interface Bound {
  readonly low: number;
  readonly high: number;
}

/** One input with its honesty: see decision 0001. Numbers are in the canonical unit. */
export type Value = (
  | { readonly kind: 'stated'; readonly value: number; readonly bound: Bound }
  | { readonly kind: 'uncertain'; readonly bound: Bound }
  | { readonly kind: 'default'; readonly bound: Bound; readonly basis: string }
  | { readonly kind: 'adjustable'; readonly lowest: Bound; readonly highest: Bound; readonly setting: Setting }
  | { readonly kind: 'stops'; readonly at: readonly Bound[]; readonly setting: Setting }
  | { readonly kind: 'unknown' }
) & { readonly provenance: Provenance };

/** Whether an adjuster may take one setting for work and another for transport, or one only. */
export type Setting = 'one' | 'perPosition';

/** What a field accepts: its dimension, its range [canonical unit], and the reference points that may be named. */
export interface FieldRule {
  readonly dimension: Dimension;
  readonly min: number;
  readonly max: number;
  readonly label: string;
  /** Where the tape goes, in one sentence. */
  readonly measure: string;
  /** Reference points this field can be read between; the first is the one the field's name means. */
  readonly from?: readonly string[];
}
