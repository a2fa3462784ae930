import { beam, crossBeam } from '../parts/beam.ts';
import { crossBar, frameInReceiver, jaws, legAt, upperBeam } from '../parts/counterparts.ts';
import { couplerFront } from '../parts/couplerFront.ts';
import { lowerHooks, rigidFrame } from '../parts/frame.ts';
import { claws, linkBalls, linkStubs, topLinkBall } from '../parts/linkEnds.ts';
import { footOf, mast, upperPin } from '../parts/mast.ts';
import { bothSides } from '../parts/mirror.ts';
import { lowerPins } from '../parts/pins.ts';
import type { Item, LineRole } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { body, rectangle } from '../strokes.ts';

/** What holds the implement, farther from the eye: hooks, balls, claws, a frame or a bar. */
export function holder(stage: Stage): Item[] {
  const { seats, upper } = stage;
  if (stage.frame !== null) return [];
  if (stage.bar !== null) return [...crossBar(stage.bar), ...topLinkBall(upper)];
  if (seats.kind === 'hooks' && upper.hook !== null) return [...rigidFrame(seats, upper.hook), ...lowerHooks(seats)];
  if (seats.kind === 'hookEnds') return [...linkStubs(seats), ...lowerHooks(seats), ...topLinkBall(upper)];
  return [...(seats.kind === 'claws' ? claws(seats) : linkBalls(seats)), ...topLinkBall(upper)];
}

/** Parts at fault, drawn in the accent. */
export interface Faults {
  readonly upper: boolean;
  readonly lower: boolean;
}

/** The implement, nearest to the eye; or the front of the coupler, where it meets the tractor. */
export function implement(stage: Stage, half: number, faults: Faults): Item[] {
  if (stage.meeting === 'front') {
    const frame = couplerFront(stage.pins, stage.upper);
    return [
      ...frame,
      ...accented(lowerPins(stage.pins), faults.lower),
      ...accented([upperPin(stage.upper)], faults.upper),
    ];
  }
  if (stage.frame !== null) return [...crossBeam(half), ...frameInReceiver(stage.frame), ...feet(stage.frame)];
  if (stage.bar !== null) {
    const foot = stage.bar.span.value / 2 - 10;
    return [...jaws(stage.bar), ...upperBeam(half, 74), ...accented(mast(stage.upper, foot), faults.upper)];
  }
  const pins = accented(lowerPins(stage.pins), faults.lower);
  return [...pins, ...crossBeam(half), ...accented(mast(stage.upper, footOf(stage.pins)), faults.upper)];
}

/** Plates from the receiver's feet down to the beam, for place only. */
function feet({ receiverWidth, receiverAngle }: NonNullable<Stage['frame']>): Item[] {
  const foot = legAt(receiverWidth.value, receiverAngle.value, 0);
  return bothSides([body('thin', rectangle([foot + 4, beam.top], [foot + 32, 0]))]);
}

/** The pins in the accent, where they are at fault; a pin that nobody measured stays dashed. */
function accented(items: readonly Item[], isFaulty: boolean): Item[] {
  if (!isFaulty) return [...items];
  return items.map((item) => (isPin(item) ? { ...item, role: 'misfit' as LineRole } : item) as Item);
}

function isPin(item: Item): boolean {
  return item.kind === 'stroke' && item.part === 'pin' && item.role !== 'hidden';
}
