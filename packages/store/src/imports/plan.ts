import type { InputError } from '@hitchwright/core/records';
import type { Entry } from '../history/entries.ts';
import type { OpenGroup } from '../history/log.ts';
import { after } from '../records/changing.ts';
import type { DocumentKind } from '../records/document.ts';
import type { Reading, RecordChange, RecordState } from '../records/kinds.ts';
import { spelt } from '../records/newReading.ts';
import { flattened, isPlainObject, ordered } from '../records/paths.ts';
import { standsFor } from '../records/references.ts';
import { nextRevision, statesOf, type Change } from '../records/states.ts';
import { refusal } from '../records/text.ts';
import { changedRecord, madeRecord } from '../records/writing.ts';
import type { Room } from '../room.ts';
import { Refused } from '../trouble.ts';
import { matched, type Match } from './matching.ts';
import type { ImportRow, RowPreview } from './rows.ts';

/** What becomes of one row. */
export interface RowPlan {
  readonly does: RowPreview['does'];
  readonly recordId: string | null;
  readonly change: Change | null;
  readonly errors: readonly InputError[];
}

/** Works out a part of an import; nothing is written. The records are locked where they are to be written. */
export async function planned(
  room: Room,
  group: OpenGroup,
  rows: readonly ImportRow[],
  isToWrite: boolean,
): Promise<RowPlan[]> {
  const matches = await matched(room.queries, rows);
  const ids = matches.flatMap((match) => ('id' in match && match.id !== null ? [match.id] : []));
  const states = await statesOf(room.queries, ids, isToWrite ? room.kind : null);
  const kinds = new Map<string, DocumentKind | null>();
  const plans: RowPlan[] = [];
  for (const [i, row] of rows.entries()) {
    const stands = JSON.stringify([row.kind, row.model ?? null]);
    if (!kinds.has(stands)) kinds.set(stands, await standsFor(room, { kind: row.kind, model: row.model ?? null }));
    plans.push(planOf(room, group, row, { match: matches[i], states, kind: kinds.get(stands) ?? null }));
  }
  return plans;
}

interface Found {
  readonly match: Match | undefined;
  readonly states: ReadonlyMap<string, RecordState>;
  readonly kind: DocumentKind | null;
}

function planOf(room: Room, group: OpenGroup, row: ImportRow, { match, states, kind }: Found): RowPlan {
  if (match === undefined || 'error' in match) return refused(null, match === undefined ? [] : [match.error]);
  const { id } = match;
  try {
    if (id === null) return { does: 'create', recordId: null, change: madeRecord(row, kind, room, group), errors: [] };
    const state = states.get(id);
    if (state === undefined || state.record.kind !== row.kind) return refused(id, [notThere(row)]);
    return updated(room, group, state, row, kind);
  } catch (problem) {
    if (problem instanceof Refused) return refused(id, problem.errors);
    throw problem;
  }
}

function updated(room: Room, group: OpenGroup, state: RecordState, row: ImportRow, kind: DocumentKind | null): RowPlan {
  const { removedAt, id } = state.record;
  const back: Entry[] =
    removedAt === null ? [] : [{ what: 'record', key: 'removedAt', before: removedAt, after: null }];
  const standing = after(state, back);
  const changed = changedRecord(standing, changeBy(standing, row, kind, group), kind, room, group);
  const entries = [...back, ...(changed?.entries ?? [])];
  if (entries.length === 0) return { does: 'nothing', recordId: id, change: null, errors: [] };
  const change = nextRevision(state, changed?.after ?? standing, entries, room.now);
  return { does: removedAt === null ? 'update' : 'restore', recordId: id, change, errors: [] };
}

/** What a row says that the record doesn’t say yet. */
function changeBy(state: RecordState, row: ImportRow, kind: DocumentKind | null, group: OpenGroup): RecordChange {
  const { name, owner, model, parent, key, fields, units } = row;
  const standing = [...state.readings.values()].filter(({ withdrawnAt }) => withdrawnAt === null);
  const known = new Set(standing.map(said));
  const add = spelt(row.readings ?? [], kind, state.record.fields, units).filter((draft) => !known.has(said(draft)));
  const replaced = new Set(add.map(({ field }) => field));
  const isReplaced = ({ origin, field, pinnedAt }: Reading): boolean =>
    origin === group.origin && origin !== null && pinnedAt === null && replaced.has(field);
  return {
    name,
    ...(owner === undefined ? {} : { owner }),
    ...(model === undefined ? {} : { model }),
    ...(parent === undefined ? {} : { parent }),
    ...(key === undefined ? {} : { key }),
    ...(isPlainObject(fields) ? { fields: Object.fromEntries(flattened(fields)) } : {}),
    add,
    withdraw: standing.filter(isReplaced).map(({ id }) => id),
  };
}

function said({ field, grade, leaf }: Pick<Reading, 'field' | 'grade' | 'leaf'>): string {
  return ordered([field, grade, leaf ?? null]);
}

function refused(recordId: string | null, errors: readonly InputError[]): RowPlan {
  return { does: 'refuse', recordId, change: null, errors };
}

function notThere({ kind }: ImportRow): InputError {
  return refusal('not-a-choice', 'id', `a ${kind} that is there`, 'another', 'Leave the id out for a new one.');
}
