import type { Item, Point } from '../scene.ts';

/** Where a part's own frame stands in the view: its origin, and its turn from rearward toward up. */
export interface Pose {
  readonly at: Point;
  readonly cos: number;
  readonly sin: number;
}

/** A frame at a point, turned by an angle [deg]. */
export function poseAt(at: Point, degrees: number): Pose {
  const angle = (degrees * Math.PI) / 180;
  return { at, cos: Math.cos(angle), sin: Math.sin(angle) };
}

/** A frame at a point whose first axis runs to another point. */
export function poseAlong(from: Point, to: Point): Pose {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return { at: from, cos: 1, sin: 0 };
  return { at: from, cos: (to[0] - from[0]) / length, sin: (to[1] - from[1]) / length };
}

/** A point of a part, in the view [mm]. */
export function placed({ at, cos, sin }: Pose, [x, z]: Point): Point {
  return [at[0] + x * cos - z * sin, at[1] + x * sin + z * cos];
}

/** A point of the view, in the part's own frame [mm]. */
export function seenFrom({ at, cos, sin }: Pose, [x, z]: Point): Point {
  const [dx, dz] = [x - at[0], z - at[1]];
  return [dx * cos + dz * sin, dz * cos - dx * sin];
}

/** A line or circle of a part, in the view; nothing else belongs to a part. */
export function placedItem(pose: Pose, item: Item): Item {
  if (item.kind === 'stroke') return { ...item, points: item.points.map((point) => placed(pose, point)) };
  return item.kind === 'circle' ? { ...item, centre: placed(pose, item.centre) } : item;
}
