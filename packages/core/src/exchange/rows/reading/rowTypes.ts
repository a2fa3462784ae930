import type { InputError } from '../../../records/index.ts';
import type { Told } from '../cells/told.ts';
import type { ProposedRecord } from './record.ts';

/** Where something stands: the row as the sheet counts it, from 1, and the letter of its column; null for the row as a whole. */
export interface Place {
  readonly row: number;
  readonly column: string | null;
}

/** One thing wrong with a row. Its `path` is the record’s kind and field, as in `implement.mastHeight`. */
export type RowError = InputError & Place;

/** One thing that was taken for something, and where. */
export interface RowTold extends Told, Place {
  /** The path of the field below the record, or null. */
  readonly field: string | null;
  readonly got: string;
}

/** What came of one row. */
export interface RowReading {
  /** The row as the sheet counts it, from 1. */
  readonly row: number;
  /**
   * `record`: it proposes one; what `errors` names is not in it. `blank`: nothing is written. `skipped`: a total, a heading or a stray line.
   * `duplicate`: the same as an earlier row. `refused`: no record can be made of it.
   */
  readonly outcome: 'record' | 'blank' | 'skipped' | 'duplicate' | 'refused';
  readonly record: ProposedRecord | null;
  readonly errors: readonly RowError[];
  readonly told: readonly RowTold[];
  /** Cells of known columns that say nothing, or that nothing is known. */
  readonly missing: number;
}
