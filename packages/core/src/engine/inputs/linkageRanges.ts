import type { Bound } from '../../records/index.ts';

/** Ranges of a tractor's linkage by the key of their field [mm]. */
export type LinkageRanges = Readonly<Record<string, Bound>>;

/** A lower link never stands steeper than this: the sine of its angle, our own limit. */
const steepest = 0.9;
/** The top link's pivot stands at least this far above the lower link's [mm], our own limit. */
const leastRise = 150;
/** A lift moves its balls at least this far [mm], our own limit. */
const leastStroke = 200;

/** a ≤ b + factor·c + more, for ranges named by their keys. */
interface Rule {
  readonly a: string;
  readonly b: string;
  readonly c: string | null;
  readonly factor: number;
  readonly more: number;
}

const rules: readonly Rule[] = [
  { a: 'ballHeightHigh', b: 'lowerLinkPivotHeight', c: 'lowerLinkLength', factor: steepest, more: 0 },
  { a: 'lowerLinkPivotHeight', b: 'ballHeightLow', c: 'lowerLinkLength', factor: steepest, more: 0 },
  { a: 'lowerLinkPivotHeight', b: 'topLinkPivotHeight', c: null, factor: 0, more: -leastRise },
  { a: 'ballHeightLow', b: 'ballHeightHigh', c: null, factor: 0, more: -leastStroke },
];

const passes = 6;

/**
 * Shrinks the ranges of one linkage by one another: a ball can be no higher or lower than its link reaches from its pivot.
 * What is left out by it could not be true together with the readings; a range that would end up empty is left as it was.
 */
export function consistentRanges(ranges: LinkageRanges): LinkageRanges {
  let shrunk = ranges;
  for (let pass = 0; pass < passes; pass += 1) shrunk = rules.reduce(applyRule, shrunk);
  return shrunk;
}

function applyRule(ranges: LinkageRanges, { a, b, c, factor, more }: Rule): LinkageRanges {
  const [left, right] = [ranges[a], ranges[b]];
  const scaled = c === null ? { low: 0, high: 0 } : ranges[c];
  if (left === undefined || right === undefined || scaled === undefined) return ranges;
  const next: Record<string, Bound> = {
    ...ranges,
    [a]: atMost(left, right.high + factor * scaled.high + more),
    [b]: atLeast(right, left.low - factor * scaled.high - more),
  };
  if (c !== null && factor > 0) next[c] = atLeast(scaled, (left.low - right.high - more) / factor);
  return next;
}

function atMost(range: Bound, most: number): Bound {
  return most < range.high && most > range.low ? { low: range.low, high: most } : range;
}

function atLeast(range: Bound, least: number): Bound {
  return least > range.low && least < range.high ? { low: least, high: range.high } : range;
}
