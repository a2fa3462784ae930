import type { Station } from '../../../engine/lift/index.ts';
import { cropped } from '../../parts/crop.ts';
import type { Bounds, Item, LineRole, Point, Stroke } from '../../scene.ts';
import { lineOf, shown, type Shown } from '../../shown.ts';
import { body } from '../../strokes.ts';
import { poseAt, seenFrom, type Pose } from '../pose.ts';
import type { SideStage } from '../sideStage.ts';
import type { RigidPart } from './coupler.ts';
import { barBetween, disc, plank, type BarSize } from './bars.ts';

const mastPlate: BarSize = { half: 15, eyes: [34, 24] };
const frame = 21;
const brace = 8;

/** The implement with its lower pins as origin: outlines where they were given, else a plain body for place only. */
export function implementPart(stage: SideStage): RigidPart {
  const pose = (station: Station): Pose => poseAt(station.pins, station.pitch);
  const first = stage.sweep.stations[0] as Station;
  const mast = seenFrom(pose(first), first.mast);
  const given = (stage.setup.implement.outlines ?? []).flatMap(({ side }) =>
    side === undefined ? [] : [body('heavy', side)],
  );
  const items = given.length > 0 ? [...given, ...headstock(stage, mast)] : plainImplement(stage, mast);
  return { items, poseAt: pose };
}

/** Whether the implement is drawn from outlines of its own. */
export function hasOutlines({ setup }: SideStage): boolean {
  return (setup.implement.outlines ?? []).some(({ side }) => side !== undefined);
}

function plainImplement(stage: SideStage, mast: Point): Item[] {
  const { centre, lowest } = stage;
  const block = blockOf([centre.behind.value, centre.above.value], lowest);
  const middle = Math.min(block.top - 70, Math.max(block.bottom + cutOf(block) / 3 + frame, 0));
  const role = lineOf('thin', centre.behind);
  return [
    plank(role, topOf(stage, mast), [block.left + 40, block.top], brace),
    plank('heavy', [0, 0], [block.left + 26, middle], frame),
    body(role, silhouette(block, lowest)),
    ...headstock(stage, mast),
  ];
}

/** The plates from the lower pins up to the upper pin; the receiver of a triangular frame slides over it behind its pins. */
function headstock(stage: SideStage, mast: Point): Item[] {
  const height: Shown = shown(stage.answer, 'implement.mastHeight', mast[1]);
  const role: LineRole = lineOf('heavy', height);
  const top = topOf(stage, mast);
  return stage.hold === 'triangle'
    ? [plank('heavy', [0, -30], top, mastPlate.half), disc('heavy', [0, 0], mastPlate.eyes[0])]
    : barBetween(role, [0, 0], mast, mastPlate);
}

/** The upper end of the headstock: the upper pin, or the top of a receiver, which holds by its own slope. */
function topOf({ hold }: SideStage, mast: Point): Point {
  return hold === 'triangle' ? [mast[0] * 0.5, mast[1] * 0.94] : mast;
}

/** A block that balances on the centre of gravity and reaches as far back as the lowest part. */
function blockOf([behind, above]: Point, lowest: Point | null): Bounds {
  const left = Math.min(Math.max(70, Math.min(behind * 0.35, 210)), lowest === null ? Infinity : lowest[0] - 110);
  const right = Math.max(2 * behind - left, left + 240, lowest === null ? -Infinity : lowest[0] + 70);
  const half = Math.min(210, Math.max(90, (right - left) * 0.2));
  const bottom = lowest === null ? above - half : Math.max(above - half, lowest[1]);
  return { left, right, bottom: Math.min(bottom, above - 40), top: above + half };
}

/** How much is cut off a corner of the block [mm]. */
function cutOf({ top, bottom }: Bounds): number {
  return Math.min(60, (top - bottom) / 4);
}

/** The block with its corners cut, drawn out to the lowest part where that hangs below it. */
function silhouette(block: Bounds, lowest: Point | null): Point[] {
  const { left, right, bottom, top } = block;
  const cut = cutOf(block);
  const base: Point[] =
    lowest === null || lowest[1] > bottom - 1
      ? [
          [left + cut, bottom],
          [right - cut, bottom],
        ]
      : [
          [lowest[0] - 60, lowest[1]],
          [lowest[0] + 25, lowest[1]],
        ];
  return [
    [left, bottom + cut / 3],
    ...base,
    [right, bottom + cut],
    [right, top - cut],
    [right - cut, top],
    [left + cut, top],
    [left, top - cut],
  ];
}

/** What stands above the ground as it is, and what is below it dashed, down to a floor. */
export function cutAtGround(stroke: Stroke, floor: Bounds): Stroke[] {
  if (stroke.points.every(([, z]) => z >= 0)) return [stroke];
  const above = clippedAbove(stroke.points);
  const below = cropped({ ...stroke, role: 'hidden' }, { ...floor, top: 0 });
  return [...(above.length < 3 ? [] : [{ ...stroke, points: above }]), ...below];
}

/** The part of an outline above z = 0. */
function clippedAbove(points: readonly Point[]): Point[] {
  return points.flatMap((point, i) => {
    const next = points[(i + 1) % points.length] as Point;
    const stays = point[1] >= 0 ? [point] : [];
    if (point[1] >= 0 === next[1] >= 0) return stays;
    const share = point[1] / (point[1] - next[1]);
    const crossing: Point = [point[0] + share * (next[0] - point[0]), 0];
    return [...stays, crossing];
  });
}
