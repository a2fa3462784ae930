import { along, dot, lengthOf, less, unit, type Spot } from './rigid.ts';

/** A guard from joint to joint: a tube with a cone at either end that tapers to it, all round about one line [mm]. */
export interface Guard {
  readonly from: Spot;
  readonly to: Spot;
  readonly tube: number;
  readonly cone: number;
  readonly coneLength: number;
}

/** A convex thing beside the guard, by its point nearest to a point; `half` is how far it reaches about that. */
export interface Thing {
  readonly nearest: (to: Spot) => Spot;
  readonly half: number;
}

type Corner = readonly [along: number, out: number];

/** The outline of one half of the guard in a plane through its line: along the line, and out from it. */
function outlineOf({ from, to, tube, cone, coneLength }: Guard): readonly Corner[] {
  const length = lengthOf(less(to, from));
  const meet = Math.min(coneLength, length / 2);
  const waist = cone - ((cone - tube) * meet) / coneLength;
  return [
    [0, 0],
    [0, cone],
    [meet, waist],
    [length - meet, waist],
    [length, cone],
    [length, 0],
  ];
}

function toPiece([x, y]: Corner, [ax, ay]: Corner, [bx, by]: Corner): number {
  const [ux, uy] = [bx - ax, by - ay];
  const size = ux * ux + uy * uy;
  const share = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / size));
  return Math.hypot(x - ax - share * ux, y - ay - share * uy);
}

function isInside([x, y]: Corner, outline: readonly Corner[]): boolean {
  return outline.some(([bx, by], i) => {
    const [ax, ay] = outline[i - 1] ?? [0, 0];
    return ax < bx && x >= ax && x <= bx && y <= ay + ((x - ax) / (bx - ax)) * (by - ay);
  });
}

/** Distance of a point from the guard’s surface, negative inside it. */
function toGuard(spot: Spot, from: Spot, axis: Spot, outline: readonly Corner[]): number {
  const arrow = less(spot, from);
  const behind = dot(arrow, axis);
  const at: Corner = [behind, lengthOf(along(arrow, axis, -behind))];
  let least = Infinity;
  for (let i = 1; i < outline.length; i += 1) {
    least = Math.min(least, toPiece(at, outline[i - 1] as Corner, outline[i] as Corner));
  }
  return isInside(at, outline) ? -least : least;
}

const places = 90;
const beyond = 250;

/** How near a thing comes, and whether that is beside the tube, well away from both cones. */
export interface Gap {
  readonly gap: number;
  readonly besideTube: boolean;
}

/** Cone lengths from the nearer joint from which on no cone has a say, however the shaft leans in any view. */
const wellAway = 1.6;

/**
 * Distance between the guard and a convex thing. The line through the two nearest points meets the guard’s own line, and
 * the thing’s nearest point to that meeting is the nearest point itself: it is enough to go along the line.
 */
export function gapTo(guard: Guard, thing: Thing): Gap {
  const line = less(guard.to, guard.from);
  const axis = unit(line);
  const outline = outlineOf(guard);
  const of = (at: number): number => toGuard(thing.nearest(along(guard.from, axis, at)), guard.from, axis, outline);
  const step = (lengthOf(line) + 2 * beyond) / places;
  let [best, least] = [0, Infinity];
  for (let i = 0; i <= places; i += 1) {
    const gap = of(i * step - beyond);
    if (gap < least) [best, least] = [i * step - beyond, gap];
  }
  let [low, high] = [best - step, best + step];
  for (let i = 0; i < 24; i += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (of(left) > of(right)) low = left;
    else high = right;
  }
  const at = of((low + high) / 2) < least ? (low + high) / 2 : best;
  const gap = of(at) - thing.half;
  const arrow = less(thing.nearest(along(guard.from, axis, at)), guard.from);
  const behind = dot(arrow, axis);
  const out = lengthOf(along(arrow, axis, -behind));
  const isAway = Math.min(behind, lengthOf(line) - behind) > wellAway * guard.coneLength;
  return { gap, besideTube: isAway && Math.abs(out - guard.tube - thing.half - gap) < 1e-6 };
}

/** A bar from point to point. */
export function barOf(a: Spot, b: Spot, half: number): Thing {
  const arrow = less(b, a);
  const size = dot(arrow, arrow);
  return {
    half,
    nearest: (to) => along(a, arrow, Math.min(1, Math.max(0, dot(less(to, a), arrow) / size))),
  };
}

/** A box along the axes. */
export function boxOf(low: Spot, high: Spot): Thing {
  const held = (value: number, i: 0 | 1 | 2): number => Math.min(high[i], Math.max(low[i], value));
  return { half: 0, nearest: ([x, y, z]) => [held(x, 0), held(y, 1), held(z, 2)] };
}
