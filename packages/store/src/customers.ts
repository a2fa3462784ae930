import { sql, type SqlBool } from 'kysely';
import type { SavedAnswer } from './answers/kinds.ts';
import { oneAnswer } from './answers/reading.ts';
import type { Queries } from './database/database.ts';
import { linesOf, type HistoryLine } from './history/reading.ts';
import type { By, Reading, RecordState, YardRecord } from './records/kinds.ts';
import { statesOf } from './records/states.ts';
import { longestName, textErrors } from './records/text.ts';
import { writing, type Desk, type Room } from './room.ts';
import { NotFound, Refused } from './trouble.ts';

/** Everything that is kept of one customer, in plain JSON. */
export interface CustomerExport {
  readonly hitchwright: 1;
  readonly at: string;
  /** The customer, the machines and their states, each with every reading and its history. */
  readonly records: readonly (YardRecord & {
    readonly readings: readonly Reading[];
    readonly history: readonly HistoryLine[];
  })[];
  readonly answers: readonly SavedAnswer[];
  /** Pictures as base64. */
  readonly photos: readonly {
    readonly id: string;
    readonly recordId: string;
    readonly field: string;
    readonly who: string;
    readonly addedAt: string;
    readonly jpeg: string;
  }[];
}

/** How much of a customer was deleted. */
export interface Forgotten {
  readonly records: number;
  readonly answers: number;
  readonly photos: number;
}

/** Customers as a whole; they are records like any other, too. */
export interface Customers {
  exportAll(id: string): Promise<CustomerExport>;
  /** Deletes a customer with machines, readings, history, photos and answers. There is no way back but a backup. */
  forget(by: By, id: string): Promise<Forgotten>;
}

/** The customers of a store. */
export function customersPart(desk: Desk): Customers {
  return {
    exportAll: (id) => desk.database.read((queries) => exported(queries, id, desk.clock())),
    forget: (by, id) => writing(desk, (room) => forgotten(room, by, id)),
  };
}

interface Belongings {
  /** States before machines before the customer: in this order they can be deleted. */
  readonly records: readonly string[];
  readonly answers: readonly string[];
}

async function belongingsOf(queries: Queries, id: string): Promise<Belongings> {
  const customer = await queries
    .selectFrom('record')
    .select('id')
    .where('id', '=', id)
    .where('kind', '=', 'customer')
    .executeTakeFirst();
  if (customer === undefined) throw new NotFound('customer', id);
  const machines = await queries.selectFrom('record').select('id').where('owner_id', '=', id).execute();
  const ids = machines.map((row) => row.id);
  const states = await queries
    .selectFrom('record')
    .select('id')
    .where('parent_id', 'in', ['', ...ids])
    .execute();
  const records = [...states.map((row) => row.id), ...ids, id];
  const users = queries.selectFrom('answer_use').select('answer_id').where('record_id', 'in', records);
  const answers = await queries
    .selectFrom('answer')
    .select('id')
    .where((w) => w.or([w('customer_id', '=', id), w('id', 'in', users)]))
    .orderBy('asked_at')
    .orderBy('id')
    .execute();
  return { records, answers: answers.map((row) => row.id) };
}

async function exported(queries: Queries, id: string, at: string): Promise<CustomerExport> {
  const { records, answers } = await belongingsOf(queries, id);
  const states = await statesOf(queries, records);
  const told: CustomerExport['records'][number][] = [];
  for (const one of [...records].reverse()) told.push(...(await toldOf(queries, states.get(one))));
  const saved: SavedAnswer[] = [];
  for (const one of answers) saved.push(await oneAnswer(queries, one));
  const photos = await queries
    .selectFrom('photo')
    .selectAll()
    .where('record_id', 'in', records)
    .orderBy('id')
    .execute();
  return {
    hitchwright: 1,
    at,
    records: told,
    answers: saved,
    photos: photos.map((row) => ({
      id: row.id,
      recordId: row.record_id,
      field: row.field,
      who: row.who,
      addedAt: row.added_at,
      jpeg: Buffer.from(row.jpeg).toString('base64'),
    })),
  };
}

async function toldOf(queries: Queries, state: RecordState | undefined): Promise<CustomerExport['records'][number][]> {
  if (state === undefined) return [];
  const { record, readings } = state;
  return [{ ...record, readings: [...readings.values()], history: await linesOf(queries, 'record_id', record.id) }];
}

async function forgotten(room: Room, by: By, id: string): Promise<Forgotten> {
  const wrong = textErrors('by.who', by.who, longestName, 1);
  if (wrong.length > 0) throw new Refused(wrong);
  const { queries, kind, now, ids } = room;
  await statesOf(queries, [id], kind);
  const { records, answers } = await belongingsOf(queries, id);
  await statesOf(queries, records, kind);
  const groups = await queries
    .selectFrom('history')
    .select('group_id')
    .distinct()
    .where('record_id', 'in', records)
    .execute();
  const photos = await queries.deleteFrom('photo').where('record_id', 'in', records).executeTakeFirst();
  await queries
    .deleteFrom('answer')
    .where('id', 'in', ['', ...answers])
    .execute();
  for (const one of records) await queries.deleteFrom('record').where('id', '=', one).execute();
  await forgetEmptyGroups(
    queries,
    groups.map((row) => row.group_id),
  );
  for (const one of [...records, ...answers]) await forgetResponses(queries, one);
  const trace = { id: ids(), kind: 'forget', title: '', who: by.who, at: now, undoes: null, undone_by: null };
  await queries
    .insertInto('change_group')
    .values({ ...trace, records: records.length })
    .execute();
  return { records: records.length, answers: answers.length, photos: Number(photos.numDeletedRows) };
}

/** The title of a change that was only about the customer may name them. */
async function forgetEmptyGroups(queries: Queries, ids: readonly string[]): Promise<void> {
  const left = queries
    .selectFrom('history')
    .select('group_id')
    .where('group_id', 'in', ['', ...ids]);
  await queries
    .deleteFrom('change_group')
    .where('id', 'in', ['', ...ids])
    .where('id', 'not in', left)
    .execute();
}

/** What was answered to a request about them. */
async function forgetResponses(queries: Queries, id: string): Promise<void> {
  const pattern = `%${id.replace(/[\\%_]/g, '\\$&')}%`;
  await queries
    .deleteFrom('done_request')
    .where((w) => sql<SqlBool>`${w.ref('response')} like ${pattern} escape '\\'`)
    .execute();
}
