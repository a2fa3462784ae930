import { middle, width, type Interval } from '../geometry/index.ts';
import type { Entry, Ledger } from '../inputs/index.ts';
import { fieldRules } from '../../records/index.ts';
import {
  bestSetting,
  everySettingFails,
  likelySetting,
  midpoint,
  nearlyZero,
  rankOf,
  reader,
  withRange,
  workShare,
  type Box,
  type Problem,
} from '../proof/index.ts';
import type { Threshold } from './finding.ts';

type Outcome = 'passes' | 'fails' | 'open';

/** How closely the range of an input is looked at, and of how many inputs. */
interface Effort {
  readonly inputs: number;
  readonly samples: number;
  readonly bisections: number;
  readonly cover: number;
  readonly peakSteps: number;
}

const thorough: Effort = { inputs: Infinity, samples: 32, bisections: 24, cover: 60, peakSteps: 24 };
/** For checks that are computed through the lift: only the inputs that tell most are looked at. */
const thrifty: Effort = { inputs: 3, samples: 8, bisections: 12, cover: 4, peakSteps: 6 };

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
  const effort = workShare(problem) < 1 ? thrifty : thorough;
  const inputs = problem.uncertain
    .map((index) => ledger.entries[index] as Entry)
    .filter(({ path }) => fieldRules.has(fieldOf(path)));
  const telling =
    effort === thorough ? inputs : [...inputs].sort((a, b) => effectOf(problem, b) - effectOf(problem, a));
  const asked: Asked = { problem, effort };
  const found = telling.slice(0, effort.inputs).map((entry) => thresholdOf(asked, entry));
  const rest = telling.slice(effort.inputs).map(({ path }): Threshold => ({ path, passes: [], fails: [] }));
  return [...found.sort((a, b) => decisiveness(b) - decisiveness(a)), ...rest];
}

/** An undecided check, and how closely its inputs are looked at. */
interface Asked {
  readonly problem: Problem;
  readonly effort: Effort;
}

function fieldOf(path: string): string {
  return path.split('.adjustable.')[0] ?? path;
}

/** How much an input alone moves the check, by rank. */
function effectOf(problem: Problem, { index, range }: Entry): number {
  const centre = reader(midpoint(problem, problem.box));
  const at = (value: number): number =>
    Math.min(
      ...problem.checks.map((check) => rankOf(check, (i) => (i === index ? { low: value, high: value } : centre(i)))),
    );
  return Math.abs(at(range.high) - at(range.low));
}

function thresholdOf(asked: Asked, entry: Entry): Threshold {
  const pieces = segments(asked, entry.index, scanned(entry));
  const isLikely = ({ low, high }: Segment): boolean => low <= entry.range.high && high >= entry.range.low;
  const pick = (outcome: Outcome): Interval[] =>
    pieces.filter((piece) => piece.outcome === outcome && isLikely(piece)).map(({ low, high }) => ({ low, high }));
  return { path: entry.path, passes: pick('passes'), fails: pick('fails') };
}

/** A stand-in does not bind what will be measured: everything that the field accepts is looked at, if only what is likely is told. */
function scanned({ path, range, origin }: Entry): Interval {
  const rule = fieldRules.get(fieldOf(path));
  if (rule === undefined || origin === 'stated' || origin === 'range' || origin === 'limit') return range;
  return { low: rule.min, high: rule.max };
}

function decisiveness({ passes, fails }: Threshold): number {
  return (passes.length > 0 ? 2 : 0) + (fails.length > 0 ? 1 : 0);
}

interface Segment extends Interval {
  readonly outcome: Outcome;
}

function segments(asked: Asked, index: number, range: Interval): Segment[] {
  const probes = withPeaks(asked, index, evenly(asked, index, range));
  const found: Segment[] = [];
  let start = range.low;
  probes.slice(1).forEach((probe, i) => {
    const before = probes[i] as Probe;
    if (before.outcome === probe.outcome) return;
    const edge = crossing(asked, index, { low: before.at, high: probe.at }, before.outcome);
    found.push({ low: start, high: edge, outcome: before.outcome });
    start = edge;
  });
  found.push({ low: start, high: range.high, outcome: (probes.at(-1) as Probe).outcome });
  return found;
}

/** One value of the input, what comes of it, and the least margin that is certain there. */
interface Probe {
  readonly at: number;
  readonly outcome: Outcome;
  readonly certain: number;
  /** False where the middle of everything else shows that it can't pass. */
  readonly isHopeful: boolean;
}

function evenly(asked: Asked, index: number, range: Interval): Probe[] {
  const { samples } = asked.effort;
  return Array.from({ length: samples + 1 }, (_, i) => probe(asked, index, range.low + (width(range) * i) / samples));
}

/** A band narrower than the samples shows as a peak of the margin between two of them: its top is probed as well. */
function withPeaks(asked: Asked, index: number, probes: readonly Probe[]): Probe[] {
  return probes.flatMap((here, i) => {
    const [before, after] = [probes[i - 1] ?? here, probes[i + 1] ?? here];
    if (!here.isHopeful || here.outcome === 'passes' || here.certain < before.certain || here.certain < after.certain)
      return [here];
    const top = peak(asked, index, before.at, after.at);
    if (top.outcome !== 'passes') return [here];
    return top.at < here.at ? [top, here] : [here, top];
  });
}

function peak(asked: Asked, index: number, from: number, to: number): Probe {
  let [low, high] = [from, to];
  for (let i = 0; i < asked.effort.peakSteps; i += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (probe(asked, index, left).certain < probe(asked, index, right).certain) low = left;
    else high = right;
  }
  return probe(asked, index, (low + high) / 2);
}

/** The last value, to a fraction of a micrometre, that still has the outcome of the low end. */
function crossing(asked: Asked, index: number, between: Interval, outcome: Outcome): number {
  let { low, high } = between;
  for (let i = 0; i < asked.effort.bisections; i += 1) {
    const cut = middle({ low, high });
    if (probe(asked, index, cut).outcome === outcome) low = cut;
    else high = cut;
  }
  const edge = outcome === 'open' ? high : low;
  const round = Math.round(edge * 1e4) / 1e4;
  return outcome !== 'open' && probe(asked, index, round).outcome === outcome ? round : edge;
}

function probe({ problem, effort }: Asked, index: number, at: number): Probe {
  const box = withRange(problem.box, index, { low: at, high: at });
  if (effort === thrifty) return thriftyProbe(problem, box, at);
  const certain = bestSetting(problem, box, -nearlyZero).value;
  const isHopeful = true;
  if (certain >= -nearlyZero) return { at, certain, isHopeful, outcome: 'passes' };
  return { at, certain, isHopeful, outcome: everySettingFails(problem, box, effort.cover) ? 'fails' : 'open' };
}

/** Where bounds are costly, the middle of everything else says which of the two is worth proving. */
function thriftyProbe(problem: Problem, box: Box, at: number): Probe {
  const likely = likelySetting(problem, box).value;
  if (likely < -nearlyZero) {
    const outcome = everySettingFails(problem, box, thrifty.cover) ? 'fails' : 'open';
    return { at, certain: likely, isHopeful: false, outcome };
  }
  const certain = bestSetting(problem, box, -nearlyZero).value;
  return { at, certain, isHopeful: true, outcome: certain >= -nearlyZero ? 'passes' : 'open' };
}
