import { width } from '../geometry/index.ts';
import { rangeOf, someFails, withRange, type Box, type Problem } from './problem.ts';

/** Slices that a range is looked at in, and how often the whole is gone through. */
const slices = 16;
const rounds = 3;

/**
 * The box with what can be set narrowed to where the quick checks leave it open: from either end of each range slices are
 * taken off in which some quick check fails for certain. No setting that could work is lost, and costly checks are spared
 * the rest. Null where nothing is left.
 */
export function narrowed(problem: Problem, box: Box): Box | null {
  const quick = problem.checks.filter(({ estimate }) => estimate === undefined);
  if (quick.length === 0) return box;
  let here = box;
  for (let round = 0; round < rounds; round += 1) {
    const before = here;
    for (const index of problem.settings) {
      const next = narrowedAlong(here, index, (piece) => someFails(quick, piece));
      if (next === null) return null;
      here = next;
    }
    if (problem.settings.every((index) => rangeOf(before, index) === rangeOf(here, index))) break;
  }
  return here;
}

function narrowedAlong(box: Box, index: number, fails: (piece: Box) => boolean): Box | null {
  const range = rangeOf(box, index);
  const step = width(range) / slices;
  if (step === 0) return fails(box) ? null : box;
  const edge = (i: number): number => (i === slices ? range.high : range.low + i * step);
  const failsIn = (i: number): boolean => fails(withRange(box, index, { low: edge(i), high: edge(i + 1) }));
  let first = 0;
  while (first < slices && failsIn(first)) first += 1;
  if (first === slices) return null;
  let last = slices;
  while (last > first + 1 && failsIn(last - 1)) last -= 1;
  return first === 0 && last === slices ? box : withRange(box, index, { low: edge(first), high: edge(last) });
}
