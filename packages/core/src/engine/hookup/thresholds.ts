import { middle, width, type Interval } from '../geometry/index.ts';
import type { Entry, Ledger } from '../inputs/index.ts';
import { bestSetting, everySettingFails, nearlyZero, rangeOf, withRange, type Problem } from '../proof/index.ts';
import type { Threshold } from './finding.ts';

type Outcome = 'passes' | 'fails' | 'open';

const samples = 32;
const bisections = 24;
const coverLimit = 60;

/**
 * For each open input of an undecided check: where it would have to lie for the check to pass, or to fail, whatever the
 * other inputs turn out to be. Inputs that can decide it alone come first. The two ends of each range are bisected; every
 * value inside a range was proven at its sample points only, so these are advice, never part of a verdict.
 *
 * @param problem the check, alone [mm, deg]
 * @param ledger where the inputs stand [ledger]
 * @returns the ranges by input path [canonical unit]
 */
export function thresholdsOf(problem: Problem, ledger: Ledger): Threshold[] {
  const found = problem.uncertain.map((index) => thresholdOf(problem, ledger.entries[index] as Entry));
  return found.sort((a, b) => decisiveness(b) - decisiveness(a));
}

function thresholdOf(problem: Problem, { index, path }: Entry): Threshold {
  const pieces = segments(problem, index);
  const pick = (outcome: Outcome): Interval[] =>
    pieces.filter((piece) => piece.outcome === outcome).map(({ low, high }) => ({ low, high }));
  return { path, passes: pick('passes'), fails: pick('fails') };
}

function decisiveness({ passes, fails }: Threshold): number {
  return (passes.length > 0 ? 2 : 0) + (fails.length > 0 ? 1 : 0);
}

interface Segment extends Interval {
  readonly outcome: Outcome;
}

function segments(problem: Problem, index: number): Segment[] {
  const range = rangeOf(problem.box, index);
  const points = Array.from({ length: samples + 1 }, (_, i) => range.low + (width(range) * i) / samples);
  const outcomes = points.map((value) => outcomeAt(problem, index, value));
  const found: Segment[] = [];
  let start = range.low;
  for (let i = 1; i <= samples; i += 1) {
    const [before, after] = [outcomes[i - 1] as Outcome, outcomes[i] as Outcome];
    if (before === after) continue;
    const edge = crossing(problem, index, { low: points[i - 1] as number, high: points[i] as number }, before);
    found.push({ low: start, high: edge, outcome: before });
    start = edge;
  }
  found.push({ low: start, high: range.high, outcome: outcomes[samples] as Outcome });
  return found;
}

/** The last value, to a fraction of a micrometre, that still has the outcome of the low end. */
function crossing(problem: Problem, index: number, between: Interval, outcome: Outcome): number {
  let { low, high } = between;
  for (let i = 0; i < bisections; i += 1) {
    const cut = middle({ low, high });
    if (outcomeAt(problem, index, cut) === outcome) low = cut;
    else high = cut;
  }
  return outcome === 'open' ? high : low;
}

function outcomeAt(problem: Problem, index: number, value: number): Outcome {
  const box = withRange(problem.box, index, { low: value, high: value });
  if (bestSetting(problem, box).value >= -nearlyZero) return 'passes';
  return everySettingFails(problem, box, coverLimit) ? 'fails' : 'open';
}
