import type { ReadingGrade } from '../../../records/index.ts';
import type { Plain } from '../cells/plainCell.ts';
import type { RowKind } from '../kinds.ts';

/** A value that somebody gave for one field: exactly as a setup document has it, with how well it is founded. */
export interface ProposedReading {
  /** The leaf of a setup document, its figures with their units as typed [JSON]. */
  readonly leaf: unknown;
  readonly grade: ReadingGrade;
}

/** A record as a row proposes it. Fields and readings go by their path below the record, as in `secondRow.shoulderSpan`. */
export interface ProposedRecord {
  readonly kind: RowKind;
  readonly name: string;
  /** A number that the sheet tells it by, or null. */
  readonly id: string | null;
  /** The same for rows of one record: a name or number with the kind. */
  readonly key: string;
  readonly fields: Readonly<Record<string, Plain>>;
  readonly readings: Readonly<Record<string, ProposedReading>>;
  /** The row that it stands in as its sheet counts, where that goes with it. */
  readonly row?: number;
}

/** A record as a store takes it: plain fields as an object, readings as a list, each with its path. */
export interface RecordDraft {
  readonly kind: RowKind;
  readonly name: string;
  readonly key: string;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly readings: readonly { readonly field: string; readonly leaf: unknown; readonly grade: ReadingGrade }[];
  readonly row?: number;
}

/**
 * A record in the form that a store takes.
 *
 * @param record a record [record]
 * @returns the same with plain fields as one object and readings as a list [record]
 */
export function draftOf({ kind, name, key, fields, readings, row }: ProposedRecord): RecordDraft {
  const plain: Node = {};
  for (const [path, value] of Object.entries(fields)) place(plain, path, value);
  return {
    kind,
    name,
    key,
    fields: plain,
    readings: Object.entries(readings).map(([field, reading]) => ({ field, ...reading })),
    ...(row === undefined ? {} : { row }),
  };
}

type Node = Record<string, unknown>;

/**
 * A record in the form that it takes inside a setup or yard document: plain fields and leaves at their paths.
 *
 * @param record a record [record]
 * @returns the document [JSON]
 */
export function documentOf(
  record: Pick<ProposedRecord, 'name' | 'fields' | 'readings'>,
): Readonly<Record<string, unknown>> {
  const document: Node = { name: record.name };
  for (const [path, value] of Object.entries(record.fields)) place(document, path, value);
  for (const [path, { leaf }] of Object.entries(record.readings)) place(document, path, leaf);
  return document;
}

function place(document: Node, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() as string;
  let node = document;
  for (const key of keys) {
    const below = (node[key] ?? {}) as Node;
    node[key] = below;
    node = below;
  }
  node[last] = value;
}
