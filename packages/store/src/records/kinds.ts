import type { InUse, ReadingGrade } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';

/** Kinds of records: a machine is a customer’s (or the yard’s own) one of a model; a state is laid over a tractor. */
export const recordKinds = [
  'tractor',
  'coupler',
  'implement',
  'shaft',
  'weight',
  'part',
  'customer',
  'machine',
  'state',
] as const;
/** One of `recordKinds`. */
export type RecordKind = (typeof recordKinds)[number];

/** Plain fields of a record, as they stand in a setup document: choices, counts, outlines, price, note, contact [JSON]. */
export type Fields = Readonly<Record<string, unknown>>;

/** A record without its readings. */
export interface YardRecord {
  readonly id: string;
  readonly kind: RecordKind;
  readonly name: string;
  /** Customer that a machine belongs to. */
  readonly owner: string | null;
  /** Tractor, coupler or implement that a machine is one of. */
  readonly model: string | null;
  /** Tractor that a state is laid over. */
  readonly parent: string | null;
  /** What an import knows it by; one of its kind. */
  readonly key: string | null;
  readonly fields: Fields;
  readonly sample: boolean;
  /** One more for every change. */
  readonly revision: number;
  readonly createdAt: string;
  readonly updatedAt: string;
  readonly removedAt: string | null;
}

/** One value that somebody gave for one field. */
export interface Reading {
  readonly id: string;
  readonly recordId: string;
  /** Field path below the record, such as `front.standOut`. */
  readonly field: string;
  /** Exactly as a setup document has it, its unit written out [JSON]. */
  readonly leaf: unknown;
  readonly grade: ReadingGrade;
  readonly who: string | null;
  /** When it was read [ISO 8601]. */
  readonly readAt: string | null;
  readonly enteredAt: string;
  readonly enteredBy: string;
  /** Source of the import that it came with. */
  readonly origin: string | null;
  readonly photoId: string | null;
  readonly pinnedAt: string | null;
  readonly withdrawnAt: string | null;
}

/** A record with every reading that was not withdrawn, and which of them is in use for each field. */
export interface FullRecord extends YardRecord {
  readonly readings: readonly Reading[];
  readonly inUse: Readonly<Record<string, InUse>>;
}

/** A reading that is to be written down. */
export interface ReadingDraft {
  readonly field: string;
  readonly leaf: unknown;
  readonly grade: ReadingGrade;
  /** Both are taken from the leaf where they are left out. */
  readonly who?: string;
  readonly readAt?: string;
  readonly photoId?: string;
  /** Use this one whatever else is read. */
  readonly pin?: boolean;
}

/** A record that is to be made. */
export interface RecordDraft {
  readonly kind: RecordKind;
  readonly name: string;
  readonly owner?: string;
  readonly model?: string;
  readonly parent?: string;
  readonly key?: string;
  readonly fields?: Fields;
  readonly readings?: readonly ReadingDraft[];
  readonly sample?: boolean;
  /** What a text without a unit is read in; US where it is left out. */
  readonly units?: UnitSystem;
}

/** What is to change in a record; what is left out stays. */
export interface RecordChange {
  readonly name?: string;
  readonly owner?: string | null;
  readonly model?: string;
  readonly parent?: string;
  readonly key?: string | null;
  /** Plain fields by their paths; null takes one away. */
  readonly fields?: Readonly<Record<string, unknown>>;
  readonly add?: readonly ReadingDraft[];
  /** Readings that no longer count, by id. */
  readonly withdraw?: readonly string[];
  /** Readings to use whatever else is read, by id. */
  readonly pin?: readonly string[];
  readonly unpin?: readonly string[];
  /** What a text without a unit is read in; US where it is left out. */
  readonly units?: UnitSystem;
}

/** Who makes a change, and what it is called in the history. */
export interface By {
  readonly who: string;
  readonly title?: string;
}

/** A record with all its readings by id, the withdrawn among them: what history tells of. */
export interface RecordState {
  readonly record: YardRecord;
  readonly readings: ReadonlyMap<string, Reading>;
}
