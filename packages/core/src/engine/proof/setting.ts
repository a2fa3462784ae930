import { middle, width } from '../geometry/index.ts';
import { nearlyZero } from './check.ts';
import { narrowed } from './narrow.ts';
import {
  atPoint,
  combinations,
  halves,
  leastCertain,
  leastRanked,
  leastTight,
  midpoint,
  rangeOf,
  someFails,
  widest,
  withRange,
  workShare,
  type Box,
  type Problem,
} from './problem.ts';

/** A setting of every adjuster, and the least scaled margin that it makes certain over the box. */
export interface BestSetting {
  readonly box: Box;
  readonly value: number;
}

const gridPoints = 17;
const refinements = 40;
/** How far a search is refined, as a share of a range: less where every look is costly and any setting that works will do. */
const finest = 1e-9;
const finely = 1e-5;
const roughly = 1e-2;
const sacrifice = 1e9;

/**
 * The setting that makes the smallest scaled margin largest over the box: every combination of options, and for what can
 * be set anywhere a grid followed by a shrinking search along each axis. Settings are ranked, checks that are costly to
 * bound by their estimates; the value of the one that is returned is certain. A proof only needs some setting that works,
 * so a missed optimum costs a split, never a wrong answer. The search ends where a value is `enough`.
 */
export function bestSetting(problem: Problem, box: Box, enough = Infinity): BestSetting {
  let best: BestSetting | null = null;
  for (const taken of combinations(problem, box)) {
    const found =
      problem.settings.length === 0 ? certain(problem, taken, enough) : searchSettings(problem, taken, enough);
    if (best === null || found.value > best.value) best = found;
    if (best.value >= enough) return best;
  }
  if (best === null) throw new Error('invariant: a problem has at least one combination');
  return best;
}

function certain(problem: Problem, box: Box, enough: number): BestSetting {
  // Where something is enough only signs count; else settings are held against each other.
  return { box, value: guarded(problem, box, Number.isFinite(enough) ? leastCertain : leastTight, -Infinity) };
}

function ranked(problem: Problem, box: Box, floor: number): BestSetting {
  return { box, value: guarded(problem, box, leastRanked, floor) };
}

/** The least margin; a setting that sacrifices a guarded check counts as worse than any that does not. */
function guarded(problem: Problem, box: Box, least: typeof leastRanked, floor: number): number {
  const guard = problem.guarded === undefined ? 0 : least(problem.guarded, box);
  return guard < -nearlyZero ? guard - sacrifice : least(problem.checks, box, floor);
}

/** A search for the best setting of one combination, and what would be enough of it. */
interface Search {
  readonly problem: Problem;
  readonly box: Box;
  readonly enough: number;
}

function searchSettings(problem: Problem, box: Box, enough: number): BestSetting {
  const middles = atPoint(box, problem.settings, middle);
  if (!Number.isFinite(enough)) return betterOfBoth(problem, bestRanked({ problem, box, enough }, finest).box, middles);
  const start = certain(problem, middles, enough);
  if (start.value >= enough) return start;
  const share = workShare(problem) < 1 ? finely : finest;
  const proven = certain(problem, bestRanked({ problem, box, enough }, share).box, enough);
  return proven.value >= start.value ? proven : start;
}

/** The best-ranked setting, unless the middle is certain of more: no more is certain anywhere than its rank. */
function betterOfBoth(problem: Problem, best: Box, middles: Box): BestSetting {
  const proven = certain(problem, best, Infinity);
  if (proven.value >= ranked(problem, middles, -Infinity).value) return proven;
  const start = certain(problem, middles, Infinity);
  return proven.value >= start.value ? proven : start;
}

/** The setting that ranks best, refined to a share of each range. */
function bestRanked(search: Search, share: number): BestSetting {
  const { problem, box, enough } = search;
  let best = ranked(problem, atPoint(box, problem.settings, middle), -Infinity);
  for (const index of problem.settings) best = searchAxis(search, best, index);
  let reach = 1 / (gridPoints - 1);
  for (let round = 0; round < refinements && reach > share && best.value < enough; round += 1) {
    const before = best.value;
    for (const index of problem.settings) best = stepAxis(search, best, index, reach);
    if (best.value === before) reach /= 2;
  }
  return best;
}

/** The setting that looks best in the middle of a box: by ranks alone, roughly, over every combination. */
export function likelySetting(problem: Problem, box: Box): BestSetting {
  const middles = midpoint(problem, box);
  return combinations(problem, middles)
    .map((taken) => bestRanked({ problem, box: narrowed(problem, taken) ?? taken, enough: Infinity }, roughly))
    .reduce((a, b) => (b.value > a.value ? b : a));
}

function searchAxis({ problem, box }: Search, from: BestSetting, index: number): BestSetting {
  const range = rangeOf(box, index);
  let best = from;
  for (let i = 0; i < gridPoints; i += 1) {
    best = better(problem, best, index, range.low + (width(range) * i) / (gridPoints - 1));
  }
  return best;
}

function stepAxis({ problem, box }: Search, from: BestSetting, index: number, reach: number): BestSetting {
  const range = rangeOf(box, index);
  const here = rangeOf(from.box, index).low;
  const step = reach * width(range);
  const up = better(problem, from, index, Math.min(range.high, here + step));
  return better(problem, up, index, Math.max(range.low, here - step));
}

function better(problem: Problem, best: BestSetting, index: number, value: number): BestSetting {
  const candidate = ranked(problem, withRange(best.box, index, { low: value, high: value }), best.value);
  return candidate.value > best.value ? candidate : best;
}

/** Does some check fail all over the box for every setting? Proven by covering the settings, never by samples. */
export function everySettingFails(problem: Problem, box: Box, work: number): boolean {
  const open = combinations(problem, box)
    .map((taken) => narrowed(problem, taken))
    .filter((left) => left !== null);
  for (let spent = 0; spent < work; spent += 1) {
    const piece = open.pop();
    if (piece === undefined) return true;
    if (!mayGoOn(problem)) return false;
    if (someFails(problem.checks, piece)) continue;
    const index = widest(problem.settings, piece, problem.box);
    if (index === null) return false;
    open.push(...halves(piece, index));
  }
  return false;
}

/** Takes one piece of the work that several costly problems share; false where none is left. */
function mayGoOn(problem: Problem): boolean {
  if (problem.work === undefined || workShare(problem) === 1) return true;
  problem.work.left -= 1;
  return problem.work.left >= 0;
}
