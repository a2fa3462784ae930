import type { Interval } from '../geometry/index.ts';
import { boundedFrom, opposite, type Bounded, type Side } from './corners.ts';
import type { Step } from './formula.ts';
import { partOf, refined, type Aim, type Cutter, type Part } from './refine.ts';
import type { Rooms } from './rooms.ts';

/** Rooms in which an extreme is sought. */
export interface Search {
  readonly rooms: Rooms;
  readonly stepsOf: (step: Step) => Int32Array;
  readonly cutter: () => Cutter;
  readonly bounded: BoundedResults;
}

/** Results bounded over the box that is enclosed: asked for again, they are not bounded again. */
export interface BoundedResults {
  readonly of: (result: Step, how: Side) => Bounded;
  /** Lets go of a step that was enclosed anew. */
  readonly forget: (step: Step) => void;
}

/** Makes room to remember the bounds of results. */
export function openBounded(rooms: Rooms, stepsOf: (step: Step) => Int32Array): BoundedResults {
  const known = new Map<Step, (Bounded | undefined)[]>();
  return {
    of: (result, how) => {
      const found = known.get(result) ?? [];
      known.set(result, found);
      return (found[placeOf(how)] ??= boundedFrom(rooms, stepsOf(result), how));
    },
    forget: (step) => void known.delete(step),
  };
}

function placeOf({ side, alongLift }: Side): number {
  return (side === 1 ? 0 : 1) + (alongLift ? 0 : 2);
}

/** A bound as it is first found, and a value that the result takes on its way to it, both turned so that less is farther out. */
export interface First {
  readonly bound: number;
  readonly value: number;
}

/** The extreme lies no farther out than the outermost bound over any piece of the lift. */
export function outward(sense: 1 | -1): Side {
  return { side: sense, alongLift: true };
}

/** Nor is it any less far out than the innermost bound at one place: whatever the truth, the lift is at that place once. */
export function inward(sense: 1 | -1): Side {
  return { side: opposite(sense), alongLift: false };
}

/** The first bound from one side of a result whose steps are enclosed. */
export function firstBound({ bounded: results }: Search, result: Step, how: Side): First {
  const bounded = results.of(result, how);
  const place = farthestPlace(bounded, how);
  if (!how.alongLift) return firstAt(bounded, how, place);
  const { value } = bounded.values.reduce(
    (least, _, other) => {
      const first = firstAt(bounded, how, other);
      return first.value < least.value ? first : least;
    },
    firstAt(bounded, how, place),
  );
  return { bound: firstAt(bounded, how, place).bound, value };
}

function firstAt({ bounds, values }: Bounded, { side }: Side, place: number): First {
  const value = side * (values[place] as number);
  return { bound: side * (bounds[place] as number), value: Number.isNaN(value) ? Infinity : value };
}

/** The place whose bound counts: from outside the one that is farthest out, from inside the one that says most. */
function farthestPlace({ bounds }: Bounded, { side, alongLift }: Side): number {
  const sign = alongLift ? -side : side;
  return bounds.reduce((known, bound, place) => (sign * bound > sign * (bounds[known] as number) ? place : known), 0);
}

/** The bound from one side with what it hangs on cut as far as the aim wants. */
export function closerBound(search: Search, result: Step, leaves: readonly Interval[], aim: Aim): number {
  const parts = aim.how.alongLift
    ? outerParts(search, result, leaves, aim.how)
    : [innerPart(search, result, leaves, aim.how)];
  return refined(search.cutter, result, parts, aim);
}

/** Every piece of the lift, bounded from outside. */
function outerParts({ rooms, bounded: results }: Search, result: Step, leaves: readonly Interval[], how: Side): Part[] {
  const bounded = results.of(result, how);
  return Array.from(bounded.bounds, (_, place) =>
    partOf(rooms, result, how, place, {
      ranges: [...leaves, pieceOf(place, rooms.places)],
      ...firstAt(bounded, how, place),
    }),
  );
}

/** The whole box at the one place of the lift whose bound from inside says most. */
function innerPart({ rooms, bounded: results }: Search, result: Step, leaves: readonly Interval[], how: Side): Part {
  const bounded = results.of(result, how);
  const best = farthestPlace(bounded, how);
  const at = bounded.lanes[best] as number;
  return partOf(rooms, result, how, best, {
    ranges: [...leaves, { low: at, high: at }],
    ...firstAt(bounded, how, best),
  });
}

/** One piece of the lift by its number. */
export function pieceOf(place: number, places: number): Interval {
  return { low: place / places, high: (place + 1) / places };
}
