import type { CheckId } from '../findings/index.ts';
import { sharesField, type Candidate } from './candidate.ts';
import type { Demand, Left, Trials } from './trials.ts';

/** Candidates taken together at most, and setups judged at most, for all failures and for one: a shelf is short and a set is small. */
const largestSet = 5;
const mostTrials = 300;
const mostTrialsForOne = 40;

/** The smallest set that leaves no failure, or null where there is none; `searched` says whether every set was ruled out. */
export interface SmallestSet {
  readonly set: readonly Candidate[] | null;
  readonly searched: boolean;
}

/** A search: what is left with some candidates, what there is to add, and how far to go. */
interface Search {
  readonly leftWith: (set: readonly Candidate[]) => readonly Left[] | null;
  readonly candidates: readonly Candidate[];
  readonly isSpent: () => boolean;
}

/**
 * Seeks the smallest set of candidates after which everything that failed holds and nothing is worse: sets of one, of two and
 * so on. Whatever cures a check that some candidates leave unsatisfied has one more candidate that can reach it, so only
 * those are added: no smaller set is passed over. A failure that nothing cures even by itself ends the search at once.
 *
 * @param trials setups with candidates applied [record]
 * @param candidates the list, what is better liked first [list]
 * @param failing the checks to be cured [ids]
 * @param demand whether everything has to hold, or only may [name]
 * @returns the set, or null, and whether all were tried [record]
 */
export function smallestSet(
  trials: Trials,
  candidates: readonly Candidate[],
  failing: readonly CheckId[],
  demand: Demand,
): SmallestSet {
  const within = (most: number): (() => boolean) => {
    const start = trials.spent();
    return () => trials.spent() - start >= most;
  };
  for (const id of failing) {
    const leftOf = trials.leftOf(id);
    const alone = seek({ leftWith: (set) => leftOf(set, demand), candidates, isSpent: within(mostTrialsForOne) });
    if (alone.set === null && alone.searched) return alone;
  }
  return seek({ leftWith: (set) => trials.leftWith(set, demand), candidates, isSpent: within(mostTrials) });
}

function seek(search: Search): SmallestSet {
  for (let size = 1; size <= largestSet; size += 1) {
    const state: Growth = { size, seen: new Set(), wasCut: false };
    const set = grown(search, [], state);
    if (set !== null) return { set, searched: true };
    if (search.isSpent()) return { set: null, searched: false };
    if (!state.wasCut) return { set: null, searched: true };
  }
  return { set: null, searched: false };
}

/** One pass over all sets up to a size; `wasCut` once a larger set could go on where this pass had to stop. */
interface Growth {
  readonly size: number;
  readonly seen: Set<string>;
  wasCut: boolean;
}

function grown(search: Search, set: readonly Candidate[], state: Growth): readonly Candidate[] | null {
  if (search.isSpent()) return null;
  const left = search.leftWith(set);
  if (left === null) return null;
  if (left.length === 0) return set;
  const helping = fewestHelp(left, search.candidates, set);
  if (set.length === state.size) {
    state.wasCut ||= helping.length > 0;
    return null;
  }
  for (const next of helping) {
    const more = [...set, next];
    const key = keyOf(more, search.candidates);
    if (state.seen.has(key)) continue;
    state.seen.add(key);
    const found = grown(search, more, state);
    if (found !== null) return found;
  }
  return null;
}

function keyOf(set: readonly Candidate[], candidates: readonly Candidate[]): string {
  return set
    .map((one) => candidates.indexOf(one))
    .sort((a, b) => a - b)
    .join(' ');
}

/** What may help the check that fewest can help. */
function fewestHelp(
  left: readonly Left[],
  candidates: readonly Candidate[],
  set: readonly Candidate[],
): readonly Candidate[] {
  const free = candidates.filter((candidate) => !set.some((one) => one === candidate || sharesField(one, candidate)));
  return left
    .map(({ mayHelp }) => free.filter(mayHelp))
    .reduce((fewest, some) => (some.length < fewest.length ? some : fewest));
}
