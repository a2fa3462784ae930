import { readSetup, withEdits, type Setup, type SetupDocument } from '../../records/index.ts';
import { standingAlone, standingsOf, type CheckId, type Standing } from '../findings/index.ts';
import { sharesField, type Candidate } from './candidate.ts';
import { prepareSetup, type Scope, type SetupQuestion } from './judgeSetup.ts';
import { canReach } from './reach.ts';

/** A setup with sets of candidates applied, each judged once. */
export interface JudgedSets {
  /** How every check of a scope stands, in which only what reaches it is applied; null where that can’t be applied together. */
  readonly all: (set: readonly Candidate[], scope: Scope) => readonly Standing[] | null;
  /** One check of a scope by itself; null where the scope has no such check, or the set can’t be applied together. */
  readonly alone: (set: readonly Candidate[], scope: Scope, id: CheckId) => Standing | null;
  /** Setups judged so far, wholly or in part. */
  readonly spent: () => number;
}

/**
 * Opens a setup to be judged with candidates applied.
 *
 * @param document the setup as written [JSON]
 * @returns what they come to [record]
 */
export function openJudgedSets(document: SetupDocument): JudgedSets {
  const prepared = openPrepared(document);
  const whole = new Map<string, readonly Standing[] | null>();
  const single = new Map<string, Standing | null>();
  return {
    all: (set, scope) => {
      const { key, question } = prepared.of(set, scope);
      return once(whole, key, question, standingsOf);
    },
    alone: (set, scope, id) => {
      const { key, question } = prepared.of(set, scope);
      return once(single, `${key} ${id}`, question, (asked) => standingAlone(asked, id));
    },
    spent: prepared.spent,
  };
}

/** What was judged before, or what comes of a question now. */
function once<T>(
  judged: Map<string, T | null>,
  key: string,
  question: () => SetupQuestion | null,
  judge: (asked: SetupQuestion) => T | null,
): T | null {
  const known = judged.get(key);
  if (known !== undefined) return known;
  const asked = question();
  const made = asked === null ? null : judge(asked);
  judged.set(key, made);
  return made;
}

/** Setups ready to be judged. */
interface Prepared {
  /** The name of a setup with what reaches a scope applied, and its question; null where it can’t be applied. */
  readonly of: (set: readonly Candidate[], scope: Scope) => { key: string; question: () => SetupQuestion | null };
  readonly spent: () => number;
}

/** Keeps the setup that was prepared last: it is mostly the one that is asked of next. */
function openPrepared(document: SetupDocument): Prepared {
  const numbers = new Map<Candidate, number>();
  const seen = new Set<string>();
  let last: { readonly key: string; readonly question: SetupQuestion | null } | null = null;
  const numberOf = (candidate: Candidate): number => {
    const number = numbers.get(candidate) ?? numbers.size;
    numbers.set(candidate, number);
    return number;
  };
  return {
    of: (set, scope) => {
      const that = scope === 'everything' ? set : set.filter((candidate) => canReach(candidate, scope));
      const order = that.map(numberOf).sort((a, b) => a - b);
      const key = `${scope} ${order.join(' ')}`;
      const question = (): SetupQuestion | null => {
        if (last?.key === key) return last.question;
        seen.add(key);
        const setup = setupWith(document, that);
        last = { key, question: setup === null ? null : prepareSetup(setup, scope) };
        return last.question;
      };
      return { key, question };
    },
    spent: () => seen.size,
  };
}

function setupWith(document: SetupDocument, candidates: readonly Candidate[]): Setup | null {
  const isTwice = candidates.some((one, i) => candidates.slice(i + 1).some((other) => sharesField(one, other)));
  const edits = candidates.flatMap((candidate) => candidate.edits);
  const reading = isTwice ? null : readSetup(withEdits(document, edits));
  return reading?.ok === true ? reading.setup : null;
}
