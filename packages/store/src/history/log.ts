import type { Row } from '../database/tables.ts';
import type { By } from '../records/kinds.ts';
import { longestName, textErrors } from '../records/text.ts';
import type { Room } from '../room.ts';
import { Refused } from '../trouble.ts';
import type { Entry } from './entries.ts';

/** What a group of changes was. */
export type GroupKind = 'edit' | 'import' | 'undo' | 'sample' | 'forget';

/** Changes that were made as one and are undone as one. */
export interface ChangeGroup {
  readonly id: string;
  readonly kind: GroupKind;
  readonly title: string;
  readonly who: string;
  readonly at: string;
  /** How many records it changed. */
  readonly records: number;
  /** Group that it took back. */
  readonly undoes: string | null;
  /** Group that took it back. */
  readonly undoneBy: string | null;
}

/** A group of changes that is being made. */
export interface OpenGroup {
  readonly id: string;
  readonly who: string;
  /** Source of the import that it is. */
  readonly origin: string | null;
  /** How many records were changed so far. */
  records: number;
}

/** What a group is, beside who makes it. */
export interface GroupMeant {
  readonly kind: GroupKind;
  readonly by: By;
  readonly undoes?: string;
  readonly origin?: string | null;
}

/** Makes changes as one group; where nothing changes there is no group. */
export async function inGroup<T>(
  room: Room,
  meant: GroupMeant,
  work: (group: OpenGroup) => Promise<T>,
): Promise<{ readonly result: T; readonly group: string | null }> {
  const group = await openedGroup(room, meant);
  const result = await work(group);
  const { id, records } = group;
  if (records > 0) await room.queries.updateTable('change_group').set({ records }).where('id', '=', id).execute();
  else await room.queries.deleteFrom('change_group').where('id', '=', id).execute();
  return { result, group: records > 0 ? id : null };
}

async function openedGroup(room: Room, { kind, by, undoes, origin = null }: GroupMeant): Promise<OpenGroup> {
  const { who, title = '' } = by;
  const errors = [...textErrors('by.who', who, longestName, 1), ...textErrors('by.title', title, longestName)];
  if (errors.length > 0) throw new Refused(errors);
  const id = room.ids();
  const row = { id, kind, title, who, at: room.now, records: 0, undoes: undoes ?? null, undone_by: null };
  await room.queries.insertInto('change_group').values(row).execute();
  return { id, who, origin, records: 0 };
}

/** A group from its row. */
export function groupOf(row: Row<'change_group'>): ChangeGroup {
  const { undone_by, kind, ...same } = row;
  return { ...same, kind: kind as GroupKind, undoneBy: undone_by };
}

/** The row of one entry: the n-th of a change. */
export function entryRow(recordId: string, revision: number, n: number, groupId: string, entry: Entry): Row<'history'> {
  const { what, key } = entry;
  const before = jsonOf(entry.before);
  return { record_id: recordId, revision, n, group_id: groupId, what, key, before, after: jsonOf(entry.after) };
}

function jsonOf(value: unknown): string | null {
  return value === null || value === undefined ? null : JSON.stringify(value);
}

/** An entry from its row. */
export function entryOf(row: Pick<Row<'history'>, 'what' | 'key' | 'before' | 'after'>): Entry {
  const parsed = (text: string | null): unknown => (text === null ? null : JSON.parse(text));
  return { what: row.what as Entry['what'], key: row.key, before: parsed(row.before), after: parsed(row.after) };
}
