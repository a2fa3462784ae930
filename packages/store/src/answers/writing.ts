import type { InputError } from '@hitchwright/core/records';
import { insertMany } from '../database/chunks.ts';
import { fitsIn } from '../records/paths.ts';
import { folded, longestName, longestNote, refusal, textErrors } from '../records/text.ts';
import type { By } from '../records/kinds.ts';
import type { Room } from '../room.ts';
import { Conflict, Refused } from '../trouble.ts';
import type { AnswerDraft, CheckResult, SavedAnswer } from './kinds.ts';
import { oneAnswer } from './reading.ts';

const largestSummary = 2_000_000;
const largestRefs = 20_000;

/** Saves an answer with its first check. */
export async function saveAnswer(room: Room, by: By, draft: AnswerDraft): Promise<SavedAnswer> {
  refuse([
    ...checkErrors(by, draft),
    ...textErrors('title', draft.title, longestName, 1),
    ...(fitsIn(draft.refs, largestRefs) ? [] : [tooLarge('refs')]),
  ]);
  const { queries, ids, now } = room;
  await refuseStrangeCustomer(room, draft.customer);
  const { title, verdict, reason, refs, customer = null, sample = false } = draft;
  const id = ids();
  const row = {
    id,
    customer_id: customer,
    title,
    folded: foldedOf(title, reason),
    refs: JSON.stringify(refs),
    verdict,
    reason,
  };
  const state = {
    asked_at: now,
    asked_by: by.who,
    checked_at: now,
    changed_at: null,
    sample: sample ? 1 : 0,
    revision: 1,
  };
  await queries
    .insertInto('answer')
    .values({ ...row, ...state })
    .execute();
  await keepCheck(room, by, { id, revision: 1 }, draft);
  return oneAnswer(queries, id);
}

/** Adds a check to an answer that is still at the revision that was checked. */
export async function writeCheck(
  room: Room,
  by: By,
  at: { readonly id: string; readonly revision: number },
  check: CheckResult,
): Promise<SavedAnswer> {
  refuse(checkErrors(by, check));
  const { title, verdict, reason, changedAt } = await lockedAnswer(room, at);
  const isOther = verdict !== check.verdict || reason !== check.reason;
  const revision = at.revision + 1;
  const row = {
    verdict: check.verdict,
    reason: check.reason,
    folded: foldedOf(title, check.reason),
    checked_at: room.now,
  };
  const changed_at = isOther ? room.now : changedAt;
  await room.queries
    .updateTable('answer')
    .set({ ...row, changed_at, revision })
    .where('id', '=', at.id)
    .execute();
  await keepCheck(room, by, { id: at.id, revision }, check);
  return oneAnswer(room.queries, at.id);
}

/** Somebody has dealt with an answer that a check changed. */
export async function settleAnswer(room: Room, at: { readonly id: string; readonly revision: number }): Promise<void> {
  await lockedAnswer(room, at);
  const row = { changed_at: null, revision: at.revision + 1 };
  await room.queries.updateTable('answer').set(row).where('id', '=', at.id).execute();
}

async function lockedAnswer(
  { queries, kind }: Room,
  { id, revision }: { readonly id: string; readonly revision: number },
) {
  const select = queries.selectFrom('answer').select('id').where('id', '=', id);
  await (kind === 'postgres' ? select.forUpdate() : select).execute();
  const answer = await oneAnswer(queries, id);
  if (answer.revision === revision) return answer;
  throw new Conflict(`The answer “${answer.title}” was checked or settled meanwhile. Nothing was changed.`, answer);
}

async function keepCheck(
  { queries, now }: Room,
  by: By,
  { id, revision }: { readonly id: string; readonly revision: number },
  { verdict, reason, summary, thresholds, rules, uses }: CheckResult,
): Promise<void> {
  const found = {
    verdict,
    reason,
    summary: JSON.stringify(summary ?? null),
    thresholds: jsonOf(thresholds),
    rules: rules ?? null,
  };
  const row = { answer_id: id, revision, ...found, checked_at: now, checked_by: by.who };
  await queries.insertInto('answer_check').values(row).execute();
  await queries.deleteFrom('answer_use').where('answer_id', '=', id).execute();
  const rows = uses.map(({ recordId, field, used }) => ({ answer_id: id, record_id: recordId, field, used }));
  await insertMany(queries, 'answer_use', rows);
}

function jsonOf(value: unknown): string | null {
  return value == null ? null : JSON.stringify(value);
}

function foldedOf(title: string, reason: string): string {
  return folded(`${title} ${reason}`);
}

async function refuseStrangeCustomer({ queries, kind }: Room, customer: string | undefined): Promise<void> {
  if (customer === undefined) return;
  const select = queries
    .selectFrom('record')
    .select('id')
    .where('id', '=', customer)
    .where('kind', '=', 'customer')
    .where('removed_at', 'is', null);
  const found = await (kind === 'postgres' ? select.forShare() : select).executeTakeFirst();
  if (found === undefined)
    refuse([refusal('not-a-choice', 'customer', 'a customer who is there', 'another', 'Choose one of the customers.')]);
}

function checkErrors(by: By, { verdict, reason, summary, thresholds, rules = '' }: CheckResult): InputError[] {
  return [
    ...textErrors('by.who', by.who, longestName, 1),
    ...textErrors('verdict', verdict, longestName, 1),
    ...textErrors('reason', reason, longestNote),
    ...textErrors('rules', rules, longestName),
    ...(fitsIn(summary, largestSummary) ? [] : [tooLarge('summary')]),
    ...(fitsIn(thresholds, largestSummary) ? [] : [tooLarge('thresholds')]),
  ];
}

function tooLarge(path: string): InputError {
  return refusal('too-large', path, 'no more than can be kept', 'more', 'Keep a shorter form of it.');
}

function refuse(errors: readonly InputError[]): void {
  if (errors.length > 0) throw new Refused(errors);
}
