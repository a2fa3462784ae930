import type { Station } from '../../engine/lift/index.ts';
import { middle } from '../../engine/geometry/index.ts';
import type { ShaftStation, ShaftSweep } from '../../engine/shaft/index.ts';
import { cropped } from '../parts/crop.ts';
import type { Bounds, Item, LineRole, Point, Stroke } from '../scene.ts';
import { shown, type Shown } from '../shown.ts';
import { seatsOf } from '../seats.ts';
import { lowerPinsOf } from '../lowerPins.ts';
import { body, hatch, line, outline, rectangle, run } from '../strokes.ts';
import { disc, plank } from '../side/parts/bars.ts';
import { placed, poseAt, poseAlong, seenFrom } from '../side/pose.ts';
import type { SideStage } from '../side/sideStage.ts';
import type { Driven } from './driven.ts';
import { faultsAt, isInQuestion } from './faults.ts';
import { halvesOf } from './halves.ts';
import { cross, guardItems, halvesItems, inView, splinedEnd } from './parts.ts';

/** Half the distances across that a top view is drawn from, the tractor’s middle at 0 [mm]. */
export interface Halfs {
  readonly pivots: number;
  readonly balls: number;
  readonly pins: number;
  /** Half of what is free between the tyres; null where nobody measured it. */
  readonly tyres: Shown | null;
}

/** Half distances across of links, pins and tyres. */
export function halfsOf({ setup, answer, hold }: SideStage): Halfs {
  const isHeldByCoupler = hold === 'uFrame' || hold === 'triangle';
  const front = lowerPinsOf(setup, answer, isHeldByCoupler ? 'coupler.front' : 'implement');
  const rear = lowerPinsOf(setup, answer, 'implement');
  const tyres = shown(answer, 'tractor.tyreInnerSpan', 0);
  return {
    pivots: shown(answer, 'tractor.lowerLinkPivotSpan', 440).value / 2,
    balls: seatsOf(answer, isHeldByCoupler ? 'front' : 'rear', front).centres.value / 2,
    pins: seatsOf(answer, 'rear', rear).centres.value / 2,
    tyres: tyres.standing === 'unknown' ? null : tyres,
  };
}

/** Points of a shaft from above: x rearward, and to the right of the middle, which is up [mm]. */
export interface TopShaft {
  readonly tractor: Point;
  /** The joint at the implement neither shifted nor swayed, at its leftmost and at its rightmost. */
  readonly middle: Point;
  readonly leftmost: Point;
  readonly rightmost: Point;
  readonly stub: Point;
  readonly input: Point;
  /** Turn of the input shaft to the right as it goes forward [deg]. */
  readonly yaw: number;
}

/** A shaft from above at a station. */
export function topShaftOf({ setup }: SideStage, shaft: ShaftSweep, station: ShaftStation): TopShaft {
  const { stubAside, inputAside } = shaft;
  const { tractorCross, implementCross, input, stub } = station;
  const x = implementCross[0];
  const yaw = yawOf(setup.implement.inputYaw);
  const reach = Math.hypot(input[0] - implementCross[0], input[1] - implementCross[1]);
  return {
    tractor: [tractorCross[0], stubAside],
    middle: [x, inputAside],
    leftmost: [x, stubAside + station.leftmost],
    rightmost: [x, stubAside + station.rightmost],
    stub: [stub[0], stubAside],
    input: [input[0], inputAside - reach * Math.tan((yaw * Math.PI) / 180)],
    yaw,
  };
}

function yawOf(value: SideStage['setup']['implement']['inputYaw']): number {
  if (value === undefined || !('bound' in value)) return 0;
  return middle(value.bound);
}

/** A part and its mirror image across the tractor’s middle. */
function bothSides(strokes: readonly Stroke[]): Stroke[] {
  return strokes.flatMap((stroke) => [stroke, { ...stroke, points: acrossMiddle(stroke.points) }]);
}

function acrossMiddle(points: readonly Point[]): Point[] {
  return points.map(([x, y]): Point => [x, -y]);
}

/** Rear axle, tyres and housing from above, for place only, cropped to the picture. */
export function tractorAbove(stage: SideStage, { tyres }: Halfs, box: Bounds): Item[] {
  const radius = stage.tyre.value;
  const inner = tyres === null ? null : tyres.value / 2;
  const role: LineRole = tyres?.standing === 'measured' ? 'ghost' : 'hidden';
  const rear = stage.sweep.topPivot[0] - 42;
  const axle = inner ?? box.top;
  const strokes = [
    ...bothSides([
      run('ghost', [
        [box.left, 170],
        [rear - 46, 170],
        [rear, 120],
        [rear, 0],
      ]),
      run('ghost', [
        [-65, 170],
        [-65, axle],
        [65, axle],
        [65, 170],
      ]),
      ...(inner === null ? [] : [outline(role, rectangle([-radius, inner], [radius, box.top + 1e3]))]),
    ]),
  ];
  return [...strokes.flatMap((stroke) => cropped(stroke, box)), line('centre', [0, -axle], [0, axle])];
}

/** Lower links and what stands behind their ends, from above. */
export function linksAbove({ sweep }: SideStage, { pivots, balls, pins }: Halfs, station: Station): Item[] {
  const x = sweep.lowerPivot[0];
  const isApart = Math.hypot(station.pins[0] - station.ball[0], pins - balls) > 1;
  return [1, -1].flatMap((side): Item[] => {
    const ball: Point = [station.ball[0], side * balls];
    const pin: Point = [station.pins[0], side * pins];
    return [
      ...(isApart ? [plank('thin', ball, pin, 14)] : []),
      plank('thin', [x, side * pivots], ball, 14),
      disc('thin', [x, side * pivots], 18),
      disc('thin', ball, 24),
      disc('heavy', pin, 14),
    ];
  });
}

/** The posts on both sides of the opening of a coupler, cut at the height of the shaft; null where the opening is not known. */
export function postsAbove(
  { shaft }: SideStage,
  { origin, framePitch }: Station,
  at: ShaftStation,
): { items: Item[]; x: number; half: number } | null {
  const window = shaft?.window ?? null;
  if (window === null) return null;
  const pose = poseAt(origin, framePitch);
  const [a, b] = [seenFrom(pose, at.tractorCross), seenFrom(pose, at.implementCross)];
  const share = (window.behind - a[0]) / (b[0] - a[0]);
  const [x] = placed(pose, [window.behind, a[1] + share * (b[1] - a[1])]);
  const half = window.width / 2;
  const cut = rectangle([x - 18, half], [x + 18, half + 40]);
  const items = [cut, acrossMiddle(cut)].flatMap((corners, i) => [
    body('thin', corners),
    hatch('thin', corners, i === 1),
  ]);
  const bar = [-16, 16].map((off) => line('hidden', [x + off, -half], [x + off, half]));
  return { items: [...bar, ...items], x, half };
}

/** The implement from above, for place only: arms from its pins to a body as wide as the picture allows. */
export function implementAbove({ pins }: Halfs, { pins: [x] }: Station, { input }: TopShaft, reach: number): Item[] {
  const front = Math.max(input[0] + 20, x + 120);
  const back = Math.max(front + 120, x + reach);
  const half = pins + 90;
  return [
    ...[1, -1].map((side) => plank('heavy', [x, side * pins], [front + 20, side * pins], 20)),
    body('thin', [
      [front + 40, -half],
      [back, -half],
      [back, half],
      [front + 40, half],
      [front, half - 40],
      [front, 40 - half],
    ]),
  ];
}

/** The shaft from above: hatched where shift and sway take it, its outermost lines, and both halves in the middle. */
export function shaftAbove(driven: Driven, station: ShaftStation, top: TopShaft): Item[] {
  const { tractor, middle: rest, leftmost, rightmost } = top;
  const role: LineRole = isInQuestion(driven.answer, 'shaft.bottoming', 'shaft.overlap', 'shaft.apart')
    ? 'heavy'
    : 'thin';
  const faults = faultsAt(driven, station);
  const isOver = { tractor: faults.over.tractor !== null, implement: faults.over.implement !== null };
  return [
    hatch('thin', [tractor, leftmost, rightmost]),
    line('centre', tractor, leftmost),
    line('centre', tractor, rightmost),
    line('centre', leftmost, rightmost),
    ...inView(poseAt(tractor, 0), splinedEnd('thin', role)),
    ...inView(poseAt(rest, 180 - top.yaw), splinedEnd('thin', role)),
    ...halvesAbove(driven.shaft, station, top, role),
    ...cross(isOver.tractor ? 'misfit' : 'heavy', tractor),
    ...cross(isOver.implement ? 'misfit' : 'heavy', rest),
    dot('stub', top.stub),
    dot('input', top.input),
  ];
}

/** A point that stub or input shaft was measured at. */
function dot(point: 'stub' | 'input', centre: Point): Item {
  return { kind: 'circle', role: 'thin', centre, radius: 5, fill: 'line', point };
}

/** The halves as long as they look from above, with the overlap that they have in the middle. */
function halvesAbove(
  { closedLength, closedOverlap, guard }: ShaftSweep,
  station: ShaftStation,
  { tractor, middle: rest }: TopShaft,
  role: LineRole,
): Item[] {
  if (closedLength === null || closedOverlap === null) return [line('heavy', tractor, rest)];
  const [dx, dy] = [rest[0] - tractor[0], rest[1] - tractor[1]];
  const distance = Math.hypot(dx, dy, station.implementCross[1] - station.tractorCross[1]);
  const overlap = closedOverlap - (distance - closedLength);
  const halves = halvesOf({ length: Math.hypot(dx, dy), overlap, toBottom: distance - closedLength });
  const radii = guard === null ? null : { tube: guard.tube / 2, cone: guard.cone / 2, coneLength: guard.coneLength };
  return inView(poseAlong(tractor, rest), [
    ...halvesItems(halves, { role, isShort: overlap < 0, bottoms: distance < closedLength }),
    ...(radii === null ? [] : guardItems(radii, halves.length)),
  ]);
}
