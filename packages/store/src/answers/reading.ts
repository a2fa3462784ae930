import { sql, type SqlBool } from 'kysely';
import { limitOf, pageOf, startOf, type Page } from '../cursor.ts';
import type { Queries } from '../database/database.ts';
import { patternsOf } from '../records/text.ts';
import type { Use } from '../setup/uses.ts';
import { NotFound } from '../trouble.ts';
import type { AnswerNote, AnswersWanted, SavedAnswer } from './kinds.ts';
import { checkOf, noteOf } from './rows.ts';

/** Saved answers with the names of their customers. */
export function answersWithCustomers(queries: Queries) {
  return queries
    .selectFrom('answer as a')
    .leftJoin('record as c', 'c.id', 'a.customer_id')
    .selectAll('a')
    .select('c.name as customer_name');
}

/** Saved answers, the latest asked first. */
export async function listedAnswers(queries: Queries, wanted: AnswersWanted): Promise<Page<AnswerNote>> {
  const limit = limitOf(wanted);
  let query = answersWithCustomers(queries);
  const { customer, verdict, changed, recordId, field } = wanted;
  if (customer !== undefined) query = query.where('a.customer_id', '=', customer);
  if (verdict !== undefined) query = query.where('a.verdict', '=', verdict);
  if (changed === true) query = query.where('a.changed_at', 'is not', null);
  if (recordId !== undefined) query = query.where('a.id', 'in', usersOf(queries, recordId, field));
  for (const pattern of patternsOf(wanted.search ?? ''))
    query = query.where(sql<SqlBool>`(a.folded || ' ' || coalesce(c.folded, '')) like ${pattern} escape '\\'`);
  const [at, id] = startOf(wanted, 2) ?? [];
  if (at !== undefined && id !== undefined)
    query = query.where((w) => w.or([w('a.asked_at', '<', at), w.and([w('a.asked_at', '=', at), w('a.id', '<', id)])]));
  const rows = await query
    .orderBy('a.asked_at', 'desc')
    .orderBy('a.id', 'desc')
    .limit(limit + 1)
    .execute();
  return pageOf(rows, limit, noteOf, (row) => [row.asked_at, row.id]);
}

function usersOf(queries: Queries, recordId: string, field: string | undefined) {
  const users = queries.selectFrom('answer_use').select('answer_id').where('record_id', '=', recordId);
  return field === undefined ? users : users.where('field', '=', field);
}

/** A saved answer with every check of it. */
export async function oneAnswer(queries: Queries, id: string): Promise<SavedAnswer> {
  const row = await answersWithCustomers(queries).where('a.id', '=', id).executeTakeFirst();
  if (row === undefined) throw new NotFound('answer', id);
  const checks = await queries
    .selectFrom('answer_check')
    .selectAll()
    .where('answer_id', '=', id)
    .orderBy('revision')
    .execute();
  return { ...noteOf(row), checks: checks.map(checkOf) };
}

/** What a saved answer rests on. */
export async function usesOfAnswer(queries: Queries, id: string): Promise<Use[]> {
  const rows = await queries
    .selectFrom('answer_use')
    .selectAll()
    .where('answer_id', '=', id)
    .orderBy('record_id')
    .orderBy('field')
    .execute();
  return rows.map(({ record_id, field, used }) => ({ recordId: record_id, field, used }));
}
