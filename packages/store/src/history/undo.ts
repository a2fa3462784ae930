import { chunksOf } from '../database/chunks.ts';
import { turn } from '../database/retry.ts';
import { after } from '../records/changing.ts';
import type { By, RecordState } from '../records/kinds.ts';
import { holdTargets, refuseOrphans } from '../records/references.ts';
import { keep, nextRevision, statesOf, type Change } from '../records/states.ts';
import type { Room } from '../room.ts';
import { Conflict, NotFound } from '../trouble.ts';
import { begins, inverse, type Entry } from './entries.ts';
import { groupOf, inGroup, type ChangeGroup } from './log.ts';
import { refuseOverwriting } from './overwriting.ts';
import { linesOf, type HistoryLine } from './reading.ts';

/** What an undo did. */
export interface Undone {
  /** Group of the changes that take the other one back. */
  readonly group: string;
  readonly records: number;
}

/**
 * Takes a group of changes back as one, with new changes: nothing is ever deleted. Refused where somebody has since changed one of the
 * same things, and where the group is taken back already. An undo is a group too and can be taken back.
 *
 * @param room the transaction
 * @param by who takes it back
 * @param groupId group to take back [id]
 * @returns the group that takes it back; throws Conflict, naming the later changes
 */
export async function undo(room: Room, by: By, groupId: string): Promise<Undone> {
  const target = await claimed(room, groupId);
  const own = byRecord(await linesOf(room.queries, 'group_id', groupId));
  const { group } = await inGroup(room, { kind: 'undo', by: titled(by, target), undoes: groupId }, async (open) => {
    await room.queries.updateTable('change_group').set({ undone_by: open.id }).where('id', '=', groupId).execute();
    await revive(room, target);
    for (const ids of chunksOf([...own.keys()])) {
      const states = await statesOf(room.queries, ids, room.kind);
      await refuseOverwriting(room, states, own);
      const changes = [...states].map(([id, state]) => takenBack(state, own.get(id) ?? [], room.now));
      await keep(room, open, changes);
      await turn();
    }
    await checkStanding(room, [...own.keys()]);
  });
  if (group === null) throw new Conflict('Nothing of it is left to take back.', target);
  return { group, records: own.size };
}

function byRecord(lines: readonly HistoryLine[]): Map<string, HistoryLine[]> {
  const own = new Map(lines.map(({ recordId }) => [recordId, new Array<HistoryLine>()]));
  for (const line of lines) own.get(line.recordId)?.push(line);
  return own;
}

function titled(by: By, { title }: ChangeGroup): By {
  return { who: by.who, title: by.title ?? title };
}

/** The group to take back, which nobody else takes back at the same time. */
async function claimed({ queries, kind }: Room, id: string): Promise<ChangeGroup> {
  const select = queries.selectFrom('change_group').selectAll().where('id', '=', id);
  const row = await (kind === 'postgres' ? select.forUpdate() : select).executeTakeFirst();
  if (row === undefined) throw new NotFound('group of changes', id);
  const group = groupOf(row);
  if (group.undoneBy !== null) throw new Conflict('It was taken back already.', group);
  return group;
}

/** Taking an undo back puts what it had taken back into force again; what that had taken back is taken back again; and so on. */
async function revive({ queries }: Room, { undoes }: ChangeGroup): Promise<void> {
  let next = undoes;
  let undoneBy: string | null = null;
  while (next !== null) {
    const row = await queries
      .selectFrom('change_group')
      .select(['id', 'undoes'])
      .where('id', '=', next)
      .executeTakeFirst();
    if (row === undefined) return;
    await queries.updateTable('change_group').set({ undone_by: undoneBy }).where('id', '=', row.id).execute();
    undoneBy = undoneBy === null ? row.id : null;
    next = row.undoes;
  }
}

/** The change of a record that takes the group back, its last entry first. A record that the group made is only removed. */
function takenBack(state: RecordState, own: readonly HistoryLine[], now: string): Change {
  const made = own.filter(isBeginning);
  const entries = (made.length > 0 ? made : [...own].reverse()).map((line) => inverse(line, now));
  return nextRevision(state, after(state, entries), entries, now);
}

function isBeginning({ what, key }: Entry): boolean {
  return what === 'record' && key === begins;
}

/** Every record, taken back or brought back, still stands on what is there and leaves nothing standing on what is gone. */
async function checkStanding(room: Room, ids: readonly string[]): Promise<void> {
  const records = [...(await statesOf(room.queries, ids)).values()].map(({ record }) => record);
  await holdTargets(room, records);
  await refuseOrphans(room, records);
}
