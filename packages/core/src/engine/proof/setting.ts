import { middle, width } from '../geometry/index.ts';
import { nearlyZero } from './check.ts';
import {
  atPoint,
  combinations,
  halves,
  leastCertain,
  leastPossible,
  rangeOf,
  widest,
  withRange,
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
const sacrifice = 1e9;

/**
 * The setting that makes the smallest scaled margin largest over the box: every combination of options, and for what can
 * be set anywhere a grid followed by a shrinking search along each axis. A proof only needs some setting that works, so a
 * missed optimum costs a split, never a wrong answer. The search ends where a value is `enough`.
 */
export function bestSetting(problem: Problem, box: Box, enough = Infinity): BestSetting {
  let best: BestSetting | null = null;
  for (const taken of combinations(problem, box)) {
    const found = problem.settings.length === 0 ? weigh(problem, taken) : searchSettings(problem, taken, enough);
    if (best === null || found.value > best.value) best = found;
    if (best.value >= enough) return best;
  }
  if (best === null) throw new Error('invariant: a problem has at least one combination');
  return best;
}

function weigh(problem: Problem, box: Box): BestSetting {
  return { box, value: valueOf(problem, box, -Infinity) };
}

/** The least certain margin; a setting that sacrifices a guarded check counts as worse than any that does not. */
function valueOf(problem: Problem, box: Box, floor: number): number {
  const guard = problem.guarded === undefined ? 0 : leastCertain(problem.guarded, box);
  return guard < -nearlyZero ? guard - sacrifice : leastCertain(problem.checks, box, floor);
}

function searchSettings(problem: Problem, box: Box, enough: number): BestSetting {
  let best = weigh(problem, atPoint(box, problem.settings, middle));
  if (best.value >= enough) return best;
  for (const index of problem.settings) best = searchAxis(problem, box, best, index, gridPoints);
  let reach = 1 / (gridPoints - 1);
  for (let round = 0; round < refinements && reach > 1e-9 && best.value < enough; round += 1) {
    const before = best.value;
    for (const index of problem.settings) best = stepAxis(problem, box, best, index, reach);
    if (best.value === before) reach /= 2;
  }
  return best;
}

function searchAxis(problem: Problem, box: Box, from: BestSetting, index: number, points: number): BestSetting {
  const range = rangeOf(box, index);
  let best = from;
  for (let i = 0; i < points; i += 1) {
    best = better(problem, best, index, range.low + (width(range) * i) / (points - 1));
  }
  return best;
}

function stepAxis(problem: Problem, box: Box, from: BestSetting, index: number, reach: number): BestSetting {
  const range = rangeOf(box, index);
  const here = rangeOf(from.box, index).low;
  const step = reach * width(range);
  const up = better(problem, from, index, Math.min(range.high, here + step));
  return better(problem, up, index, Math.max(range.low, here - step));
}

function better(problem: Problem, best: BestSetting, index: number, value: number): BestSetting {
  const candidate = withRange(best.box, index, { low: value, high: value });
  const weight = valueOf(problem, candidate, best.value);
  return weight > best.value ? { box: candidate, value: weight } : best;
}

/** Does some check fail all over the box for every setting? Proven by covering the settings, never by samples. */
export function everySettingFails(problem: Problem, box: Box, work: number): boolean {
  const open = combinations(problem, box);
  for (let spent = 0; spent < work; spent += 1) {
    const piece = open.pop();
    if (piece === undefined) return true;
    if (leastPossible(problem.checks, piece) < -nearlyZero) continue;
    const index = widest(problem.settings, piece, problem.box);
    if (index === null) return false;
    open.push(...halves(piece, index));
  }
  return false;
}
