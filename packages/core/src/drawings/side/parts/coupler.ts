import type { Station } from '../../../engine/lift/index.ts';
import type { Item, LineRole, Point, Stroke } from '../../scene.ts';
import { lineOf, shown, type Shown } from '../../shown.ts';
import { arc, body } from '../../strokes.ts';
import { poseAlong, poseAt, seenFrom, type Pose } from '../pose.ts';
import type { SideStage } from '../sideStage.ts';
import { barBetween, disc } from './bars.ts';

/** A part that keeps its shape: its strokes and circles in its own frame, and where that frame stands at a height. */
export interface RigidPart {
  readonly items: readonly Item[];
  readonly poseAt: (station: Station) => Pose;
}

/** What stands between the link ends and the implement, the balls its origin; null without a coupler. */
export function couplerPart(stage: SideStage): RigidPart | null {
  const { setup, sweep } = stage;
  const first = sweep.stations[0] as Station;
  const given = (setup.coupler?.outlines ?? []).flatMap(({ side }) => (side === undefined ? [] : [body('thin', side)]));
  switch (stage.hold) {
    case 'uFrame':
    case 'triangle': {
      const pose = (station: Station): Pose => poseAt(station.origin, station.framePitch);
      const upper = seenFrom(pose(first), first.topEnd);
      const frame = stage.hold === 'uFrame' ? rigidFrame(stage, upper) : slimFrame(stage, upper);
      return { items: given.length === 0 ? frame : [...given, ...hooksOf(stage)], poseAt: pose };
    }
    case 'hookEnds':
    case 'bar': {
      const pose = (station: Station): Pose => poseAlong(sweep.lowerPivot, station.ball);
      const onLink = ({ ball }: Station): Pose => ({ ...pose(first), at: ball });
      const end = seenFrom(onLink(first), first.origin);
      return { items: linkEnd(stage, end), poseAt: (station) => ({ ...pose(station), at: station.ball }) };
    }
    case 'clawEnds':
      return {
        items: claw(shown(stage.answer, 'coupler.clawSize', 56)),
        poseAt: (station) => poseAlong(station.ball, [station.ball[0] + 1, station.ball[1]]),
      };
    case 'bareBalls':
      return null;
  }
}

interface Hooks {
  readonly lower: Point;
  readonly top: Point;
  readonly seat: Shown;
  readonly throat: Shown;
  readonly role: LineRole;
}

function hooksAt({ answer }: SideStage): Hooks {
  const read = (key: string, forPlace: number): Shown => shown(answer, `coupler.${key}`, forPlace);
  const [behind, rise] = [read('hookBehind', 115), read('hookRise', 0)];
  const [topBehind, topHeight] = [read('topHookBehind', 0), read('topHookHeight', 460)];
  return {
    lower: [behind.value, rise.value],
    top: [behind.value + topBehind.value, rise.value + topHeight.value],
    seat: read('hookSeat', 24),
    throat: read('topHookThroat', 24),
    role: lineOf('thin', behind, topHeight),
  };
}

function hooksOf(stage: SideStage): Item[] {
  const { lower, top, seat, throat, role } = hooksAt(stage);
  return [hook(role, lower, seat.value / 2), hook(role, top, throat.value / 2)];
}

/** A rigid frame from the side: a post between front pins and hooks, lugs before it, hooks behind it. */
function rigidFrame(stage: SideStage, upper: Point): Item[] {
  const { lower, top, role } = hooksAt(stage);
  const middle = lower[0] / 2;
  const half = Math.max(12, Math.min(30, middle - 14));
  const post: Point[] = [
    [middle - half, -52],
    [middle + half, -52],
    [middle + half, Math.max(upper[1], top[1]) + 34],
    [middle - half, Math.max(upper[1], top[1]) + 34],
  ];
  return [
    ...lug(role, [0, 0], middle, 30),
    ...lug(role, upper, middle, 24),
    ...hooksOf(stage),
    body(role, post),
    ...[lower, top].map((seat) => body(role, plate(middle, seat))),
  ];
}

/** The plate that a hook is welded to, on the post. */
function plate(middle: number, [x, z]: Point): Point[] {
  const reach = Math.max(8, (x - middle) * 0.62);
  return [
    [middle - 8, z - 44],
    [middle + reach, z - 44],
    [middle + reach, z + 18],
    [middle - 8, z + 18],
  ];
}

/** A triangular frame from the side: slim, leaning over nothing but its own pins. */
function slimFrame(stage: SideStage, upper: Point): Item[] {
  const { lower, role } = hooksAt(stage);
  const foot = Math.max(46, lower[0] * 0.75);
  return [
    ...lug(role, [0, 0], foot / 2, 30),
    ...lug(role, upper, foot / 2, 24),
    body(role, [
      [10, -46],
      [foot, -46],
      [Math.min(foot, upper[0] + 46), upper[1] + 34],
      [upper[0] + 10, upper[1] + 34],
    ]),
  ];
}

function lug(role: LineRole, pin: Point, to: number, radius: number): Item[] {
  return barBetween(role, [to, pin[1]], pin, { half: radius * 0.8, eyes: [radius * 0.8, radius] });
}

/** A piece pinned into a link end that carries a hook, or the bar, at its rear end. */
function linkEnd(stage: SideStage, end: Point): Item[] {
  const { answer, hold } = stage;
  const behind = shown(answer, 'coupler.hookBehind', end[0]);
  const role = lineOf('thin', behind);
  const arm = barBetween(role, [0, 0], end, { half: 18, eyes: [26, 20] }).slice(0, 2);
  if (hold === 'bar') {
    const bar = shown(answer, 'coupler.barDiameter', 50);
    return [...arm, disc(lineOf('thin', bar, behind), end, bar.value / 2)];
  }
  return [...arm, hook(role, end, shown(answer, 'coupler.hookSeat', 24).value / 2)];
}

/** A hook from the side, open upward: its back, its seat around the pin, and its lip. */
function hook(role: LineRole, [x, z]: Point, seat: number): Stroke {
  const wall = seat + 15;
  const shape: Point[] = [
    [-wall - 18, -wall],
    ...arc([wall - 12, -wall + 12], 12, -90, 0),
    [wall, seat * 0.9],
    [seat + 5, seat * 1.7],
    [seat, seat * 0.7],
    ...arc([0, 0], seat, 0, -180),
    [-seat, seat * 2 + 8],
    [-wall - 18, seat * 2 + 8],
  ];
  return body(
    role,
    shape.map(([dx, dz]): Point => [x + dx, z + dz]),
  );
}

/** A claw on the link end, open upward, around the loose ball. */
function claw(size: Shown): Item[] {
  const radius = size.value / 2;
  const role = lineOf('thin', size);
  return [body(role, [...arc([0, 0], radius + 14, -200, 20), ...arc([0, 0], radius, 20, -200)])];
}
