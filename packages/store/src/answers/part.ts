import type { Page } from '../cursor.ts';
import type { By } from '../records/kinds.ts';
import { writing, type Desk } from '../room.ts';
import type { Use } from '../setup/uses.ts';
import { lookedThrough, noteSame } from './again.ts';
import type { AnswerDraft, AnswerNote, AnswersWanted, AnswerToCheck, CheckResult, SavedAnswer } from './kinds.ts';
import { listedAnswers, oneAnswer, usesOfAnswer } from './reading.ts';
import { saveAnswer, settleAnswer, writeCheck } from './writing.ts';

/** Saved answers, what each rests on, and which are to be checked again. */
export interface Answers {
  save(by: By, draft: AnswerDraft): Promise<SavedAnswer>;
  get(id: string): Promise<SavedAnswer>;
  list(wanted?: AnswersWanted): Promise<Page<AnswerNote>>;
  usesOf(id: string): Promise<readonly Use[]>;
  /**
   * Answers that rest on what has become another since they were checked, the longest unchecked first; of one record where it is named. `more`
   * says that some were not looked at yet.
   */
  toCheckAgain(wanted?: {
    readonly recordId?: string;
    readonly limit?: number;
  }): Promise<{ readonly answers: readonly AnswerToCheck[]; readonly more: boolean }>;
  /** Adds a check. Where verdict or reason come out otherwise, the answer is among the changed ones until it is settled. */
  writeCheck(by: By, id: string, revision: number, check: CheckResult): Promise<SavedAnswer>;
  /** Somebody has dealt with an answer that a check changed. */
  settle(id: string, revision: number): Promise<void>;
}

/** The answers of a store. */
export function answersPart(desk: Desk): Answers {
  const { database } = desk;
  return {
    save: (by, draft) => writing(desk, (room) => saveAnswer(room, by, draft)),
    get: (id) => database.read((queries) => oneAnswer(queries, id)),
    list: (wanted = {}) => database.read((queries) => listedAnswers(queries, wanted)),
    usesOf: (id) => database.read((queries) => usesOfAnswer(queries, id)),
    async toCheckAgain({ recordId, limit = 200 } = {}) {
      const { toCheck, same, more } = await database.read((queries) => lookedThrough(queries, limit, recordId));
      if (same.length > 0) await database.write((queries) => noteSame(queries, same));
      return { answers: toCheck, more };
    },
    writeCheck: (by, id, revision, check) => writing(desk, (room) => writeCheck(room, by, { id, revision }, check)),
    settle: (id, revision) => writing(desk, (room) => settleAnswer(room, { id, revision })),
  };
}
