import type { OutlineRecord } from '../../records/index.ts';
import {
  add,
  gapBetween,
  greater,
  lesser,
  middle,
  turned,
  width,
  type Interval,
  type Outline,
} from '../geometry/index.ts';
import type { Line, NamedCheck, Reason } from '../findings/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import { liftLimits } from './limits.ts';
import { holdsUpper, type LiftQuestion } from './question.ts';
import { openRun } from './run.ts';
import { throughLift, type LiftSteps } from './throughLift.ts';

/** Pieces that the lift is cut into here: a gap is bounded less tightly over a piece than a margin of one formula. */
const pieces = 96;
/** Corners of the polygon that stands around a tyre. */
const tyreCorners = 24;
/** Every so manieth piece is looked at first. */
const stride = 8;

/** A part in both views: its side view, how far it reaches sideways where known, and its drawn tolerance [mm]. */
interface Part {
  readonly side: Outline;
  readonly across: Interval | null;
  /** How much nearer, and how much farther, the part can stand than it is drawn. */
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
  const wanted = [steps.pins.x, steps.pins.z, steps.pitch, ...frameSteps(steps)];
  const run = openRun(formula, lift.leaves, wanted, pieces);
  const placed = ([x, z, pitch]: readonly [number, number, number]) => {
    const along = [run.along(x), run.along(z), run.along(pitch)] as const;
    return (at: Reading): Placed => ({ x: along[0](at), z: along[1](at), pitch: along[2](at) });
  };
  const implementAt = placed([steps.pins.x, steps.pins.z, steps.pitch]);
  const frameAt = placed(frameSteps(steps));
  const play = lift.joint.tractor('sidePlay');
  const stands = standing(lift, bodies);
  const gap: Term = (at) => {
    const obstacles = stands(at);
    const sway = play(at);
    const least = (parts: readonly Part[], where: Placed): Interval[] =>
      parts.flatMap((part) => obstacles.map((obstacle) => leastGap(part, obstacle, where, sway)));
    return [...least(bodies.carried, implementAt(at)), ...least(bodies.between, frameAt(at))].reduce(lesser);
  };
  const band = { low: liftLimits.machineGap, high: liftLimits.machineGap };
  return {
    id: 'contact.machines',
    unit: 'mm',
    scale: 20,
    measure: (at) => ({ quantity: gap(at), low: band, high: null }),
    estimate: (at) => middle(gap(middles(at))) - band.low,
    reads: (at) => [...wanted.map((step) => run.reads(step)(at)), play(at), stands(at)],
  };
}

function middles(at: Reading): Reading {
  return (index) => {
    const value = middle(at(index));
    return { low: value, high: value };
  };
}

function frameSteps({ body }: LiftSteps): [number, number, number] {
  return [body.origin.x, body.origin.z, body.pitch];
}

/** The tractor's parts: those that are drawn, and its tyres as polygons around their circles. */
function standing({ joint }: LiftQuestion, { fixed, tyres }: Bodies): (at: Reading) => readonly Part[] {
  if (!tyres) return () => fixed;
  const radius = joint.tractor('tyreRadius');
  const span = joint.tractor('tyreInnerSpan');
  return (at) => {
    const inner = span(at).low / 2;
    const side = around(radius(at).high);
    const excess = radius(at).high * (1 / Math.cos(Math.PI / tyreCorners) - 1);
    const drawn = { side, nearer: 0, farther: excess + 2 * width(radius(at)) + width(span(at)) / 2 };
    const right: Part = { ...drawn, across: { low: inner, high: Infinity } };
    const left: Part = { ...drawn, across: { low: -Infinity, high: -inner } };
    return [...fixed, right, left];
  };
}

/** A polygon whose sides touch a wheel that stands on the ground below the axle. */
function around(radius: number): Outline {
  const corner = radius / Math.cos(Math.PI / tyreCorners);
  return Array.from({ length: tyreCorners }, (_, i) => {
    const angle = (2 * Math.PI * i) / tyreCorners;
    return [corner * Math.cos(angle), radius + corner * Math.sin(angle)] as const;
  });
}

function drawnParts(outlines: readonly OutlineRecord<string>[] | undefined): Part[] {
  return (outlines ?? []).flatMap(({ side, rear, plusMinusMm }) => {
    if (side === undefined) return [];
    const ys = rear?.map(([y]) => y);
    const across = ys === undefined ? null : { low: Math.min(...ys), high: Math.max(...ys) };
    const slack = plusMinusMm ?? 0;
    return [{ side, across, nearer: slack, farther: slack }];
  });
}

/** The least gap over the lift; two parts that pass beside one another are clear whatever the side view shows. */
function leastGap(part: Part, obstacle: Part, where: Placed, sway: Interval): Interval {
  const beside = { low: apartSideways(part, obstacle, sway.high), high: apartSideways(part, obstacle, sway.low) };
  const slack = { low: -part.nearer - obstacle.nearer, high: part.farther + obstacle.farther };
  const least = leastOver(part, obstacle, where);
  return add(greater(least, beside), slack);
}

function apartSideways(part: Part, obstacle: Part, sway: number): number {
  if (part.across === null || obstacle.across === null) return -Infinity;
  return Math.max(obstacle.across.low - part.across.high - sway, part.across.low - sway - obstacle.across.high);
}

/**
 * The least over all pieces: a few are looked at first, and the others only where what moved between them could bring the
 * gap below the least so far.
 */
function leastOver(part: Part, obstacle: Part, where: Placed): Interval {
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
function gapOver(part: Part, obstacle: Part, where: Placed, piece: number): Interval {
  const [x, z, pitch] = [where.x[piece], where.z[piece], where.pitch[piece]] as [Interval, Interval, Interval];
  const placed = turned(part.side, middle(pitch)).map(([a, b]): readonly [number, number] => [
    a + middle(x),
    b + middle(z),
  ]);
  const farthest = Math.max(...part.side.map(([a, b]) => Math.hypot(a, b)));
  const spread = Math.hypot(width(x), width(z)) / 2 + (farthest * width(pitch)) / 2;
  const gap = gapBetween(placed, obstacle.side);
  return { low: gap - spread, high: gap + spread };
}
