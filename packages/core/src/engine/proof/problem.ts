import { middle, width, type Interval } from '../geometry/index.ts';
import { marginOf, nearlyZero, rankOf, withCare, type Care, type Check, type Reading } from './check.ts';

/** The ranges of every variable and choice, by index. A choice holds the number of the option taken. */
export type Box = readonly Interval[];

/** A choice among `count` options, such as holes. */
export interface ChoiceRange {
  readonly index: number;
  readonly count: number;
}

/** Checks that must hold together, over everything uncertain, by whatever can be set. */
export interface Problem {
  readonly checks: readonly Check[];
  readonly box: Box;
  /** Indices of what is uncertain and has a width. */
  readonly uncertain: readonly number[];
  /** Indices of what can be set anywhere in its range. */
  readonly settings: readonly number[];
  readonly choices: readonly ChoiceRange[];
  /** Checks that a setting must not sacrifice for the sake of others. */
  readonly guarded?: readonly Check[];
  /** Work that is left for several problems together; without it each has its own limits only. */
  readonly work?: Work;
}

/** Pieces of costly settings that may still be looked at. */
export interface Work {
  left: number;
}

/** The box with one index replaced. */
export function withRange(box: Box, index: number, range: Interval): Box {
  const next = box.slice();
  next[index] = range;
  return next;
}

/** The box with every listed index at one point. */
export function atPoint(box: Box, indices: readonly number[], pick: (range: Interval, index: number) => number): Box {
  const next = box.slice();
  for (const index of indices) {
    const range = rangeOf(box, index);
    const value = pick(range, index);
    next[index] = { low: value, high: value };
  }
  return next;
}

/** The box with its uncertain variables at their midpoints. */
export function midpoint(problem: Problem, box: Box): Box {
  return atPoint(box, problem.uncertain, middle);
}

/** Reads a box. */
export function reader(box: Box): Reading {
  return (index) => rangeOf(box, index);
}

/** Reads a box for bounds of less care. */
function carefulReader(box: Box, care: Care): Reading {
  return withCare(reader(box), care);
}

/** The range at one index. */
export function rangeOf(box: Box, index: number): Interval {
  const range = box[index];
  if (range === undefined) throw new Error(`invariant: no variable ${index}`);
  return range;
}

/** Every combination of options, each as the box with the choices taken. */
export function combinations(problem: Problem, box: Box): Box[] {
  return problem.choices.reduce<Box[]>(
    (boxes, { index, count }) =>
      boxes.flatMap((taken) =>
        Array.from({ length: count }, (_, option) => withRange(taken, index, { low: option, high: option })),
      ),
    [box],
  );
}

/** The least scaled margin that is certain over the box, only as tight as it takes to show that all checks pass. */
export function leastCertain(checks: readonly Check[], box: Box): number {
  const at = carefulReader(box, 'passes');
  let least = Infinity;
  for (const check of checks) {
    if (isFarFrom(check, at, -1)) return -Infinity;
    least = Math.min(least, marginOf(check.measure(at)).low / check.scale);
  }
  return least;
}

/** Is a check at the middle of a box so far on one side of zero that it is not shown to lie on the other all over it? */
function isFarFrom(check: Check, at: Reading, side: 1 | -1): boolean {
  return check.estimate !== undefined && side * check.estimate(at) > check.scale;
}

/** The least that is certain, as tight as can be where first bounds leave its sign open: for settings to be held against each other. */
export function leastTight(checks: readonly Check[], box: Box): number {
  const [rough, tight] = [carefulReader(box, 'rough'), reader(box)];
  let least = Infinity;
  for (const check of checks) {
    const first = marginOf(check.measure(rough));
    const isTold = first.low >= -nearlyZero || first.high < -nearlyZero || check.estimate === undefined;
    least = Math.min(least, (isTold ? first : marginOf(check.measure(tight))).low / check.scale);
  }
  return least;
}

/** The check of a group that last kept its rank down: it is asked first, since it mostly does so again. */
const lastLimiting = new WeakMap<readonly Check[], number>();

/** The least scaled margin by rank; stops early at `floor` or under it. */
export function leastRanked(checks: readonly Check[], box: Box, floor = -Infinity): number {
  const at = reader(box);
  const first = lastLimiting.get(checks) ?? 0;
  let least = Infinity;
  for (let i = 0; i < checks.length; i += 1) {
    const place = (first + i) % checks.length;
    const check = checks[place] as Check;
    least = Math.min(least, rankOf(check, at) / check.scale);
    if (least > floor) continue;
    lastLimiting.set(checks, place);
    return least;
  }
  return least;
}

/** How much of the work limits a problem may use: checks that are computed through the lift cost more. */
export function workShare(problem: Problem): number {
  return problem.checks.some((check) => check.estimate !== undefined) ? 0.1 : 1;
}

/** Does some check fail all over the box, whatever the setting in it? */
export function someFails(checks: readonly Check[], box: Box): boolean {
  const at = carefulReader(box, 'fails');
  return checks.some((check) => !isFarFrom(check, at, 1) && marginOf(check.measure(at)).high < -nearlyZero);
}

/** The index whose range is widest against its first width, or null where every one is a point. */
export function widest(indices: readonly number[], box: Box, first: Box): number | null {
  let index: number | null = null;
  let most = 1e-12;
  for (const candidate of indices) {
    const whole = width(rangeOf(first, candidate));
    const share = whole === 0 ? 0 : width(rangeOf(box, candidate)) / whole;
    if (share > most) [index, most] = [candidate, share];
  }
  return index;
}

/** The two halves of a box along one index. */
export function halves(box: Box, index: number): readonly [Box, Box] {
  const range = rangeOf(box, index);
  const cut = middle(range);
  return [withRange(box, index, { low: range.low, high: cut }), withRange(box, index, { low: cut, high: range.high })];
}
