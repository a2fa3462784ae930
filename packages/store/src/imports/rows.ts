import type { InputError } from '@hitchwright/core/records';
import type { RecordDraft } from '../records/kinds.ts';

/**
 * One record of an import. It is the record with this id; else the one of its kind with this key; else the only one of its kind with this name
 * that has no other key; else a new one. What a row doesn’t say stays as it is.
 */
export interface ImportRow extends RecordDraft {
  readonly id?: string;
  /** The row as its sheet counts it, for what is said of it; its place among the rows where it is left out. */
  readonly row?: number;
}

/** An import: wholly or not at all. */
export interface Import {
  /** Where the rows come from. A reading of the same source that another one of the same field replaces is withdrawn. */
  readonly source: string;
  readonly rows: readonly ImportRow[];
}

/** How far an import is. */
export interface ImportProgress {
  readonly done: number;
  readonly total: number;
}

/** What an import does with its rows. */
export interface ImportResult {
  /** Group of changes that it is undone by; null where nothing changed. */
  readonly group: string | null;
  readonly created: number;
  readonly updated: number;
  readonly restored: number;
  readonly unchanged: number;
}

/** What an import would do with one row. */
export interface RowPreview {
  readonly row: number;
  readonly does: 'create' | 'update' | 'restore' | 'nothing' | 'refuse';
  /** Record that it is, where there is one. */
  readonly recordId: string | null;
  /** Fields that would become another, each with what it was. */
  readonly changes: readonly { readonly field: string; readonly before: unknown; readonly after: unknown }[];
  readonly errors: readonly InputError[];
}
