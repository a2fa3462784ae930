import type { OutlineRecord } from '../../records/index.ts';
import {
  add,
  exactly,
  gapBetween,
  lesser,
  middle,
  multiply,
  sine,
  subtract,
  turned,
  width,
  type Interval,
  type Outline,
} from '../geometry/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import { atLeastZero, type NamedCheck } from '../findings/index.ts';
import type { Joint } from '../joint/index.ts';

/**
 * How far the implement is turned against the hooks: over each piece of the lift, and at the middle of a box, quickly
 * [rad]. In a rigid frame it never changes with the lift; hooks on the links turn against what they hold.
 */
export interface Turns {
  readonly along: (at: Reading) => readonly Interval[];
  readonly near: (at: Reading) => readonly number[];
  readonly reads: (at: Reading) => void;
}

/**
 * Room for hooks, posts and levers all through the lift: from outlines where both machines have them, from a gauge block
 * where one was passed. With neither, the block is an unknown that is asked.
 */
export function roomCheck(joint: Joint, turns: Turns | null): NamedCheck {
  const outlines = outlineGap(joint);
  const gauge = gaugeRoom(joint);
  if (outlines === null) return atLeastZero('rear.room', 5, gauge);
  const isGauged = joint.ledger.given('implement.freeRoomLower');
  const either = (room: Interval, at: Reading): Interval => (isGauged ? lesser(room, gauge(at)) : room);
  const along = turns === null ? (at: Reading) => [joint.turn(at)] : turns.along;
  const check = atLeastZero('rear.room', 5, (at) => either(outlines(at, along(at)), at));
  if (turns === null) return check;
  return {
    ...check,
    estimate: (at) => middle(either(outlines(at, turns.near(at).map(exactly)), at)),
    reads: (at) => [turns.reads(at), either(outlines(at, [exactly(0)]), at)],
  };
}

function gaugeRoom(joint: Joint): Term {
  const { implement, coupler } = joint;
  const lower: Term = (at) => subtract(implement('freeRoomLower')(at), coupler('roomNeededLower')(at));
  if (joint.hold !== 'uFrame') return lower;
  const upper: Term = (at) => subtract(implement('freeRoomUpper')(at), coupler('roomNeededUpper')(at));
  return (at) => lesser(lower(at), upper(at));
}

/** The least gap between outlines, the implement turned by each of some angles; null where one side has none. */
function outlineGap(joint: Joint): ((at: Reading, turns: readonly Interval[]) => Interval) | null {
  const bodies = joint.setup.implement.outlines ?? [];
  const hooks = joint.setup.coupler?.outlines ?? [];
  if (bodies.length === 0 || hooks.length === 0) return null;
  const behind = joint.coupler('hookBehind');
  const rise = joint.coupler('hookRise');
  const least = rememberingLast((places) =>
    places.flatMap((place) => bodies.flatMap((body) => hooks.map((hook) => gap(body, hook, place)))).reduce(lesser),
  );
  return (at, turns) => {
    const from = { behind: behind(at), rise: rise(at) };
    return least(turns.map((turn) => ({ ...from, turn })));
  };
}

/** Most readings of a box ask for the places just asked for. */
function rememberingLast(work: (places: readonly Place[]) => Interval): (places: readonly Place[]) => Interval {
  let last: { places: readonly Place[]; result: Interval } | null = null;
  return (places) => {
    if (last === null || !samePlaces(last.places, places)) last = { places, result: work(places) };
    return last.result;
  };
}

function samePlaces(a: readonly Place[], b: readonly Place[]): boolean {
  return a.length === b.length && a.every((place, i) => samePlace(place, b[i] as Place));
}

function samePlace(a: Place, b: Place): boolean {
  return same(a.behind, b.behind) && same(a.rise, b.rise) && same(a.turn, b.turn);
}

function same(a: Interval, b: Interval): boolean {
  return a.low === b.low && a.high === b.high;
}

interface Place {
  readonly behind: Interval;
  readonly rise: Interval;
  readonly turn: Interval;
}

/** Two parts clear each other if they do so in either view; the drawn tolerance of both is taken off and added. */
function gap(body: OutlineRecord, hook: OutlineRecord, place: Place): Interval {
  const slack = (body.plusMinusMm ?? 0) + (hook.plusMinusMm ?? 0);
  const views = [rearGap(body, hook, place), sideGap(body, hook, place)].filter((view) => view !== null);
  if (views.length === 0) return { low: -Infinity, high: Infinity };
  const best = views.reduce((a, b) => ({ low: Math.max(a.low, b.low), high: Math.max(a.high, b.high) }));
  return add(best, { low: -slack, high: slack });
}

/**
 * Rear view (y, z): sideways nothing turns; heights lean on the rise of the hooks, and what stands behind the pins goes up or
 * down as the implement turns. A part that is drawn from behind only is taken to stand at the pins.
 */
function rearGap(body: OutlineRecord, hook: OutlineRecord, place: Place): Interval | null {
  if (body.rear === undefined || hook.rear === undefined) return null;
  const raised = add(place.rise, multiply(behindPins(body), sine(place.turn)));
  const placed = body.rear.map(([y, z]): readonly [number, number] => [y, z + middle(raised)]);
  const spread =
    width(raised) / 2 +
    farthest(body.rear) * (1 - Math.cos(Math.max(Math.abs(place.turn.low), Math.abs(place.turn.high))));
  return around(gapBetween(placed, hook.rear), spread);
}

/** How far behind the pins a part reaches, from its nearest to its farthest. */
function behindPins({ side }: OutlineRecord): Interval {
  const xs = side?.map(([x]) => x) ?? [0];
  return { low: Math.min(...xs), high: Math.max(...xs) };
}

/** Side view (x, z): the implement sits at the hooks, turned by δ. */
function sideGap(body: OutlineRecord, hook: OutlineRecord, place: Place): Interval | null {
  if (body.side === undefined || hook.side === undefined) return null;
  const [x0, z0] = [middle(place.behind), middle(place.rise)];
  const placed = turned(body.side, middle(place.turn)).map(([x, z]): readonly [number, number] => [x + x0, z + z0]);
  const spread = (width(place.behind) + width(place.rise) + width(place.turn) * farthest(body.side)) / 2;
  return around(gapBetween(placed, hook.side), spread);
}

function around(value: number, spread: number): Interval {
  return spread === 0 ? exactly(value) : { low: value - spread, high: value + spread };
}

function farthest(outline: Outline): number {
  return Math.max(...outline.map(([a, b]) => Math.hypot(a, b)));
}
