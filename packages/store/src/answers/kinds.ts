import type { SetupRefs } from '../setup/refs.ts';
import type { Use } from '../setup/uses.ts';
import type { PageWanted } from '../cursor.ts';

/** What one check of a question came to. */
export interface CheckResult {
  readonly verdict: string;
  /** The first reason, in a sentence. */
  readonly reason: string;
  /** The answer [JSON]. */
  readonly summary: unknown;
  /** Where it would turn, by field [JSON]. */
  readonly thresholds?: unknown;
  /** Edition of the rules that it was checked by. */
  readonly rules?: string;
  /** What it rests on, as `setupFor` told. */
  readonly uses: readonly Use[];
}

/** An answer that is to be saved. */
export interface AnswerDraft extends CheckResult {
  readonly title: string;
  readonly customer?: string;
  readonly refs: SetupRefs;
  readonly sample?: boolean;
}

/** A saved answer without what its checks found in full. */
export interface AnswerNote {
  readonly id: string;
  readonly title: string;
  readonly customer: { readonly id: string; readonly name: string } | null;
  readonly refs: SetupRefs;
  readonly verdict: string;
  readonly reason: string;
  readonly askedAt: string;
  readonly askedBy: string;
  readonly checkedAt: string;
  /** When a check came out otherwise than the one before, until somebody has dealt with it. */
  readonly changedAt: string | null;
  readonly sample: boolean;
  readonly revision: number;
}

/** One check of a saved answer. */
export interface AnswerCheck extends Omit<CheckResult, 'uses'> {
  /** Revision of the answer that it made. */
  readonly revision: number;
  readonly checkedAt: string;
  readonly checkedBy: string;
}

/** A saved answer with every check of it, the first one first. */
export interface SavedAnswer extends AnswerNote {
  readonly checks: readonly AnswerCheck[];
}

/** Which answers are wanted; everything that is left out is no matter. */
export interface AnswersWanted extends PageWanted {
  readonly customer?: string;
  readonly verdict?: string;
  /** Only those that a check changed and nobody has dealt with yet. */
  readonly changed?: boolean;
  /** Words that title, reason or customer must have. */
  readonly search?: string;
  /** Only those that rest on this record, or on this field of it. */
  readonly recordId?: string;
  readonly field?: string;
}

/** A saved answer that rests on what has become another since. */
export interface AnswerToCheck {
  readonly answer: AnswerNote;
  /** What became another; empty where a record that it rests on is no longer there. */
  readonly changed: readonly { readonly recordId: string; readonly field: string }[];
}
