import type { Queries } from '../database/database.ts';
import { inGroup, type OpenGroup } from '../history/log.ts';
import type { Page } from '../cursor.ts';
import { writing, type Desk, type Room } from '../room.ts';
import { NotFound } from '../trouble.ts';
import { fullRecord } from './full.ts';
import type { By, FullRecord, ReadingDraft, RecordChange, RecordDraft, YardRecord } from './kinds.ts';
import { listedRecords, type RecordsWanted } from './listing.ts';
import { standsFor } from './references.ts';
import { removeSamples } from './samples.ts';
import { statesOf } from './states.ts';
import { changeRecord, createRecord, setRemoved } from './writing.ts';
import type { UnitSystem } from '@hitchwright/core/units';

/** The yard’s records. Every change is made at the revision that its maker saw; where somebody was first, it throws Conflict. */
export interface Records {
  create(by: By, draft: RecordDraft): Promise<FullRecord>;
  /** Throws NotFound where it is not there; one that was removed is there if `removed` says so. */
  get(id: string, wanted?: { readonly removed?: boolean }): Promise<FullRecord>;
  list(wanted?: RecordsWanted): Promise<Page<YardRecord>>;
  change(by: By, id: string, revision: number, change: RecordChange): Promise<FullRecord>;
  /** Takes it out of the lists; its readings, history and answers stay. */
  remove(by: By, id: string, revision: number): Promise<FullRecord>;
  restore(by: By, id: string, revision: number): Promise<FullRecord>;
  /** Removes every sample record, as one group of changes, and deletes every sample answer. */
  removeSamples(by: By): Promise<{ readonly group: string | null; readonly records: number; readonly answers: number }>;
}

/** Readings of a record. Adding one never gets in anybody’s way; taking one away or pinning it needs the record’s revision. */
export interface Readings {
  add(by: By, recordId: string, readings: readonly ReadingDraft[], units?: UnitSystem): Promise<FullRecord>;
  withdraw(by: By, recordId: string, revision: number, readingId: string): Promise<FullRecord>;
  pin(by: By, recordId: string, revision: number, readingId: string): Promise<FullRecord>;
  unpin(by: By, recordId: string, revision: number, readingId: string): Promise<FullRecord>;
}

/** The records of a store. */
export function recordsPart(desk: Desk): Records {
  return {
    create: (by, draft) => editing(desk, by, (room, group) => createRecord(room, group, draft)),
    get: (id, { removed = false } = {}) => desk.database.read((queries) => oneRecord(queries, id, removed)),
    list: (wanted = {}) => desk.database.read((queries) => listedRecords(queries, wanted)),
    change: (by, id, revision, change) => changing(desk, by, { id, revision }, change),
    remove: (by, id, revision) => removing(desk, by, { id, revision }, true),
    restore: (by, id, revision) => removing(desk, by, { id, revision }, false),
    removeSamples: (by) => writing(desk, (room) => removeSamples(room, by)),
  };
}

/** The readings of a store. */
export function readingsPart(desk: Desk): Readings {
  return {
    add: (by, id, add, units = 'us') => changing(desk, by, { id, revision: null }, { add, units }),
    withdraw: (by, id, revision, reading) => changing(desk, by, { id, revision }, { withdraw: [reading] }),
    pin: (by, id, revision, reading) => changing(desk, by, { id, revision }, { pin: [reading] }),
    unpin: (by, id, revision, reading) => changing(desk, by, { id, revision }, { unpin: [reading] }),
  };
}

interface At<R> {
  readonly id: string;
  readonly revision: R;
}

function changing(desk: Desk, by: By, at: At<number | null>, change: RecordChange): Promise<FullRecord> {
  return editing(desk, by, (room, group) => changeRecord(room, group, at, change));
}

function removing(desk: Desk, by: By, at: At<number>, isRemoved: boolean): Promise<FullRecord> {
  return editing(desk, by, (room, group) => setRemoved(room, group, at, isRemoved));
}

function editing<T>(desk: Desk, by: By, work: (room: Room, group: OpenGroup) => Promise<T>): Promise<T> {
  return writing(desk, async (room) => {
    const { result } = await inGroup(room, { kind: 'edit', by }, (group) => work(room, group));
    return result;
  });
}

async function oneRecord(queries: Queries, id: string, removed: boolean): Promise<FullRecord> {
  const state = (await statesOf(queries, [id])).get(id);
  if (state === undefined || (state.record.removedAt !== null && !removed)) throw new NotFound('record', id);
  return fullRecord(state, await standsFor({ queries }, state.record));
}
