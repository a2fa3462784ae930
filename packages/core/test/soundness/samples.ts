import type { Interval } from '../../src/engine/geometry/index.ts';
import type { Reading } from '../../src/engine/proof/index.ts';
import { numbers } from '../properties/numbers.ts';
import { besidesFrom } from './truth.ts';

/** Values of the entries of a ledger by their index, and of what is uncertain beside them after those. */
export type Point = Float64Array;

/** Where truths lie: the ranges of the entries, those of what is uncertain beside them, and which of all are drawn. */
export interface Space {
  readonly ranges: readonly Interval[];
  readonly entries: number;
  /** Indices that are drawn, each with a width; everything else stays at the low end of its range. */
  readonly free: readonly number[];
  /** Indices that only whole numbers are drawn for. */
  readonly whole: ReadonlySet<number>;
}

/** Reads a point. */
export function readerOf(point: Point, entries: number): Reading {
  const ranges = Array.from(point, (value): Interval => ({ low: value, high: value }));
  return (index) => {
    const range = ranges[index >= besidesFrom ? entries + index - besidesFrom : index];
    if (range === undefined) throw new Error(`no entry ${index}`);
    return range;
  };
}

/** Draws truths one after the other, the same ones for the same seed, however many are drawn. */
export interface Sampler {
  /** Every drawn input anywhere in its range, a quarter of them at an end. */
  readonly anywhere: () => Point;
  readonly middle: () => Point;
  readonly corner: () => Point;
  /** A point with one to three of some inputs drawn anew, mostly to an end. */
  readonly near: (from: Point, only: readonly number[]) => Point;
  readonly pick: (count: number) => number;
}

/** Opens a sampler of a space. */
export function openSampler({ ranges, free, whole }: Space, seed: number): Sampler {
  const stream = numbers(seed);
  const next = (): number => stream.next().value;
  const pick = (count: number): number => Math.min(count - 1, Math.floor(next() * count));
  const start = Float64Array.from(ranges, ({ low }) => low);
  const place = (index: number, share: number): number => {
    const { low, high } = ranges[index] as Interval;
    if (whole.has(index)) return low + Math.min(high - low, Math.floor(share * (high - low + 1)));
    // The ends themselves, not what rounding makes of them.
    return share === 1 ? high : low + share * (high - low);
  };
  const drawn = (share: () => number): Point => {
    const point = start.slice();
    for (const index of free) point[index] = place(index, share());
    return point;
  };
  return {
    pick,
    anywhere: () => drawn(next),
    middle: () => drawn(() => 0.5),
    corner: () => drawn(() => pick(2)),
    near: (from, only) => {
      const point = from.slice();
      if (only.length === 0) return point;
      for (let count = 1 + pick(3); count > 0; count -= 1) {
        const index = only[pick(only.length)] as number;
        point[index] = place(index, pick(3) === 0 ? next() : pick(2));
      }
      return point;
    },
  };
}
