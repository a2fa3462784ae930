import { assess, type Answer } from '../engine/assess/index.ts';
import { readSetup, type InputError, type Setup, type SetupDocument } from '../records/index.ts';

/** A setup that was judged before. */
export interface Judged {
  readonly setup: Setup;
  readonly answer: Answer;
}

/** A judged setup, or everything that is wrong with its document. */
export type JudgedReading =
  ({ readonly ok: true } & Judged) | { readonly ok: false; readonly errors: readonly InputError[] };

/** Takes what was judged before, or reads and judges a document with all that can be told. */
export function judgedFrom(subject: SetupDocument | Judged): JudgedReading {
  if (isJudged(subject)) return { ok: true, ...subject };
  const reading = readSetup(subject);
  if (!reading.ok) return reading;
  const assessment = assess(subject);
  return assessment.ok ? { ok: true, setup: reading.setup, answer: assessment.answer } : assessment;
}

function isJudged(subject: SetupDocument | Judged): subject is Judged {
  return 'answer' in subject && 'setup' in subject;
}
