import { chunksOf, insertMany } from '../database/chunks.ts';
import type { Queries } from '../database/database.ts';
import type { Row } from '../database/tables.ts';
import type { Entry } from '../history/entries.ts';
import { entryRow, type OpenGroup } from '../history/log.ts';
import type { Room } from '../room.ts';
import type { Reading, RecordState } from './kinds.ts';
import { readingOf, readingRow, recordOf, recordRow } from './rows.ts';
import { refusal } from './text.ts';
import { Refused } from '../trouble.ts';

/** A change of one record that was worked out and is to be kept. */
export interface Change {
  /** None where the record is made. */
  readonly before: RecordState | null;
  readonly after: RecordState;
  readonly entries: readonly Entry[];
}

/**
 * Records with all their readings, by id; those that are not there are left out. Where something is to be changed they are locked
 * first, always in the order of their ids, so that two writers wait for each other and never in a ring.
 */
export async function statesOf(
  queries: Queries,
  ids: readonly string[],
  lock: Room['kind'] | null = null,
): Promise<Map<string, RecordState>> {
  const states = new Map<string, RecordState>();
  for (const chunk of chunksOf([...new Set(ids)].sort())) {
    const select = queries.selectFrom('record').selectAll().where('id', 'in', chunk).orderBy('id');
    const rows = await (lock === 'postgres' ? select.forUpdate() : select).execute();
    const readings = await queries
      .selectFrom('reading')
      .selectAll()
      .where('record_id', 'in', chunk)
      .orderBy('id')
      .execute();
    for (const [id, state] of joined(rows, readings)) states.set(id, state);
  }
  return states;
}

function joined(rows: readonly Row<'record'>[], readings: readonly Row<'reading'>[]): Map<string, RecordState> {
  const of = new Map(rows.map((row) => [row.id, new Map<string, Reading>()]));
  for (const row of readings) of.get(row.record_id)?.set(row.id, readingOf(row));
  return new Map(
    rows.map((row) => [row.id, { record: recordOf(row), readings: of.get(row.id) ?? new Map<string, Reading>() }]),
  );
}

/** A change with the record’s next revision and time. */
export function nextRevision(before: RecordState, after: RecordState, entries: readonly Entry[], now: string): Change {
  const record = { ...after.record, revision: before.record.revision + 1, updatedAt: now };
  return { before, after: { ...after, record }, entries };
}

/** Keeps changes with their history: rows that change first, so that a pin is off one reading before it is on another. */
export async function keep(room: Room, group: OpenGroup, changes: readonly Change[]): Promise<void> {
  const { queries } = room;
  group.records += changes.length;
  await refuseStrangePhotos(queries, changes.flatMap(readingsMade));
  const made = changes.filter(({ before }) => before === null);
  await insertMany(
    queries,
    'record',
    made.map(({ after }) => recordRow(after.record)),
  );
  const turned = changes.flatMap(readingsTurned);
  for (const change of changes) if (change.before !== null) await updateRecord(queries, change);
  for (const reading of [...turned].sort(pinsLast)) await updateReading(queries, reading);
  await insertMany(queries, 'reading', changes.flatMap(readingsMade).map(readingRow));
  await insertMany(
    queries,
    'history',
    changes.flatMap((change) => historyRows(change, group.id)),
  );
}

/** A photo of a reading is one of the same record. */
async function refuseStrangePhotos(queries: Queries, readings: readonly Reading[]): Promise<void> {
  const wanted = readings.filter(({ photoId }) => photoId !== null);
  for (const chunk of chunksOf(wanted)) {
    const ids = chunk.map(({ photoId }) => photoId ?? '');
    const photos = await queries.selectFrom('photo').select(['id', 'record_id']).where('id', 'in', ids).execute();
    const ofRecord = new Map(photos.map(({ id, record_id }) => [id, record_id]));
    const strange = chunk.filter(({ photoId, recordId }) => ofRecord.get(photoId ?? '') !== recordId);
    const errors = strange.map(({ field, photoId }) =>
      refusal('not-a-choice', `${field}.photoId`, 'a photo of the same record', photoId ?? '', 'Add the photo first.'),
    );
    if (errors.length > 0) throw new Refused(errors);
  }
}

function historyRows({ after: { record }, entries }: Change, groupId: string): Row<'history'>[] {
  return entries.map((entry, n) => entryRow(record.id, record.revision, n, groupId, entry));
}

async function updateRecord(queries: Queries, { after }: Change): Promise<void> {
  const { id, ...row } = recordRow(after.record);
  await queries.updateTable('record').set(row).where('id', '=', id).execute();
}

async function updateReading(queries: Queries, reading: Reading): Promise<void> {
  const { id, ...row } = readingRow(reading);
  await queries.updateTable('reading').set(row).where('id', '=', id).execute();
}

function readingsMade({ before, after, entries }: Change): Reading[] {
  return touched(after, entries).filter(({ id }) => before?.readings.has(id) !== true);
}

function readingsTurned({ before, after, entries }: Change): Reading[] {
  return touched(after, entries).filter(({ id }) => before?.readings.has(id) === true);
}

function touched({ readings }: RecordState, entries: readonly Entry[]): Reading[] {
  const ids = new Set(entries.filter(({ what }) => what === 'reading').map(({ key }) => key));
  return [...ids].flatMap((id) => readings.get(id) ?? []);
}

function pinsLast(a: Reading, b: Reading): number {
  return Number(a.pinnedAt !== null) - Number(b.pinnedAt !== null);
}
