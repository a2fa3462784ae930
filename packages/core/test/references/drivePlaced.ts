import type { LiftCase } from '../properties/generateLift.ts';
import type { ShaftCase } from '../properties/generateShaft.ts';
import { nested, pitched, placedIn, pointedIn, slid, yawed, type Move, type Spot } from './rigid.ts';
import { ballAt, placed, rootOf, upperAt, type Ball, type Body, type SideView } from './sideView.ts';

const rad = Math.PI / 180;
const figure = (of: Readonly<Record<string, number>>, key: string): number => of[key] ?? 0;
const isFramed = ({ held }: LiftCase): boolean => held === 'uFrame' || held === 'triangle';

/** A linkage with the drive on it, its top link as the working height sets it. */
export interface Rig {
  readonly one: ShaftCase;
  readonly view: SideView;
  readonly lowest: number;
  readonly highest: number;
}

/** The drive at one height of the balls. */
export interface PlacedDrive {
  readonly ball: Ball;
  readonly body: Body;
  /** The body that the top link holds, and the implement, as moves from the tractor's frame; neither swayed nor shifted. */
  readonly bodyFrame: Move;
  readonly implementFrame: Move;
  readonly tractorCross: Spot;
  /** The tractor's stub, rearward, and the input shaft, rearward. */
  readonly stubAxis: Spot;
  readonly inputAxis: Spot;
  /** Cross centre at the implement, shifted and swayed to the right by so much. */
  readonly implementCross: (shift: number, sway: number) => Spot;
}

/** Turn of the implement in a coupler whose two hooks hold it: from the line of its pins to that of the hooks. */
function turnInHooks({ held, coupler, implement }: LiftCase): number {
  if (held !== 'uFrame') return 0;
  const hooks = Math.atan2(figure(coupler, 'topHookHeight'), figure(coupler, 'topHookBehind'));
  return hooks - Math.atan2(figure(implement, 'mastHeight'), figure(implement, 'mastSetback'));
}

const hooksOf = ({ coupler }: LiftCase) => ({ x: figure(coupler, 'hookBehind'), z: figure(coupler, 'hookRise') });

/** The top link that stands the implement level with its pins at their working height, found from the loop itself. */
function workTopLink(lift: LiftCase): number | null {
  const { sideView: view, implement } = lift;
  const wanted = figure(implement, 'workPinHeight');
  const pitch = -turnInHooks(lift);
  const originAt = (height: number) => {
    const ball = ballAt(view, height);
    if (ball === null) return null;
    return view.onLink === null ? ball.at : placed(ball.at, view.onLink, ball.angle);
  };
  const pinsAt = (height: number): number => {
    const origin = originAt(height);
    if (origin === null) return NaN;
    return isFramed(lift) ? placed(origin, hooksOf(lift), pitch).z : origin.z;
  };
  const far = 0.95 * view.link;
  const height = rootOf((z) => pinsAt(z) - wanted, view.pivot.z - far, view.pivot.z + far);
  const origin = height === null ? null : originAt(height);
  if (origin === null) return null;
  const upper = placed(origin, view.upper, pitch);
  return Math.hypot(upper.x - view.topPivot.x, upper.z - view.topPivot.z);
}

/** Sets a case up; null where its linkage does not close well all through the stroke. */
export function rigOf(one: ShaftCase): Rig | null {
  const topLink = workTopLink(one.lift);
  if (topLink === null) return null;
  const view = { ...one.lift.sideView, topLink };
  const lowest = figure(one.lift.tractor, 'ballHeightLow');
  const highest = figure(one.lift.tractor, 'ballHeightHigh');
  const closes = Array.from({ length: 21 }, (_, i) => {
    const ball = ballAt(view, lowest + (i / 20) * (highest - lowest));
    const body = ball === null ? null : upperAt(view, ball);
    return body !== null && Math.abs(body.lean) < 0.95;
  });
  return closes.every((here) => here) ? { one, view, lowest, highest } : null;
}

/** Places everything with the balls at a height. */
export function placeAt({ one: { lift, drive }, view }: Rig, height: number): PlacedDrive {
  const ball = ballAt(view, height);
  const body = ball === null ? null : upperAt(view, ball);
  if (ball === null || body === null) throw new Error('does not close');
  const bodyFrame = nested(slid([body.origin.x, 0, body.origin.z]), pitched(body.pitch));
  const hooks = hooksOf(lift);
  const implementFrame = isFramed(lift)
    ? nested(bodyFrame, slid([hooks.x, 0, hooks.z]), pitched(turnInHooks(lift)))
    : bodyFrame;
  const inputFrame = nested(
    implementFrame,
    slid([drive.inputBehind, drive.inputAside, drive.inputAbove]),
    pitched(drive.inputAngle * rad),
    yawed(-(drive.inputYaw ?? 0) * rad),
  );
  const cross = placedIn(inputFrame, [-(drive.inputGrooveToEnd + drive.endToCrossRear), 0, 0]);
  return {
    ball,
    body,
    bodyFrame,
    implementFrame,
    tractorCross: [drive.stubBehind + drive.stubGrooveToEnd + drive.endToCrossFront, drive.stubAside, drive.stubHeight],
    stubAxis: [1, 0, 0],
    inputAxis: pointedIn(inputFrame, [1, 0, 0]),
    implementCross: (shift, sway) => [cross[0], cross[1] + shift + sway, cross[2]],
  };
}
