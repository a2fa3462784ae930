import { widthOf } from '../lettering.ts';
import type { Bounds, Point } from '../scene.ts';
import type { InkMap } from './inkMap.ts';

/** Lettering that wants a place: the ways it may be broken into lines, its size, and what it points at [paper mm]. */
export interface Wish {
  readonly variants: readonly (readonly string[])[];
  readonly size: number;
  readonly to: Point | null;
  /** A name that stands beside what it names; it is led there only from afar. */
  readonly isName: boolean;
}

/** Lettering in its place [paper mm]. */
export interface Place {
  readonly lines: readonly string[];
  readonly box: Bounds;
  readonly leader: readonly [Point, Point] | null;
}

/** What lettering keeps off [paper mm]. */
export interface Room {
  readonly ink: InkMap;
  readonly sheet: Bounds;
  readonly taken: readonly Bounds[];
}

/** Lines of a label stand so far apart [part of their size]. */
export const leading = 1.22;
/** Height of the letters over their baseline, and how far they reach below it [part of their size]. */
export const rise = 0.72;
const below = 0.2;

const gap = 1.1;
const step = 1.3;
/** A name this near needs no leader [paper mm]. */
const beside = 3;

/** What spoils a place: lines under it, distance, lines under its leader, and leaders that cross. */
const costs = { ink: 0.5, far: 1.1, farName: 2.2, led: 0.55, crossing: 60, line: 3 } as const;

/** Finds a place for each wish in turn, clear of what is taken and of those before it. */
export function placeAll(wishes: readonly Wish[], room: Room): Place[] {
  const placed: Place[] = [];
  for (const wish of wishes) {
    const taken = [...room.taken, ...placed.map(({ box }) => box)];
    const leaders = placed.flatMap(({ leader }) => (leader === null ? [] : [leader]));
    placed.push(bestPlace(wish, { ...room, taken }, leaders));
  }
  return placed;
}

type Segment = readonly [Point, Point];

interface Found {
  readonly place: Place;
  readonly cost: number;
}

/** The best place: looked for coarsely over the whole sheet, then finely as near as a better one could be. */
function bestPlace(wish: Wish, room: Room, leaders: readonly Segment[]): Place {
  const tries = [3 * step, step].flatMap((every) => wish.variants.map((lines) => ({ every, lines })));
  const best = tries.reduce<Found | null>((found, { every, lines }) => {
    const near = windowAround(wish, room.sheet, found?.cost ?? Infinity);
    return bestOf(boxesFor(sizeOf(lines, wish.size), near, every), found, (box, most) => {
      const ground = groundCost(wish, lines, box, room);
      if (ground >= most || room.taken.some((other) => isOver(box, other, gap))) return null;
      const leader = leaderOf(wish, box);
      const met = ground + crossingCost(leader, room, leaders);
      return met >= most
        ? null
        : { place: { lines, box, leader }, cost: met + underLeader(leader, room.ink) * costs.led };
    });
  }, null);
  if (best === null) throw new Error(`invariant: no place for "${wish.variants[0]?.join(' ') ?? ''}"`);
  return best.place;
}

/** The cheapest of some boxes, or what was found before where that is as cheap. */
function bestOf(
  boxes: Iterable<Bounds>,
  before: Found | null,
  tried: (box: Bounds, most: number) => Found | null,
): Found | null {
  let best = before;
  for (const box of boxes) {
    const found = tried(box, best?.cost ?? Infinity);
    if (found !== null && found.cost < (best?.cost ?? Infinity)) best = found;
  }
  return best;
}

function sizeOf(lines: readonly string[], size: number): { width: number; height: number } {
  return {
    width: 0.94 * Math.max(...lines.map((line) => widthOf(line, size))),
    height: size * (rise + below + (lines.length - 1) * leading),
  };
}

/** What of the sheet a label may touch if its distance alone is to cost less. */
function windowAround({ to, isName }: Wish, sheet: Bounds, most: number): { sheet: Bounds; near: Bounds } {
  if (to === null) return { sheet, near: sheet };
  const reach = most / (isName ? costs.farName : costs.far);
  return { sheet, near: { left: to[0] - reach, right: to[0] + reach, bottom: to[1] - reach, top: to[1] + reach } };
}

/** Boxes of a size in even steps over the sheet, those that touch what is near. */
function* boxesFor(
  { width, height }: { width: number; height: number },
  { sheet, near }: { sheet: Bounds; near: Bounds },
  every: number,
): Generator<Bounds> {
  const across = startsOf(sheet.left, sheet.right - width, every, [near.left - width, near.right]);
  for (const bottom of startsOf(sheet.bottom, sheet.top - height, every, [near.bottom - height, near.top]))
    for (const left of across) yield { left, right: left + width, bottom, top: bottom + height };
}

/** Even steps from one end to the other, those inside a range. */
function startsOf(from: number, to: number, every: number, [low, high]: readonly [number, number]): number[] {
  if (to < from) return [];
  const count = Math.max(1, Math.ceil((to - from) / every));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count).filter(
    (start) => start >= low && start <= high,
  );
}

function isOver(a: Bounds, b: Bounds, by: number): boolean {
  return a.left < b.right + by && b.left < a.right + by && a.bottom < b.top + by && b.bottom < a.top + by;
}

/** From the edge of a label to what it points at; none for a name that stands beside it. */
function leaderOf({ to, isName }: Wish, box: Bounds): Segment | null {
  if (to === null) return null;
  const start = nearest(box, to);
  const length = Math.hypot(to[0] - start[0], to[1] - start[1]);
  return isName && length <= beside ? null : [start, to];
}

function nearest({ left, right, bottom, top }: Bounds, [x, z]: Point): Point {
  const inset = Math.min(2, (right - left) / 4);
  const across = Math.max(left + inset, Math.min(right - inset, x));
  if (z > top) return [across, top + 0.4];
  if (z < bottom) return [across, bottom];
  return [x < left ? left - 0.6 : right + 0.6, (bottom + top) / 2];
}

/** What a place costs for the lines that it covers and for its distance. */
function groundCost(wish: Wish, lines: readonly string[], box: Bounds, { ink, sheet }: Room): number {
  const covered = ink.within(box) * costs.ink + (lines.length - 1) * costs.line;
  if (wish.to === null) return covered + edgeCost(box, sheet);
  const distance = Math.hypot(...difference(nearest(box, wish.to), wish.to));
  const isTooNear = !wish.isName && distance < 2.5;
  return (
    covered +
    distance * (wish.isName ? costs.farName : costs.far) +
    (isTooNear ? 40 : 0) +
    (holds(box, wish.to) ? 200 : 0)
  );
}

/** What a leader costs that crosses another one, or runs through lettering. */
function crossingCost(leader: Segment | null, { taken }: Room, leaders: readonly Segment[]): number {
  if (leader === null) return 0;
  const crossings = leaders.filter((other) => doCross(leader, other)).length;
  const strikes = taken.filter((other) => strikesBox(leader, other)).length;
  return (crossings + strikes) * costs.crossing;
}

/** A sentence that points at nothing stands at the edge of the sheet. */
function edgeCost(box: Bounds, sheet: Bounds): number {
  return Math.min(box.bottom - sheet.bottom, sheet.top - box.top) * 0.8 + (box.left - sheet.left) * 0.05;
}

function difference(a: Point, b: Point): Point {
  return [b[0] - a[0], b[1] - a[1]];
}

function holds({ left, right, bottom, top }: Bounds, [x, z]: Point): boolean {
  return x > left - 0.8 && x < right + 0.8 && z > bottom - 0.8 && z < top + 0.8;
}

/** Lines that a leader crosses on its way, its last two millimetres left out. */
function underLeader(leader: Segment | null, ink: InkMap): number {
  if (leader === null) return 0;
  const [[x0, z0], [x1, z1]] = leader;
  const length = Math.hypot(x1 - x0, z1 - z0);
  let sum = 0;
  for (let gone = 0.5; gone < length - 2; gone += 1)
    sum += ink.at(x0 + ((x1 - x0) * gone) / length, z0 + ((z1 - z0) * gone) / length);
  return sum;
}

function doCross([a, b]: Segment, [c, d]: Segment): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

function side(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Whether a leader runs through a box that it doesn’t end in. */
function strikesBox(leader: Segment, { left, right, bottom, top }: Bounds): boolean {
  const corners: Point[] = [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
  return corners.some((corner, i) => doCross(leader, [corner, corners[(i + 1) % 4] as Point]));
}
