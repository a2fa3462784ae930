import { stepsFor, type Formula, type Step } from '../src/engine/formula/index.ts';
import { openRooms, type Rooms } from '../src/engine/formula/rooms.ts';
import { encloseTightly } from '../src/engine/formula/tightly.ts';
import type { Interval } from '../src/engine/geometry/index.ts';

/** What a result rests on, enclosed over a box with the lift cut into pieces. */
export function enclosedTightly(formula: Formula, result: Step, leaves: readonly Interval[], pieces: number) {
  const rooms = openRooms(formula, pieces);
  const stepsOf = (step: Step): Int32Array => stepsFor(formula, [step]);
  encloseTightly(rooms, stepsOf(result), stepsOf, {
    leaf: (index) => leaves[index] as Interval,
    lane: (place) => ({ low: place / pieces, high: (place + 1) / pieces }),
  });
  return { rooms };
}

/** The slope of a step by a leaf, over one piece; none where the step does not rest on it. */
export function slopeIn({ gradients }: Rooms, step: Step, leaf: number, piece: number): Interval {
  const k = gradients.inputs[step]?.indexOf(leaf) ?? -1;
  const slopes = gradients.slopes[step] ?? null;
  if (k < 0 || slopes === null) return { low: 0, high: 0 };
  const at = k * slopes.count + (slopes.count === 1 ? 0 : piece);
  return { low: slopes.low[at] as number, high: slopes.high[at] as number };
}
