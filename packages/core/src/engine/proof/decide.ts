import { marginOf, nearlyZero, rankOf, type Check } from './check.ts';
import { middle, width } from '../geometry/index.ts';
import {
  atPoint,
  halves,
  leastCertain,
  leastRanked,
  midpoint,
  rangeOf,
  reader,
  widest,
  withRange,
  workShare,
  type Box,
  type Problem,
} from './problem.ts';
import { bestSetting, everySettingFails, likelySetting } from './setting.ts';

/** What is proven of a problem, with one truth for each side of an open question (every uncertain variable at a point). */
export type Decision =
  | { readonly outcome: 'passes' | 'fails' }
  | { readonly outcome: 'undecided'; readonly passing: Box; readonly failing: Box }
  | { readonly outcome: 'unresolved'; readonly passing: Box | null; readonly failing: Box | null };

/** Boxes that are split before the question is left unresolved. */
const boxLimit = 600;
const coverLimit = 160;
const pointCoverLimit = 4000;
const costlyCover = 16;
const costlyPointCover = 64;
const costlyBoxes = 40;

/**
 * Decides a problem by proof: every box of the uncertain variables gets one fixed setting that is shown to hold all over
 * it, or is shown to fail under every setting; what is neither is halved (decision 0004).
 *
 * @param problem the checks, the box and the adjusters [check units]
 * @param failing a truth at which they are known to fail, or null [box]
 * @returns passes, fails, undecided with both truths, or unresolved [outcome]
 */
export function decide(problem: Problem, failing: Box | null = null): Decision {
  const outcome = settle(problem, problem.box);
  if (outcome !== null) return { outcome };
  const truths: Truths = { passing: null, failing };
  for (const corner of corners(problem)) {
    lookAt(problem, corner, truths);
    if (isOpenQuestion(truths)) break;
  }
  if (truths.passing === null) lookAt(problem, mostHopeful(problem), truths);
  return search(problem, truths);
}

/** The truth at which the checks look best together, as if what is uncertain could be set as well. */
function mostHopeful(problem: Problem): Box {
  const free = { ...problem, settings: [...problem.settings, ...problem.uncertain] };
  const { box } = bestSetting(free, problem.box, -nearlyZero);
  return problem.box.map((range, index) => (problem.uncertain.includes(index) ? rangeOf(box, index) : range));
}

/** One truth found for each side so far. */
interface Truths {
  passing: Box | null;
  failing: Box | null;
}

function search(problem: Problem, truths: Truths): Decision {
  const open: Box[] = splitOf(problem, problem.box);
  let unsettled = open.length === 0;
  const most = workShare(problem) < 1 ? costlyBoxes : boxLimit;
  for (let spent = 0; open.length > 0 && spent < most && !isOpenQuestion(truths); spent += 1) {
    const box = open.pop() as Box;
    if (settleInto(problem, box, truths)) continue;
    const parts = splitOf(problem, box);
    unsettled ||= parts.length === 0;
    open.push(...parts);
  }
  return concluded(truths, unsettled || open.length > 0);
}

function concluded({ passing, failing }: Truths, unsettled: boolean): Decision {
  if (passing !== null && failing !== null) return { outcome: 'undecided', passing, failing };
  if (unsettled) return { outcome: 'unresolved', passing, failing };
  return { outcome: failing === null ? 'passes' : 'fails' };
}

function isOpenQuestion(truths: Truths): boolean {
  return truths.passing !== null && truths.failing !== null;
}

/** Proves a box one way or the other and notes a truth of it; false where it has to be halved. */
function settleInto(problem: Problem, box: Box, truths: Truths): boolean {
  const proven = settle(problem, box);
  if (proven === 'passes') truths.passing ??= midpoint(problem, box);
  else if (proven === 'fails') truths.failing ??= midpoint(problem, box);
  else lookAt(problem, midpoint(problem, box), truths);
  return proven !== null;
}

/** The halves along the input that tells most about the check that is worst off; none where every input is a point. */
function splitOf(problem: Problem, box: Box): Box[] {
  const index = mostTelling(problem, box) ?? widest(problem.uncertain, box, problem.box);
  return index === null ? [] : [...halves(box, index)];
}

function mostTelling(problem: Problem, box: Box): number | null {
  if (problem.uncertain.length < 2) return null;
  if (workShare(problem) < 1) return mostMoving(problem, box);
  const at = bestSetting(problem, box).box;
  const margins = problem.checks.map((check) => ({ check, margin: marginOf(check.measure(reader(at))) }));
  const worst = margins.reduce((a, b) => (b.margin.low / b.check.scale < a.margin.low / a.check.scale ? b : a));
  let telling: number | null = null;
  let most = 1e-9;
  for (const index of problem.uncertain) {
    const half = middle(rangeOf(at, index));
    const narrowed = marginOf(worst.check.measure(reader(withRange(at, index, { low: half, high: half }))));
    const gain = width(worst.margin) - width(narrowed);
    if (gain > most) [telling, most] = [index, gain];
  }
  return telling;
}

/** The input that moves the checks most from end to end, by rank: bounding each in turn would cost more than it saves. */
function mostMoving(problem: Problem, box: Box): number | null {
  const centre = likelySetting(problem, box).box;
  const at = (index: number, value: number): number =>
    leastRanked(problem.checks, withRange(centre, index, { low: value, high: value }));
  const moved = problem.uncertain.map((index) => {
    const range = rangeOf(box, index);
    return { index, by: width(range) === 0 ? 0 : Math.abs(at(index, range.high) - at(index, range.low)) };
  });
  const most = moved.reduce((a, b) => (b.by > a.by ? b : a));
  return most.by > 1e-9 ? most.index : null;
}

function lookAt(problem: Problem, point: Box, truths: Truths): void {
  if (truths.passing === null && works(problem, point)) truths.passing = point;
  else if (
    truths.failing === null &&
    everySettingFails(problem, point, workShare(problem) < 1 ? costlyPointCover : pointCoverLimit)
  )
    truths.failing = point;
}

function settle(problem: Problem, box: Box): 'passes' | 'fails' | null {
  if (workShare(problem) < 1) return settleCostly(problem, box);
  if (works(problem, box)) return 'passes';
  return everySettingFails(problem, box, coverLimit) ? 'fails' : null;
}

/** Where bounds are costly, the middle of the box says which of the two is worth trying, and with which setting. */
function settleCostly(problem: Problem, box: Box): 'passes' | 'fails' | null {
  const likely = likelySetting(problem, box);
  if (likely.value < -nearlyZero) return everySettingFails(problem, box, costlyCover) ? 'fails' : null;
  // What ranks best may be the one setting that is too near where the linkage folds to be proven.
  const middling = problem.settings.reduce((taken, index) => setMiddle(taken, index, box), likely.box);
  return holdsAt(problem, box, likely.box) || holdsAt(problem, box, middling) ? 'passes' : null;
}

function setMiddle(taken: Box, index: number, box: Box): Box {
  const at = middle(rangeOf(box, index));
  return withRange(taken, index, { low: at, high: at });
}

/** Does one setting hold all over a box? */
function holdsAt(problem: Problem, box: Box, at: Box): boolean {
  const indices = [...problem.settings, ...problem.choices.map(({ index }) => index)];
  const set = indices.reduce((taken, index) => withRange(taken, index, rangeOf(at, index)), box);
  return leastCertain(problem.checks, set) >= -nearlyZero;
}

function works(problem: Problem, box: Box): boolean {
  return bestSetting(problem, box, -nearlyZero).value >= -nearlyZero;
}

/** The two corners of the box where each check looks best and worst, judged one variable at a time. */
function* corners(problem: Problem): Generator<Box> {
  const centre = bestSetting(problem, midpoint(problem, problem.box)).box;
  for (const check of problem.checks) {
    yield corner(problem, check, centre, 1);
    yield corner(problem, check, centre, -1);
  }
}

function corner(problem: Problem, check: Check, box: Box, sign: 1 | -1): Box {
  const centre = reader(box);
  const pick = (index: number): number => {
    const range = rangeOf(problem.box, index);
    const at = (value: number) => rankOf(check, (i) => (i === index ? { low: value, high: value } : centre(i)));
    return sign * (at(range.high) - at(range.low)) >= 0 ? range.high : range.low;
  };
  return atPoint(problem.box, problem.uncertain, (_, index) => pick(index));
}
