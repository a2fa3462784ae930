import type { Page } from '../cursor.ts';
import { fullRecord } from '../records/full.ts';
import type { By, FullRecord } from '../records/kinds.ts';
import { standsFor } from '../records/references.ts';
import { writing, type Desk } from '../room.ts';
import type { ChangeGroup } from './log.ts';
import { linesOf, listedGroups, playedTo, type GroupsWanted, type HistoryLine } from './reading.ts';
import { undo, type Undone } from './undo.ts';

/** What changed, by whom and when; and how to take it back. */
export interface History {
  /** Everything that changed in a record, in order. */
  of(recordId: string): Promise<readonly HistoryLine[]>;
  /** Everything that a group of changes changed. */
  ofGroup(groupId: string): Promise<readonly HistoryLine[]>;
  /** Groups of changes, the latest first. */
  groups(wanted?: GroupsWanted): Promise<Page<ChangeGroup>>;
  /** A record as it was at a revision. */
  at(recordId: string, revision: number): Promise<FullRecord>;
  /** Takes a group of changes back with new ones. Throws Conflict where somebody has changed one of the same things since. */
  undo(by: By, groupId: string): Promise<Undone>;
}

/** The history of a store. */
export function historyPart(desk: Desk): History {
  const { database } = desk;
  return {
    of: (id) => database.read((queries) => linesOf(queries, 'record_id', id)),
    ofGroup: (id) => database.read((queries) => linesOf(queries, 'group_id', id)),
    groups: (wanted = {}) => database.read((queries) => listedGroups(queries, wanted)),
    at: (id, revision) =>
      database.read(async (queries) => {
        const state = playedTo(await linesOf(queries, 'record_id', id), revision);
        return fullRecord(state, await standsFor({ queries }, state.record));
      }),
    undo: (by, groupId) => writing(desk, (room) => undo(room, by, groupId)),
  };
}
