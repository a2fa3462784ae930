import { limitOf, pageOf, startOf, type Page, type PageWanted } from '../cursor.ts';
import type { Queries } from '../database/database.ts';
import type { RecordState } from '../records/kinds.ts';
import { NotFound } from '../trouble.ts';
import { applied, type Entry } from './entries.ts';
import { entryOf, groupOf, type ChangeGroup } from './log.ts';

/** One thing that changed in a record, by whom and when. */
export interface HistoryLine extends Entry {
  readonly recordId: string;
  /** Revision of the record that the change made. */
  readonly revision: number;
  readonly group: ChangeGroup;
}

/** Which groups of changes are wanted, the latest first. */
export interface GroupsWanted extends PageWanted {
  readonly kind?: ChangeGroup['kind'];
}

/** Everything that changed in a record, in order. */
export async function linesOf(queries: Queries, by: 'record_id' | 'group_id', id: string): Promise<HistoryLine[]> {
  const rows = await queries
    .selectFrom('history as h')
    .innerJoin('change_group as g', 'g.id', 'h.group_id')
    .select(['h.record_id', 'h.revision', 'h.what', 'h.key', 'h.before', 'h.after'])
    .select(['g.id', 'g.kind', 'g.title', 'g.who', 'g.at', 'g.records', 'g.undoes', 'g.undone_by'])
    .where(`h.${by}`, '=', id)
    .orderBy('h.record_id')
    .orderBy('h.revision')
    .orderBy('h.n')
    .execute();
  return rows.map((row) => {
    const { record_id, revision, what, key, before, after, ...group } = row;
    return { recordId: record_id, revision, ...entryOf({ what, key, before, after }), group: groupOf(group) };
  });
}

/**
 * A record as it was at a revision: its history played again up to there.
 *
 * @param lines the history of the record, in order
 * @param revision revision to stop at [whole]
 * @returns the record with all its readings, the withdrawn among them
 */
export function playedTo(lines: readonly HistoryLine[], revision: number): RecordState {
  const told = lines.filter((line) => line.revision <= revision);
  const last = told.at(-1);
  const state = told.reduce<RecordState | null>(applied, null);
  if (state === null || last?.revision !== revision) throw new NotFound('revision', String(revision));
  return { ...state, record: { ...state.record, revision, updatedAt: last.group.at } };
}

/** Groups of changes, the latest first. */
export async function listedGroups(queries: Queries, wanted: GroupsWanted): Promise<Page<ChangeGroup>> {
  const limit = limitOf(wanted);
  let query = queries.selectFrom('change_group').selectAll();
  if (wanted.kind !== undefined) query = query.where('kind', '=', wanted.kind);
  const [at, id] = startOf(wanted, 2) ?? [];
  if (at !== undefined && id !== undefined)
    query = query.where((w) => w.or([w('at', '<', at), w.and([w('at', '=', at), w('id', '<', id)])]));
  const rows = await query
    .orderBy('at', 'desc')
    .orderBy('id', 'desc')
    .limit(limit + 1)
    .execute();
  return pageOf(rows, limit, groupOf, (row) => [row.at, row.id]);
}
