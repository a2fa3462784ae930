import { fieldRules } from '../../records/index.ts';
import type { NamedCheck, Question } from '../findings/index.ts';
import { exactly, middle, type Interval } from '../geometry/index.ts';
import {
  bestSetting,
  decide,
  marginOf,
  nearlyZero,
  problemOf,
  reader,
  withRange,
  type Box,
  type Problem,
} from '../proof/index.ts';
import { endStep, type MovablePath, type PinTarget } from './plan.ts';

/** Where the pins are put for a trial; what is left out stands where it is. */
export type Places = Readonly<Partial<Record<MovablePath, Interval>>>;

/** Checks that pins are moved for, and what can vary in them. */
export interface Search {
  readonly question: Question;
  readonly checks: readonly NamedCheck[];
}

/** A range that holds, and the checks that end it; an end is null where nothing up to what the field accepts does. */
export type Range = Pick<PinTarget, 'low' | 'high' | 'endsBy'>;

/** Does a check read one of some measures? */
export function readsAny({ ledger, field }: Question, check: NamedCheck, paths: readonly string[]): boolean {
  return [...field.reads(check)].some((index) => paths.includes(ledger.entries[index]?.path ?? ''));
}

/** Do all the checks hold, proven, with the pins anywhere in the places given? */
export function holdsAt(search: Search, places: Places): boolean {
  return search.checks.length === 0 || decide(problemAt(search, places)).outcome === 'passes';
}

function problemAt({ question, checks }: Search, places: Places): Problem {
  return problemOf(checks, { ...question.field, box: boxAt(question, places) });
}

function boxAt({ ledger, field }: Question, places: Places): Box {
  return Object.entries(places).reduce<Box>((box, [path, range]) => {
    const entry = ledger.entries.find((one) => one.path === path);
    return entry === undefined ? box : withRange(box, entry.index, range);
  }, field.box);
}

/** The least scaled margin that is certain at some setting. */
function leastMargin(search: Search, places: Places): number {
  const problem = problemAt(search, places);
  return bestSetting(problem, problem.box).value;
}

/**
 * The widest range of one measure in which all the checks hold, the others where they are given. The best place is sought by
 * margins, which fall off to both sides of it; its ends are bisected, each look a proof, and rounded inward.
 */
export function widestRange(search: Search, path: MovablePath, others: Places): Range | null {
  const at = (value: number): Places => ({ ...others, [path]: exactly(value) });
  const holds = (value: number): boolean => holdsAt(search, at(value));
  const { low, high } = accepted(path);
  const start = bestPlace((value) => leastMargin(search, at(value)), { low, high });
  if (!holds(start)) return null;
  const ends = {
    low: holds(low) ? null : edge(holds, start, low),
    high: holds(high) ? null : edge(holds, start, high),
  };
  if ((ends.low ?? low) >= (ends.high ?? high)) return null;
  return {
    ...ends,
    endsBy: {
      low: ends.low === null ? null : worstAt(search, at(ends.low - endStep)),
      high: ends.high === null ? null : worstAt(search, at(ends.high + endStep)),
    },
  };
}

/** What the field of a measure accepts [mm]. */
export function accepted(path: MovablePath): Interval {
  const { min, max } = fieldRules.get(path) as { readonly min: number; readonly max: number };
  return { low: min, high: max };
}

const looks = 60;

/** The place with the most margin, for margins that rise to it from both sides. */
function bestPlace(margin: (value: number) => number, { low, high }: Interval): number {
  let [left, right] = [low, high];
  for (let i = 0; i < looks && right - left > endStep / 10; i += 1) {
    const [a, b] = [left + (right - left) / 3, right - (right - left) / 3];
    if (margin(a) < margin(b)) left = a;
    else right = b;
  }
  return middle({ low: left, high: right });
}

/** The last step toward an end that does not hold which still does. */
function edge(holds: (value: number) => boolean, good: number, bad: number): number {
  let [inside, outside] = [good, bad];
  while (Math.abs(outside - inside) > endStep / 100) {
    const cut = (inside + outside) / 2;
    if (holds(cut)) inside = cut;
    else outside = cut;
  }
  const inward = Math.sign(good - bad) * endStep;
  const nearest = Number((Math.round(inside / endStep) * endStep).toFixed(1));
  return holds(nearest) ? nearest : Number((nearest + inward).toFixed(1));
}

/** The least value from where it is upward at which everything holds; null where none does. */
export function leastValue(search: Search, path: MovablePath, from: number, others: Places): Range | null {
  const at = (value: number): Places => ({ ...others, [path]: exactly(value) });
  const holds = (value: number): boolean => holdsAt(search, at(value));
  const { low: least, high: most } = accepted(path);
  if (!holds(most)) return null;
  const low = edge(holds, most, Math.max(least, from));
  return { low, high: null, endsBy: { low: worstAt(search, at(low - endStep)), high: null } };
}

/** The check that has least to spare, at the best setting. */
function worstAt(search: Search, places: Places): NamedCheck['id'] | null {
  const problem = problemAt(search, places);
  const at = reader(bestSetting(problem, problem.box).box);
  const margins = search.checks.map((check) => ({ id: check.id, left: marginOf(check.measure(at)).low / check.scale }));
  const worst = margins.reduce((a, b) => (b.left < a.left ? b : a));
  return worst.left < -nearlyZero ? worst.id : null;
}
