import { interval, type Interval } from '../geometry/index.ts';

/** What a bound is wanted for. */
export type Care = 'rough' | 'passes' | 'fails';

/** Reads the interval of a variable (or the number of a choice) by its index in the ledger. */
export interface Reading {
  (index: number): Interval;
  /**
   * Where bounds would take work to tighten: the first that are found will do (rough), or only the end of the margin counts
   * that shows that the check passes, or that it fails, and only as tight as it takes to show it. They are sound all the same;
   * an end that does not count may be left unbounded.
   */
  readonly care?: Care;
}

/** A quantity as the engine sees it: an interval for whatever box is being read. */
export type Term = (at: Reading) => Interval;

/** One tested quantity and the band it must stay in [check's unit]; `null` where the band has no end. */
export interface Measured {
  readonly quantity: Interval;
  readonly low: Interval | null;
  readonly high: Interval | null;
}

/** A check that can be proven: its margin is the distance of the quantity to the nearer end of its band. */
export interface Check<Id extends string = string> {
  readonly id: Id;
  readonly unit: 'mm' | 'deg' | 'kg' | 'kW' | 'N·m';
  /** How much of the unit counts as one step when margins of different checks are weighed against each other. */
  readonly scale: number;
  readonly measure: (at: Reading) => Measured;
  /** The margin at the middle of a box, quickly: it ranks settings and truths and is never part of a proof. */
  readonly estimate?: (at: Reading) => number;
  /** Reads whatever `measure` reads, without computing; `measure` itself where it is left out. */
  readonly reads?: (at: Reading) => unknown;
}

/**
 * Margins this close to zero count as zero [check's unit]: a nanometre, far under any tool and far over rounding error.
 * See decision 0004.
 */
export const nearlyZero = 1e-9;

/**
 * The margin of a measured quantity, tight where quantity and ends are independent or the band is symmetric:
 * min(quantity − low, high − quantity), ≥ 0 inside the band.
 */
export function marginOf({ quantity, low, high }: Measured): Interval {
  if (low === null && high === null) return interval(Infinity, Infinity);
  if (high === null) return interval(quantity.low - (low as Interval).high, quantity.high - (low as Interval).low);
  if (low === null) return interval(high.low - quantity.high, high.high - quantity.low);
  const best = Math.min(quantity.high, Math.max(quantity.low, centre(low.low, high.high)));
  return interval(
    Math.min(quantity.low - low.high, high.low - quantity.high),
    Math.min(best - low.low, high.high - best),
  );
}

/** Reads with another care. */
export function withCare(at: Reading, care: Care): Reading {
  return Object.assign((index: number) => at(index), { care });
}

/** The margin that settings and truths are ranked by: the quick estimate, or the margin that is certain. */
export function rankOf(check: Check, at: Reading): number {
  return check.estimate?.(at) ?? marginOf(check.measure(at)).low;
}

function centre(low: number, high: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (low + high) / 2;
  if (Number.isFinite(low)) return Infinity;
  return Number.isFinite(high) ? -Infinity : 0;
}
