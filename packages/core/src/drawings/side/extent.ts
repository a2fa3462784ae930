import type { Station } from '../../engine/lift/index.ts';
import type { Item, Point } from '../scene.ts';
import { couplerPart, type RigidPart } from './parts/coupler.ts';
import { implementPart } from './parts/implement.ts';
import { placed, seenFrom } from './pose.ts';
import type { SideStage } from './sideStage.ts';

/** The room that tractor and implement take through the whole lift, so that no picture of it jumps [mm]. */
export interface Extent {
  /** Where the tractor is broken off at the nearest, and where all of it that is drawn ends. */
  readonly near: number;
  readonly far: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** From the implement's lower pins back to its rear end, along itself. */
  readonly reach: number;
}

/** What is drawn of a part that digs in, below the ground at most [mm]. */
const deepest = 170;

/** The room that the pictures of a lift take, at all of its stations or at some. */
export function extentOf(stage: SideStage, stations: readonly Station[] = stage.sweep.stations): Extent {
  const { lowerPivot, topPivot, armPivot } = stage.sweep;
  const implement = implementPart(stage);
  const parts = [implement, couplerPart(stage)].filter((part) => part !== null);
  const reach = Math.max(60, ...parts.flatMap((part) => backOf(part, stage)));
  const corners = parts.map(({ items, poseAt }) => ({ poseAt, points: items.flatMap(cornersOf) }));
  const points = stations.flatMap((station) => [
    ...corners.flatMap((part) => {
      const pose = part.poseAt(station);
      return part.points.map((point) => placed(pose, point));
    }),
    placed(implement.poseAt(station), [reach, 0]),
    station.topEnd,
    station.mast,
    ...(station.armEnd === null ? [] : [station.armEnd]),
  ]);
  const shaft = shaftCorners(stage);
  const pivots = [lowerPivot, topPivot, ...(armPivot === null ? [] : [armPivot])];
  const radius = stage.tyre.value;
  return {
    near: Math.min(-0.3 * radius, ...[...pivots, ...shaft].map(([x]) => x - 90)),
    far: -radius * 1.08 - 40,
    right: Math.max(...[...points, ...shaft].map(([x]) => x)),
    top: Math.max(...[...points, ...shaft].map(([, z]) => z), ...pivots.map(([, z]) => z + 90)) + 20,
    bottom: Math.max(-deepest, Math.min(0, ...points.map(([, z]) => z))),
    reach,
  };
}

/** Both joints of the drive shaft, with room for what is about them. */
function shaftCorners({ shaft }: SideStage): Point[] {
  return (shaft?.stations ?? []).flatMap(({ tractorCross, implementCross }): Point[] => [
    tractorCross,
    [implementCross[0], implementCross[1] + 90],
  ]);
}

/** How far back the corners of a part lie, from the implement's lower pins and along it. */
function backOf({ items, poseAt }: RigidPart, stage: SideStage): number[] {
  const first = stage.sweep.stations[0] as Station;
  const own = implementPart(stage).poseAt(first);
  const pose = poseAt(first);
  return items.flatMap(cornersOf).map((point) => seenFrom(own, placed(pose, point))[0]);
}

function cornersOf(item: Item): Point[] {
  if (item.kind === 'stroke') return [...item.points];
  if (item.kind !== 'circle') return [];
  const { centre, radius } = item;
  return [
    [centre[0] - radius, centre[1] - radius],
    [centre[0] + radius, centre[1] + radius],
  ];
}
