import type { Row } from '../database/tables.ts';
import type { SetupRefs } from '../setup/refs.ts';
import type { AnswerCheck, AnswerNote } from './kinds.ts';

/** A saved answer from its row, with the name of its customer. */
export function noteOf(row: Row<'answer'> & { readonly customer_name: string | null }): AnswerNote {
  const { customer_id: id, customer_name: name } = row;
  return {
    id: row.id,
    title: row.title,
    customer: id === null ? null : { id, name: name ?? '' },
    refs: JSON.parse(row.refs) as SetupRefs,
    verdict: row.verdict,
    reason: row.reason,
    askedAt: row.asked_at,
    askedBy: row.asked_by,
    checkedAt: row.checked_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
    revision: row.revision,
  };
}

/** A check from its row. */
export function checkOf(row: Row<'answer_check'>): AnswerCheck {
  return {
    revision: row.revision,
    verdict: row.verdict,
    reason: row.reason,
    summary: JSON.parse(row.summary) as unknown,
    ...(row.thresholds === null ? {} : { thresholds: JSON.parse(row.thresholds) as unknown }),
    ...(row.rules === null ? {} : { rules: row.rules }),
    checkedAt: row.checked_at,
    checkedBy: row.checked_by,
  };
}
