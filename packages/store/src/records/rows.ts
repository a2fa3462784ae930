import type { ReadingGrade } from '@hitchwright/core/records';
import type { Row } from '../database/tables.ts';
import type { Fields, Reading, RecordKind, YardRecord } from './kinds.ts';
import { isPlainObject } from './paths.ts';
import { folded } from './text.ts';

/** A record from its row. */
export function recordOf(row: Row<'record'>): YardRecord {
  return {
    id: row.id,
    kind: row.kind as RecordKind,
    name: row.name,
    owner: row.owner_id,
    model: row.model_id,
    parent: row.parent_id,
    key: row.import_key,
    fields: JSON.parse(row.fields) as Fields,
    sample: row.sample === 1,
    revision: row.revision,
    createdAt: row.created_at,
    updatedAt: row.updated_at,
    removedAt: row.removed_at,
  };
}

/** The row of a record. */
export function recordRow(record: YardRecord): Row<'record'> {
  return {
    id: record.id,
    kind: record.kind,
    name: record.name,
    sort_name: folded(record.name),
    folded: folded([record.name, ...wordsIn(record.fields)].join(' ')),
    owner_id: record.owner,
    model_id: record.model,
    parent_id: record.parent,
    import_key: record.key,
    fields: JSON.stringify(record.fields),
    sample: record.sample ? 1 : 0,
    revision: record.revision,
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: record.removedAt,
  };
}

/** What people may look for beside the name: notes, how to reach somebody, and what an import kept. */
function wordsIn({ note, contact, extra }: Fields): string[] {
  const texts = [
    note,
    ...(isPlainObject(contact) ? Object.values(contact) : []),
    ...(Array.isArray(extra) ? extra.map((one: unknown) => (isPlainObject(one) ? one['text'] : undefined)) : []),
  ];
  return texts.filter((text) => typeof text === 'string');
}

/** A reading from its row. */
export function readingOf(row: Row<'reading'>): Reading {
  return {
    id: row.id,
    recordId: row.record_id,
    field: row.field,
    leaf: JSON.parse(row.leaf) as unknown,
    grade: row.grade as ReadingGrade,
    who: row.who,
    readAt: row.read_at,
    enteredAt: row.entered_at,
    enteredBy: row.entered_by,
    origin: row.origin,
    photoId: row.photo_id,
    pinnedAt: row.pinned_at,
    withdrawnAt: row.withdrawn_at,
  };
}

/** The row of a reading. */
export function readingRow(reading: Reading): Row<'reading'> {
  return {
    id: reading.id,
    record_id: reading.recordId,
    field: reading.field,
    leaf: JSON.stringify(reading.leaf),
    grade: reading.grade,
    who: reading.who,
    read_at: reading.readAt,
    entered_at: reading.enteredAt,
    entered_by: reading.enteredBy,
    origin: reading.origin,
    photo_id: reading.photoId,
    pinned_at: reading.pinnedAt,
    withdrawn_at: reading.withdrawnAt,
  };
}
