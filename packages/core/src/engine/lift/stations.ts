import { evaluate, openWorkspace, stepsFor, valueAt, type Formula, type Workspace } from '../formula/index.ts';
import { middle, type Interval } from '../geometry/index.ts';
import type { Reading } from '../proof/index.ts';
import type { LiftQuestion } from './question.ts';
import { throughLift } from './throughLift.ts';

/** Heights that a sweep is computed at. */
export const stationCount = 61;

/** Ball heights that are asked of the lift; null where they are not given [mm]. */
interface HeightsAsked {
  readonly pickUp: number | null;
  readonly work: number | null;
  readonly carry: number | null;
}

/** Where the stations of a sweep are. */
interface Stations {
  /** How far up the stroke each of them is, from 0 to 1. */
  readonly lanes: readonly number[];
  readonly asked: HeightsAsked;
}

const last = stationCount - 1;
const even: readonly number[] = Array.from({ length: stationCount }, (_, i) => i / last);
const rooms = new WeakMap<Formula, Workspace>();
const nothing = (): Interval => ({ low: 0, high: 0 });

/** Stations evenly spaced over the stroke, one near it moved to each height that is asked of the lift: pictures of it are exact. */
export function stationsOf({ structure, joint, leaves }: LiftQuestion, at: Reading): Stations {
  if (!structure.linkage) return { lanes: even, asked: { pickUp: null, work: null, carry: null } };
  const { formula, steps } = throughLift(structure, 'stroke');
  const space = rooms.get(formula) ?? openWorkspace(formula, 2);
  rooms.set(formula, space);
  const valueOf = (name: string): number => middle((leaves.exact.get(name) ?? nothing)(at));
  const values = formula.leaves.map(valueOf);
  evaluate(space, stepsFor(formula, [steps.ballHeight, steps.lowest, steps.workHeight]), {
    leaf: (index) => values[index] as number,
    lane: (place) => place,
  });
  const given = (key: string): number | null => (joint.ledger.given(`implement.${key}`) ? valueOf(key) : null);
  const parked = given('parkedPinHeight');
  const lowest = valueAt(space, steps.lowest, 0);
  const asked = {
    pickUp: parked === null ? null : Math.max(lowest, parked - valueOf('hookRise')),
    work: structure.workGiven ? valueAt(space, steps.workHeight, 0) : null,
    carry: given('carryHeight'),
  };
  const [low, high] = [valueAt(space, steps.ballHeight, 0), valueAt(space, steps.ballHeight, 1)];
  return { lanes: lanesThrough(Object.values(asked), low, high), asked };
}

function lanesThrough(heights: readonly (number | null)[], low: number, high: number): number[] {
  const wanted = heights
    .flatMap((height) => (height === null ? [] : [(height - low) / (high - low)]))
    .filter((lane) => lane > 0 && lane < 1);
  const lanes = [...even];
  [...new Set(wanted)]
    .sort((a, b) => a - b)
    .reduce((before, lane) => {
      // The nearest that is free: ends stay where they are, and each stands above the one before.
      const at = Math.min(last - 1, Math.max(before + 1, Math.round(lane * last)));
      lanes[at] = lane;
      return at;
    }, 0);
  return lanes;
}
