import { sql } from 'kysely';
import { chunksOf } from '../database/chunks.ts';
import type { Queries } from '../database/database.ts';
import { turn } from '../database/retry.ts';
import { setupFor } from '../setup/setupFor.ts';
import type { Use } from '../setup/uses.ts';
import { NotFound, Refused } from '../trouble.ts';
import type { AnswerNote, AnswerToCheck } from './kinds.ts';
import { answersWithCustomers, usesOfAnswer } from './reading.ts';
import { noteOf } from './rows.ts';

/** Answers that are to be checked again; those that only look so, with what they rest on now. */
export interface LookedThrough {
  readonly toCheck: readonly AnswerToCheck[];
  readonly same: readonly { readonly id: string; readonly uses: readonly Use[] }[];
  readonly more: boolean;
}

/**
 * Looks through the answers that rest on a record which has changed since, and compares what each used with what is in use now.
 *
 * @param queries one moment of the store
 * @param most how many answers to look at [whole]
 * @param recordId only answers that rest on this record [id]
 * @returns the answers to check again, the longest unchecked first
 */
export async function lookedThrough(queries: Queries, most: number, recordId?: string): Promise<LookedThrough> {
  const rows = await suspects(queries, recordId)
    .limit(most + 1)
    .execute();
  const looked: (AnswerToCheck | { readonly id: string; readonly uses: readonly Use[] })[] = [];
  for (const row of rows.slice(0, most)) {
    looked.push(await compared(queries, noteOf(row)));
    await turn();
  }
  return {
    toCheck: looked.filter((one) => 'answer' in one),
    same: looked.filter((one) => 'uses' in one),
    more: rows.length > most,
  };
}

function suspects(queries: Queries, recordId: string | undefined) {
  const stale = queries
    .selectFrom('answer_use as u')
    .innerJoin('record as r', 'r.id', 'u.record_id')
    .select('u.answer_id')
    .where('u.field', '=', '')
    .where(sql`cast(r.revision as text)`, '<>', sql.ref('u.used'));
  const wanted = recordId === undefined ? stale : stale.where('u.record_id', '=', recordId);
  return answersWithCustomers(queries).where('a.id', 'in', wanted).orderBy('a.checked_at').orderBy('a.id');
}

async function compared(queries: Queries, answer: AnswerNote) {
  const now = await usesNow(queries, answer);
  if (now === null) return { answer, changed: [] };
  const before = new Map((await usesOfAnswer(queries, answer.id)).map((use) => [keyOf(use), use]));
  const after = new Map(now.map((use) => [keyOf(use), use]));
  const all = new Map([...before, ...after]);
  const changed = [...all].filter(([key, { field }]) => field !== '' && before.get(key)?.used !== after.get(key)?.used);
  if (changed.length === 0) return { id: answer.id, uses: now };
  return { answer, changed: changed.map(([, { recordId, field }]) => ({ recordId, field })) };
}

async function usesNow(queries: Queries, { refs }: AnswerNote): Promise<readonly Use[] | null> {
  try {
    return (await setupFor(queries, refs)).uses;
  } catch (problem) {
    if (problem instanceof NotFound || problem instanceof Refused) return null;
    throw problem;
  }
}

function keyOf({ recordId, field }: Use): string {
  return `${recordId} ${field}`;
}

/** Notes the revisions at which answers were found to rest on the same as before, so that they are not looked at again. */
export async function noteSame(queries: Queries, same: LookedThrough['same']): Promise<void> {
  for (const chunk of chunksOf(same)) {
    for (const { id, uses } of chunk) {
      for (const { recordId, used } of uses.filter(({ field }) => field === ''))
        await queries
          .updateTable('answer_use')
          .set({ used })
          .where('answer_id', '=', id)
          .where('record_id', '=', recordId)
          .where('field', '=', '')
          .execute();
    }
  }
}
