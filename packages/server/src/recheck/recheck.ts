import { errorLine } from '@hitchwright/core/records';
import {
  Conflict,
  NotFound,
  Refused,
  type AnswerToCheck,
  type By,
  type CheckResult,
  type SavedAnswer,
  type Store,
  type YardSetup,
} from '@hitchwright/store';
import type { Assessors } from '../assessing/assessors.ts';
import { resultOf } from '../assessing/saving.ts';
import { isNarrowed } from './narrowed.ts';

/** How far the checking again is. */
interface RecheckState {
  readonly state: 'idle' | 'running';
  readonly checked: number;
  /** Of them those that closer figures could not change. */
  readonly ruledOut: number;
  /** Of them those whose verdict or reason came out otherwise. */
  readonly changed: number;
  readonly failed: number;
  /** How many are known to wait. */
  readonly left: number;
  readonly startedAt: string | null;
  readonly endedAt: string | null;
}

/** Checks saved answers again where what they rest on has become another. */
export interface Recheck {
  state(): RecheckState;
  /** Something was changed: looks soon. */
  wake(): void;
  /** Stops after the answer that is being checked. */
  close(): Promise<void>;
}

const by: By = { who: 'checked again' };
/** Answers looked at in one go. */
const atOnce = 200;
/** A few changes in a row are looked at together [ms]. */
const shortly = 50;
/** An answer that somebody else keeps changing is left for the next time. */
const mostTries = 3;

/** What checking again takes. */
export interface Rechecking {
  readonly store: Store;
  readonly assessors: Assessors;
  readonly clock: () => string;
}

const idle = { state: 'idle', checked: 0, ruledOut: 0, changed: 0, failed: 0, left: 0 } as const;

/** Checks answers again one after the other, in a thread of its own, whenever something was changed. */
export function openRecheck(desk: Rechecking): Recheck {
  let state: RecheckState = { ...idle, startedAt: null, endedAt: null };
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<void> | null = null;
  let [isAsked, isClosed] = [false, false];

  const note = (more: Partial<RecheckState>): void => {
    state = { ...state, ...more };
  };
  const run = async (): Promise<void> => {
    note({ ...idle, state: 'running', startedAt: desk.clock(), endedAt: null });
    try {
      do {
        isAsked = false;
        for await (const { outcome, left } of rounds(desk, () => isClosed))
          note({ checked: state.checked + 1, left, ...(outcome === 'same' ? {} : { [outcome]: state[outcome] + 1 }) });
      } while (isAsked && !isClosed);
    } catch (problem) {
      console.error('Checking answers again failed:', problem);
      note({ failed: state.failed + 1 });
    }
    note({ state: 'idle', endedAt: desk.clock() });
    running = null;
  };
  const begin = (): void => {
    timer = undefined;
    if (!isClosed) running ??= run();
  };
  return {
    state: () => (timer === undefined ? state : { ...state, state: 'running' }),
    wake() {
      isAsked = true;
      if (running === null && !isClosed) timer ??= setTimeout(begin, shortly);
    },
    async close() {
      isClosed = true;
      clearTimeout(timer);
      await running;
    },
  };
}

type Outcome = 'same' | 'ruledOut' | 'changed' | 'failed';

/** One answer after another, until none is left that was not tried. */
async function* rounds(
  desk: Rechecking,
  isOver: () => boolean,
): AsyncGenerator<{ readonly outcome: Outcome; readonly left: number }> {
  const tries = new Map<string, number>();
  for (let more = true; more;) {
    const found = await desk.store.answers.toCheckAgain({ limit: atOnce });
    const toTry = found.answers.filter(({ answer }) => (tries.get(answer.id) ?? 0) < mostTries);
    for (const [i, one] of toTry.entries()) {
      if (isOver()) return;
      tries.set(one.answer.id, (tries.get(one.answer.id) ?? 0) + 1);
      yield { outcome: await again(desk, one), left: toTry.length - i - 1 };
    }
    more = toTry.length > 0 || (found.more && found.answers.length === 0);
  }
}

async function again({ store, assessors }: Rechecking, { answer }: AnswerToCheck): Promise<Outcome> {
  try {
    const before = await store.answers.get(answer.id);
    const { result, isRuledOut } = await resultNow(store, assessors, before);
    await store.answers.writeCheck(by, answer.id, before.revision, result);
    if (isRuledOut) return 'ruledOut';
    return result.verdict === before.verdict && result.reason === before.reason ? 'same' : 'changed';
  } catch (problem) {
    if (problem instanceof Conflict || problem instanceof NotFound) return 'failed';
    throw problem;
  }
}

interface ResultNow {
  readonly result: CheckResult;
  readonly isRuledOut: boolean;
}

async function resultNow(store: Store, assessors: Assessors, before: SavedAnswer): Promise<ResultNow> {
  const composed = await composedNow(store, before);
  if (!('setup' in composed)) return { result: composed, isRuledOut: false };
  const last = before.checks.at(-1);
  const { setup } = (last?.thresholds ?? {}) as { readonly setup?: unknown };
  if (last !== undefined && last.verdict === 'works' && isNarrowed(setup, composed.setup)) {
    const { verdict, reason, summary } = last;
    return { result: { verdict, reason, summary, thresholds: { setup }, uses: composed.uses }, isRuledOut: true };
  }
  const question = { kind: 'keep', units: before.refs.units ?? null } as const;
  const worked = await assessors.askInBackground(JSON.stringify(composed.setup), question);
  if (worked.ok) return { result: resultOf(composed, worked), isRuledOut: false };
  const [first] = worked.errors;
  const reason = first === undefined ? '' : errorLine(first);
  return { result: unreadable(reason, composed.uses), isRuledOut: false };
}

/** The setup of an answer as it is today; an answer whose records are gone can’t be asked any more and says so. */
async function composedNow(store: Store, { refs }: SavedAnswer): Promise<YardSetup | CheckResult> {
  try {
    return await store.setupFor(refs);
  } catch (problem) {
    if (problem instanceof NotFound) return unreadable('A record that it rests on is gone.', []);
    if (problem instanceof Refused) return unreadable('A record that it rests on has become another kind.', []);
    throw problem;
  }
}

function unreadable(reason: string, uses: CheckResult['uses']): CheckResult {
  return { verdict: 'notReadable', reason, summary: null, uses };
}
