import type { InputError, SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import type { PaperName } from '@hitchwright/print/pure';

/** Views that are drawn at true scale. */
export const views = {
  rear: 'Rear',
  side: 'Side, at work',
  lift: 'Three heights of the lift',
  top: 'From above',
  shaft: 'Drive shaft',
} as const;
/** One of `views`. */
export type View = keyof typeof views;

/** Formats of a drawing. */
export const formats = ['pdf', 'svg', 'dxf'] as const;
/** One of `formats`. */
export type Format = (typeof formats)[number];

/** What is to be made of a setup. */
export type Wanted =
  | { readonly kind: 'sheet'; readonly customer: string; readonly issuer: string; readonly site: string }
  | { readonly kind: 'drawing'; readonly view: View; readonly format: Format }
  | { readonly kind: 'pinPlan'; readonly format: Format }
  | { readonly kind: 'reply'; readonly link: string }
  | { readonly kind: 'listing'; readonly machine: 'implement' | 'coupler'; readonly link: string };

/** A setup, and how what is made of it is written. */
export interface Asked {
  readonly document: SetupDocument;
  readonly system: UnitSystem;
  readonly paper: PaperName;
  /** The day that it bears [ISO 8601]. */
  readonly date: string;
  readonly wanted: Wanted;
}

/** What was made, or why it was not. */
export type Made =
  | { readonly kind: 'file'; readonly bytes: Uint8Array; readonly name: string; readonly type: string }
  | { readonly kind: 'reply'; readonly subject: string; readonly text: string; readonly html: string }
  | { readonly kind: 'listing'; readonly html: string; readonly bareHtml: string; readonly structured: string }
  /** It can’t be made of this setup, in words. */
  | { readonly kind: 'refused'; readonly headline: string; readonly sentences: readonly string[] }
  | { readonly kind: 'errors'; readonly errors: readonly InputError[] }
  | { readonly kind: 'fault'; readonly message: string };
