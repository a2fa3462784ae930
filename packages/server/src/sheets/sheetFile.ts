import type { Sheet } from '@hitchwright/core/exchange';
import type { InputError } from '@hitchwright/core/records';

/** What was read out of a file: its sheets, and what was taken for granted on the way, in sentences. */
export interface SheetFile {
  readonly sheets: readonly Sheet[];
  readonly told: readonly string[];
}

/** A file read, or what is wrong with it. */
export type SheetFileReading =
  { readonly ok: true; readonly file: SheetFile } | { readonly ok: false; readonly errors: readonly InputError[] };
