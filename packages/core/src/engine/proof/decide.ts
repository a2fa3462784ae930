import { marginOf, nearlyZero, type Check } from './check.ts';
import { atPoint, halves, midpoint, rangeOf, reader, widest, type Box, type Problem } from './problem.ts';
import { bestSetting, everySettingFails } from './setting.ts';

/** What is proven of a problem, with one truth for each side of an open question (every uncertain variable at a point). */
export type Decision =
  | { readonly outcome: 'passes' | 'fails' }
  | { readonly outcome: 'undecided'; readonly passing: Box; readonly failing: Box }
  | { readonly outcome: 'unresolved'; readonly passing: Box | null; readonly failing: Box | null };

/** Boxes that are split before the question is left unresolved. */
const boxLimit = 1500;
const coverLimit = 160;
const pointCoverLimit = 4000;

/**
 * Decides a problem by proof: every box of the uncertain variables gets one fixed setting that is shown to hold all over
 * it, or is shown to fail under every setting; what is neither is halved (decision 0004).
 *
 * @param problem the checks, the box and the adjusters [check units]
 * @returns passes, fails, undecided with both truths, or unresolved [outcome]
 */
export function decide(problem: Problem): Decision {
  let passing: Box | null = null;
  let failing: Box | null = null;
  const look = (point: Box): void => {
    if (passing === null && works(problem, point)) passing = point;
    else if (failing === null && everySettingFails(problem, point, pointCoverLimit)) failing = point;
  };
  const settled = settle(problem, problem.box);
  if (settled !== null) return { outcome: settled };
  for (const corner of corners(problem)) look(corner);

  const open: Box[] = [problem.box];
  let unsettled = false;
  for (let split = 0; open.length > 0; split += 1) {
    if (passing !== null && failing !== null) return { outcome: 'undecided', passing, failing };
    if (split >= boxLimit) return { outcome: 'unresolved', passing, failing };
    const box = open.pop() as Box;
    const proven = split === 0 ? null : settle(problem, box);
    if (proven === 'passes') passing ??= midpoint(problem, box);
    if (proven === 'fails') failing ??= midpoint(problem, box);
    if (proven !== null) continue;
    look(midpoint(problem, box));
    const index = widest(problem.uncertain, box, problem.box);
    if (index === null) unsettled = true;
    else open.push(...halves(box, index));
  }
  if (passing !== null && failing !== null) return { outcome: 'undecided', passing, failing };
  if (unsettled) return { outcome: 'unresolved', passing, failing };
  return { outcome: failing === null ? 'passes' : 'fails' };
}

function settle(problem: Problem, box: Box): 'passes' | 'fails' | null {
  if (works(problem, box)) return 'passes';
  return everySettingFails(problem, box, coverLimit) ? 'fails' : null;
}

function works(problem: Problem, box: Box): boolean {
  return bestSetting(problem, box).value >= -nearlyZero;
}

/** The two corners of the box where each check looks best and worst, judged one variable at a time. */
function corners(problem: Problem): Box[] {
  return problem.checks.flatMap((check) => [corner(problem, check, 1), corner(problem, check, -1)]);
}

function corner(problem: Problem, check: Check, sign: 1 | -1): Box {
  const { box } = bestSetting(problem, midpoint(problem, problem.box));
  const centre = reader(box);
  const pick = (index: number): number => {
    const range = rangeOf(problem.box, index);
    const at = (value: number) => marginOf(check.measure((i) => (i === index ? { low: value, high: value } : centre(i)))).low;
    return sign * (at(range.high) - at(range.low)) >= 0 ? range.high : range.low;
  };
  return atPoint(problem.box, problem.uncertain, (_, index) => pick(index));
}
