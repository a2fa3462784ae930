import { sql, type SqlBool } from 'kysely';
import { limitOf, pageOf, startOf, type Page, type PageWanted } from '../cursor.ts';
import type { Queries } from '../database/database.ts';
import type { RecordKind, YardRecord } from './kinds.ts';
import { recordOf } from './rows.ts';
import { patternsOf } from './text.ts';

/** Which records are wanted; everything that is left out is no matter. */
export interface RecordsWanted extends PageWanted {
  readonly kind?: RecordKind | readonly RecordKind[];
  readonly owner?: string;
  readonly model?: string;
  readonly parent?: string;
  /** Words that the name, the notes, the owner or the model must have, capitals and accents aside. */
  readonly search?: string;
  readonly sample?: boolean;
  /** Only those that were removed. */
  readonly removed?: boolean;
}

/** Records by name. */
export async function listedRecords(queries: Queries, wanted: RecordsWanted): Promise<Page<YardRecord>> {
  const limit = limitOf(wanted);
  let query = queries
    .selectFrom('record as r')
    .leftJoin('record as o', 'o.id', 'r.owner_id')
    .leftJoin('record as m', 'm.id', 'r.model_id')
    .selectAll('r')
    .where('r.removed_at', wanted.removed === true ? 'is not' : 'is', null);
  const { kind, owner, model, parent, sample } = wanted;
  if (kind !== undefined) query = query.where('r.kind', 'in', typeof kind === 'string' ? [kind] : [...kind]);
  if (owner !== undefined) query = query.where('r.owner_id', '=', owner);
  if (model !== undefined) query = query.where('r.model_id', '=', model);
  if (parent !== undefined) query = query.where('r.parent_id', '=', parent);
  if (sample !== undefined) query = query.where('r.sample', '=', sample ? 1 : 0);
  for (const pattern of patternsOf(wanted.search ?? '')) query = query.where(has(pattern));
  const [name, id] = startOf(wanted, 2) ?? [];
  if (name !== undefined && id !== undefined)
    query = query.where((w) =>
      w.or([w('r.sort_name', '>', name), w.and([w('r.sort_name', '=', name), w('r.id', '>', id)])]),
    );
  const rows = await query
    .orderBy('r.sort_name')
    .orderBy('r.id')
    .limit(limit + 1)
    .execute();
  return pageOf(rows, limit, recordOf, (row) => [row.sort_name, row.id]);
}

function has(pattern: string) {
  return sql<SqlBool>`(r.folded || ' ' || coalesce(o.folded, '') || ' ' || coalesce(m.folded, '')) like ${pattern} escape '\\'`;
}
