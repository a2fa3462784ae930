import { contentErrors, largestFields, readingErrors } from './checks.ts';
import { after, entriesOf } from './changing.ts';
import type { DocumentKind } from './document.ts';
import type { Fields, FullRecord, RecordChange, RecordDraft, RecordState, YardRecord } from './kinds.ts';
import { fullRecord } from './full.ts';
import { newReading, spelt } from './newReading.ts';
import { fitsIn, isPlainObject, tidied } from './paths.ts';
import { holdTargets, refuseOrphans, standsFor } from './references.ts';
import { keep, nextRevision, statesOf, type Change } from './states.ts';
import { longestName, refusal, textErrors } from './text.ts';
import { begins, type Entry } from '../history/entries.ts';
import type { OpenGroup } from '../history/log.ts';
import type { Room } from '../room.ts';
import { Conflict, NotFound, Refused } from '../trouble.ts';

/** Works out a new record; nothing is written yet. Throws Refused with everything that is wrong with it. */
export function madeRecord(draft: RecordDraft, kind: DocumentKind | null, room: Room, group: OpenGroup): Change {
  const { name, owner = null, model = null, parent = null, key = null, sample = false } = draft;
  const fields = cleanFields(draft.fields ?? {});
  const times = { createdAt: room.now, updatedAt: room.now, removedAt: null };
  const base = {
    id: room.ids(),
    kind: draft.kind,
    name,
    owner,
    model,
    parent,
    key,
    fields,
    sample,
    revision: 1,
    ...times,
  };
  const content = { ...base, standsFor: kind };
  const readings = spelt(draft.readings ?? [], kind, fields, draft.units);
  const keys = key === null ? [] : textErrors('key', key, longestName, 1);
  refuse([...contentErrors(content), ...keys, ...readingErrors(readings, content, room.now)]);
  const added = readings.map((one) => newReading(one, base.id, { ...room, ...group }));
  const first: Entry = { what: 'record', key: begins, before: null, after: base };
  const bare: RecordState = { record: base, readings: new Map() };
  const entries = [first, ...entriesOf(bare, {}, added, room.now)];
  return { before: null, after: after(bare, entries.slice(1)), entries };
}

/** Works out a change of a record; nothing is written yet. Null where it changes nothing. */
export function changedRecord(
  state: RecordState,
  change: RecordChange,
  kind: DocumentKind | null,
  room: Room,
  group: OpenGroup,
): Change | null {
  cleanFields(change.fields ?? {});
  const plain = after(state, entriesOf(state, { ...change, withdraw: [], pin: [], unpin: [] }, [], room.now)).record;
  const content = { ...plain, standsFor: kind };
  const drafts = spelt(change.add ?? [], kind, plain.fields, change.units);
  const keys = typeof plain.key === 'string' ? textErrors('key', plain.key, longestName, 1) : [];
  refuse([
    ...(plain === state.record ? [] : contentErrors(content)),
    ...keys,
    ...readingErrors(drafts, content, room.now),
  ]);
  const added = drafts.map((one) => newReading(one, plain.id, { ...room, ...group }));
  const entries = entriesOf(state, change, added, room.now);
  return entries.length === 0 ? null : nextRevision(state, after(state, entries), entries, room.now);
}

/** Makes a record and keeps it. */
export async function createRecord(room: Room, group: OpenGroup, draft: RecordDraft): Promise<FullRecord> {
  const kind = await standsFor(room, { kind: draft.kind, model: draft.model ?? null });
  const made = madeRecord(draft, kind, room, group);
  await holdTargets(room, [made.after.record]);
  await refuseTakenKey(room, made.after.record);
  await keep(room, group, [made]);
  return fullRecord(made.after, kind);
}

/** Changes a record and keeps the change, if the record is still at the revision that is expected. */
export async function changeRecord(
  room: Room,
  group: OpenGroup,
  at: { readonly id: string; readonly revision: number | null },
  change: RecordChange,
): Promise<FullRecord> {
  const state = await lockedState(room, at);
  if (state.record.removedAt !== null) throw new NotFound('record', at.id);
  const kind = await standsFor(room, state.record);
  if (change.model !== undefined) refuse(await modelErrors(room, change.model, kind));
  const changed = changedRecord(state, change, kind, room, group);
  if (changed === null) return fullRecord(state, kind);
  const { record } = changed.after;
  if (isElsewhere(record, state.record)) await holdTargets(room, [record]);
  if (record.key !== state.record.key) await refuseTakenKey(room, record);
  await keep(room, group, [changed]);
  return fullRecord(changed.after, kind);
}

/** Removes a record, or brings it back; a record that is so already is left alone. */
export async function setRemoved(
  room: Room,
  group: OpenGroup,
  at: { readonly id: string; readonly revision: number },
  isRemoved: boolean,
): Promise<FullRecord> {
  const state = await lockedState(room, at);
  const kind = await standsFor(room, state.record);
  if ((state.record.removedAt !== null) === isRemoved) return fullRecord(state, kind);
  const value = isRemoved ? room.now : null;
  const entry: Entry = { what: 'record', key: 'removedAt', before: state.record.removedAt, after: value };
  const changed = nextRevision(state, after(state, [entry]), [entry], room.now);
  await holdTargets(room, [changed.after.record]);
  await keep(room, group, [changed]);
  await refuseOrphans(room, [changed.after.record]);
  return fullRecord(changed.after, kind);
}

/** A record that nobody else changes until the transaction ends, at the revision that is expected. */
async function lockedState(
  room: Room,
  { id, revision }: { readonly id: string; readonly revision: number | null },
): Promise<RecordState> {
  const state = (await statesOf(room.queries, [id], room.kind)).get(id);
  if (state === undefined) throw new NotFound('record', id);
  if (revision === null || revision === state.record.revision) return state;
  const current = fullRecord(state, await standsFor(room, state.record));
  throw new Conflict(`Somebody has changed ${state.record.name} meanwhile. Nothing was changed.`, current);
}

/** Fields without what stands for nothing; refuses what is no object of JSON or too large to be looked at. */
function cleanFields(fields: Fields): Fields {
  if (!isPlainObject(fields) || !fitsIn(fields, largestFields))
    throw new Refused([
      refusal('too-large', 'fields', `an object of at most ${largestFields} characters`, 'another', 'Shorten it.'),
    ]);
  return tidied(fields);
}

function isElsewhere(a: YardRecord, b: YardRecord): boolean {
  return a.owner !== b.owner || a.model !== b.model || a.parent !== b.parent;
}

/** A machine stays what it is: its readings would mean nothing on another kind. */
async function modelErrors(room: Room, model: string, kind: DocumentKind | null) {
  const next = await standsFor(room, { kind: 'machine', model });
  return next === kind || next === null
    ? []
    : [refusal('not-a-choice', 'model', `a ${kind ?? 'record'}`, `a ${next}`, 'Make another machine for it.')];
}

async function refuseTakenKey({ queries }: Room, { id, kind, key }: YardRecord): Promise<void> {
  if (key === null) return;
  const taken = await queries
    .selectFrom('record')
    .select('name')
    .where('kind', '=', kind)
    .where('import_key', '=', key)
    .where('id', '<>', id)
    .executeTakeFirst();
  if (taken !== undefined)
    refuse([refusal('not-a-choice', 'key', 'a key of its own', `that of ${taken.name}`, 'Choose another.')]);
}

function refuse(errors: ConstructorParameters<typeof Refused>[0]): void {
  if (errors.length > 0) throw new Refused(errors);
}
