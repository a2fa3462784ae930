import type { OutlineRecord } from '../../records/index.ts';
import {
  add,
  exactly,
  gapBetween,
  gapToDisc,
  greater,
  lesser,
  middle,
  turned,
  width,
  type Interval,
  type Outline,
} from '../geometry/index.ts';
import type { Line, NamedCheck, Reason } from '../findings/index.ts';
import type { Reading } from '../proof/index.ts';
import { liftLimits } from './limits.ts';
import { holdsUpper, type LiftQuestion } from './question.ts';
import { openRun } from './run.ts';
import { throughLift } from './throughLift.ts';

/** Pieces that the lift is cut into here: a gap is bounded less tightly over a piece than a margin of one formula. */
const pieces = 96;
/** Every so manieth piece is looked at first. */
const stride = 8;

/** A part that moves: its side view, how far it reaches sideways where known, and its drawn tolerance [mm]. */
interface Part {
  readonly side: Outline;
  readonly across: Interval | null;
  readonly slack: number;
}

/** A part of the tractor: the gap it leaves in the side view, and how much nearer and farther it can stand. */
interface Obstacle {
  readonly gapTo: (outline: Outline) => number;
  readonly across: Interval | null;
  readonly nearer: number;
  readonly farther: number;
}

/** Where a frame of what is carried is, over each piece of the lift. */
interface Placed {
  readonly x: readonly Interval[];
  readonly z: readonly Interval[];
  readonly pitch: readonly Interval[];
}

/** What is carried against the tractor's own parts, all through the lift, pushed to either side by the side play. */
export function contactLine(lift: LiftQuestion): Line<Reason> {
  const id = 'contact.machines';
  const { implement, coupler, tractor } = lift.joint.setup;
  const carried = drawnParts(implement.outlines);
  const between = lift.structure.held === 'byFrame' ? drawnParts(coupler?.outlines) : [];
  const fixed = drawnParts(tractor.outlines);
  const tyres = ['tyreRadius', 'tyreInnerSpan'].every((key) => lift.joint.ledger.given(`tractor.${key}`));
  if (carried.length + between.length === 0 || (fixed.length === 0 && !tyres)) {
    return { id, kind: 'notChecked', needs: 'outlines' };
  }
  if (!lift.structure.linkage || !holdsUpper(lift)) return { id, kind: 'notChecked', needs: 'linkage' };
  return { id, kind: 'computed', check: contactCheck(lift, { carried, between, fixed, tyres }) };
}

interface Bodies {
  readonly carried: readonly Part[];
  readonly between: readonly Part[];
  readonly fixed: readonly Part[];
  readonly tyres: boolean;
}

function contactCheck(lift: LiftQuestion, bodies: Bodies): NamedCheck {
  const { formula, steps } = throughLift(lift.structure, 'stroke');
  const frames = [
    { parts: bodies.carried, steps: [steps.pins.x, steps.pins.z, steps.pitch] as const },
    { parts: bodies.between, steps: [steps.body.origin.x, steps.body.origin.z, steps.body.pitch] as const },
  ].filter(({ parts }) => parts.length > 0);
  const wanted = frames.flatMap((frame) => frame.steps);
  const run = openRun(formula, lift.leaves, wanted, pieces);
  const moving = frames.map(({ parts, steps: [x, z, pitch] }): Moving => {
    const [xs, zs, pitches] = [run.along(x), run.along(z), run.along(pitch)];
    const [nearX, nearZ, nearPitch] = [run.values(x), run.values(z), run.values(pitch)];
    const points = (values: readonly number[]): Interval[] => values.map(exactly);
    return {
      parts,
      along: (at) => ({ x: xs(at), z: zs(at), pitch: pitches(at) }),
      near: (at) => ({ x: points(nearX(at)), z: points(nearZ(at)), pitch: points(nearPitch(at)) }),
    };
  });
  const play = lift.joint.tractor('sidePlay');
  const stands = standing(lift, bodies);
  const gap = (at: Reading, where: (one: Moving) => Placed): Interval =>
    moving
      .flatMap((one) => {
        const placed = where(one);
        return one.parts.flatMap((part) => stands(at).map((obstacle) => leastGap(part, obstacle, placed, play(at))));
      })
      .reduce(lesser);
  const band = exactly(liftLimits.machineGap);
  return {
    id: 'contact.machines',
    unit: 'mm',
    scale: 20,
    measure: (at) => ({ quantity: gap(at, (one) => one.along(at)), low: band, high: null }),
    estimate: (at) => middle(gap(at, (one) => one.near(at))) - band.low,
    reads: (at) => [...wanted.map((step) => run.reads(step)(at)), play(at), stands(at)],
  };
}

/** Parts of one frame, with where it is over each piece of the lift, and at a few places at the middle of a box. */
interface Moving {
  readonly parts: readonly Part[];
  readonly along: (at: Reading) => Placed;
  readonly near: (at: Reading) => Placed;
}

/** The tractor's parts: those that are drawn, and its tyres as discs that stand on the ground below the axle. */
function standing({ joint }: LiftQuestion, { fixed, tyres }: Bodies): (at: Reading) => readonly Obstacle[] {
  const drawn = fixed.map(({ side, across, slack }): Obstacle => ({
    gapTo: (outline) => gapBetween(outline, side),
    across,
    nearer: slack,
    farther: slack,
  }));
  if (!tyres) return () => drawn;
  const radius = joint.tractor('tyreRadius');
  const span = joint.tractor('tyreInnerSpan');
  return (at) => {
    const inner = span(at).low / 2;
    const size = radius(at).high;
    const disc = {
      gapTo: (outline: Outline) => gapToDisc(outline, [0, size], size),
      nearer: 0,
      farther: 2 * width(radius(at)) + width(span(at)) / 2,
    };
    const right: Obstacle = { ...disc, across: { low: inner, high: Infinity } };
    const left: Obstacle = { ...disc, across: { low: -Infinity, high: -inner } };
    return [...drawn, right, left];
  };
}

function drawnParts(outlines: readonly OutlineRecord<string>[] | undefined): Part[] {
  return (outlines ?? []).flatMap(({ side, rear, plusMinusMm }) => {
    if (side === undefined) return [];
    const ys = rear?.map(([y]) => y);
    const across = ys === undefined ? null : { low: Math.min(...ys), high: Math.max(...ys) };
    const slack = plusMinusMm ?? 0;
    return [{ side, across, slack }];
  });
}

/** The least gap over the lift; two parts that pass beside one another are clear whatever the side view shows. */
function leastGap(part: Part, obstacle: Obstacle, where: Placed, sway: Interval): Interval {
  const beside = { low: apartSideways(part, obstacle, sway.high), high: apartSideways(part, obstacle, sway.low) };
  const slack = { low: -part.slack - obstacle.nearer, high: part.slack + obstacle.farther };
  const least = leastOver(part, obstacle, where);
  return add(greater(least, beside), slack);
}

function apartSideways(part: Part, obstacle: Obstacle, sway: number): number {
  if (part.across === null || obstacle.across === null) return -Infinity;
  return Math.max(obstacle.across.low - part.across.high - sway, part.across.low - sway - obstacle.across.high);
}

/**
 * The least over all pieces: a few are looked at first, and the others only where what moved between them could bring the
 * gap below the least so far.
 */
function leastOver(part: Part, obstacle: Obstacle, where: Placed): Interval {
  const count = where.x.length;
  const farthest = Math.max(...part.side.map(([a, b]) => Math.hypot(a, b)));
  const at = (piece: number): Interval => gapOver(part, obstacle, where, piece);
  const first = Array.from({ length: Math.ceil(count / stride) }, (_, i) => i * stride);
  const looked = new Map(first.map((piece) => [piece, at(piece)]));
  let least = [...looked.values()].reduce(lesser);
  for (let piece = 0; piece < count; piece += 1) {
    const near = Math.round(piece / stride) * stride;
    const known = looked.get(Math.min(near, first[first.length - 1] as number)) as Interval;
    const moved = movedBetween(where, piece, Math.min(near, first[first.length - 1] as number), farthest);
    if (known.low - moved < least.low) least = lesser(least, at(piece));
  }
  return least;
}

/** How far any corner can have moved from one piece to another. */
function movedBetween({ x, z, pitch }: Placed, from: number, to: number, farthest: number): number {
  const apart = (along: readonly Interval[]): number => {
    const [a, b] = [along[from] as Interval, along[to] as Interval];
    return Math.max(Math.abs(a.low - b.high), Math.abs(a.high - b.low));
  };
  return apart(x) + apart(z) + farthest * apart(pitch);
}

/** Over one piece: the gap in the middle of the place, less and more by how far the farthest corner can move from there. */
function gapOver(part: Part, obstacle: Obstacle, where: Placed, piece: number): Interval {
  const [x, z, pitch] = [where.x[piece], where.z[piece], where.pitch[piece]] as [Interval, Interval, Interval];
  const placed = turned(part.side, middle(pitch)).map(([a, b]): readonly [number, number] => [
    a + middle(x),
    b + middle(z),
  ]);
  const farthest = Math.max(...part.side.map(([a, b]) => Math.hypot(a, b)));
  const spread = Math.hypot(width(x), width(z)) / 2 + (farthest * width(pitch)) / 2;
  const gap = obstacle.gapTo(placed);
  return { low: gap - spread, high: gap + spread };
}
