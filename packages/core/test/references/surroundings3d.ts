import type { ShaftCase } from '../properties/generateShaft.ts';
import type { PlacedDrive, Rig } from './drivePlaced.ts';
import { barOf, boxOf, gapTo, type Gap, type Guard, type Thing } from './guardGap.ts';
import { nested, placedIn, slid, undone, type Spot } from './rigid.ts';
import { spaced } from './engineAt.ts';

/** What a shaft passes, taken by itself. */
export type Kind = 'topLink' | 'lowerLinks' | 'window' | 'drawbar';

const wide = 700;

/** Everything of one kind beside the shaft, with the links swayed to the right by so much. */
export function thingsOf(rig: Rig, at: PlacedDrive, kind: Kind, sway: number): Thing[] {
  switch (kind) {
    case 'topLink':
      return [topLinkOf(rig, at, sway)];
    case 'lowerLinks':
      return lowerLinksOf(rig, at, sway);
    case 'window':
      return windowOf(rig.one, at, sway);
    default:
      return drawbarOf(rig.one);
  }
}

function topLinkOf({ one, view }: Rig, { body }: PlacedDrive, sway: number): Thing {
  const pivot: Spot = [view.topPivot.x, 0, view.topPivot.z];
  return barOf(pivot, [body.upper.x, sway, body.upper.z], one.beside.topLinkRadius);
}

function lowerLinksOf({ one: { lift }, view }: Rig, { ball }: PlacedDrive, sway: number): Thing[] {
  const { lowerLinkPivotSpan = 0, lowerLinkThickness = 0 } = lift.tractor;
  const halfAtBall = ((lift.implement['shoulderSpan'] ?? 0) + 35) / 2;
  return [-1, 1].map((side) => {
    const pivot: Spot = [view.pivot.x, (side * lowerLinkPivotSpan) / 2, view.pivot.z];
    return barOf(pivot, [ball.at.x, side * halfAtBall + sway, ball.at.z], lowerLinkThickness / 2);
  });
}

/** The four edges of the opening, each with everything beyond it in the plane of the frame. */
function windowOf({ beside }: ShaftCase, { bodyFrame }: PlacedDrive, sway: number): Thing[] {
  const frame = nested(slid([0, sway, 0]), bodyFrame);
  const back = undone(frame);
  const { windowBehind, windowTop, windowBottom, windowWidth } = beside;
  const inFrame = (nearest: (y: number, z: number) => readonly [y: number, z: number]): Thing => ({
    half: 0,
    nearest: (to) => {
      const [, y, z] = placedIn(back, to);
      return placedIn(frame, [windowBehind, ...nearest(y, z)]);
    },
  });
  return [
    inFrame((y, z) => [y, Math.max(z, windowTop)]),
    ...(windowBottom === null ? [] : [inFrame((y, z) => [y, Math.min(z, windowBottom)])]),
    inFrame((y, z) => [Math.max(y, windowWidth / 2), z]),
    inFrame((y, z) => [Math.min(y, -windowWidth / 2), z]),
  ];
}

function drawbarOf({ beside: { drawbar } }: ShaftCase): Thing[] {
  if (drawbar === null) return [];
  const { from, to, bottom, top, left, right, fromBehind } = drawbar;
  const [low, high] = fromBehind ? [left, right] : [-wide, wide];
  return [boxOf([from, low, bottom], [to, high, top])];
}

/** Distance between the guard and everything of one kind at one height, over shifts and sways. */
export function gapOver(rig: Rig, at: PlacedDrive, kind: Kind, count: number): Gap {
  const { drive, beside } = rig.one;
  let least: Gap = { gap: Infinity, besideTube: false };
  for (const swayShare of spaced(count)) {
    const sway = (2 * swayShare - 1) * drive.sway;
    const things = thingsOf(rig, at, kind, sway);
    for (const shiftShare of spaced(count)) {
      const shift = -drive.shiftLeft + shiftShare * (drive.shiftLeft + drive.shiftRight);
      const guard: Guard = {
        from: at.tractorCross,
        to: at.implementCross(shift, sway),
        tube: beside.guardTubeDiameter / 2,
        cone: beside.guardConeDiameter / 2,
        coneLength: beside.guardConeLength,
      };
      for (const thing of things) {
        const found = gapTo(guard, thing);
        if (found.gap < least.gap) least = found;
      }
    }
  }
  return least;
}
