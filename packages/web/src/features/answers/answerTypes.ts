import { said, yard } from '../../app/server/yard.ts';

/** A saved answer as the list has it. */
export type AnswerNote = Awaited<ReturnType<typeof answersOf>>['items'][number];
/** A saved answer with every check of it. */
export type SavedAnswer = Awaited<ReturnType<typeof answerOf>>;
export type Check = SavedAnswer['checks'][number];

/** Which answers are wanted. */
export interface Wanted {
  readonly search?: string;
  readonly customer?: string;
  readonly verdict?: string;
  readonly changed?: 'true';
}

const pageSize = '100';

/** A page of saved answers, the latest asked first. */
export function answersOf(wanted: Wanted, cursor: string | null, signal: AbortSignal) {
  const query = { ...wanted, limit: pageSize, ...(cursor === null ? {} : { cursor }) };
  return said(yard.answers.$get({ query }, { init: { signal } }));
}

/** A saved answer. */
export function answerOf(id: string, signal?: AbortSignal) {
  return said(yard.answers[':id'].$get({ param: { id } }, signal === undefined ? {} : { init: { signal } }));
}

/**
 * What an answer said when somebody last dealt with it. Dealing with it counts its revision up without a check, so a gap between two checks
 * is where that was; else it is what was said when it was asked.
 *
 * @param checks its checks, the first one first
 */
export function dealtWith(checks: readonly Check[]): Check | undefined {
  const seen = checks.filter((check, i) => i > 0 && check.revision - (checks[i - 1]?.revision ?? 0) > 1);
  const last = seen.at(-1);
  return last === undefined ? checks[0] : checks[checks.indexOf(last) - 1];
}

/** The setup of an answer, made of the values in use today. */
export function setupOf(refs: SavedAnswer['refs'], signal: AbortSignal) {
  const json = refs as Parameters<typeof yard.setups.$post>[0]['json'];
  return said(yard.setups.$post({ json }, { init: { signal } }));
}

/** What a setup comes to, told in the units of the saved answer, so that the two can be held against each other. */
export function checkOf(setup: Record<string, unknown>, { units }: SavedAnswer['refs'], signal: AbortSignal) {
  const query = { full: 'false', ...(units === undefined ? {} : { units }) } as const;
  return said(yard.check.$post({ query, json: setup }, { init: { signal } }));
}

/** What a saved answer rests on. */
export function usesOf(id: string, signal: AbortSignal) {
  return said(yard.answers[':id'].uses.$get({ param: { id }, query: { limit: '1000' } }, { init: { signal } }));
}
