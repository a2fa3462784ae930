import type { Circle, Item, LineRole, Point } from '../../scene.ts';
import { body } from '../../strokes.ts';
import { placed, poseAlong } from '../pose.ts';

/** Half the width of a bar, and the radius of the eye at each of its ends [mm]. */
export interface BarSize {
  readonly half: number;
  readonly eyes: readonly [number, number];
}

/** A bar from pin to pin: its sides, and an eye around each pin that hides what lies behind. */
export function barBetween(role: LineRole, from: Point, to: Point, { half, eyes }: BarSize): Item[] {
  return [plank(role, from, to, half), disc(role, from, eyes[0]), disc(role, to, eyes[1])];
}

/** A straight piece between two points [mm]. */
export function plank(role: LineRole, from: Point, to: Point, half: number): Item {
  const pose = poseAlong(from, to);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const corners: Point[] = [
    [0, -half],
    [length, -half],
    [length, half],
    [0, half],
  ];
  return body(
    role,
    corners.map((corner) => placed(pose, corner)),
  );
}

/** A circle that hides what lies behind it. */
export function disc(role: LineRole, centre: Point, radius: number): Circle {
  return { kind: 'circle', role, centre, radius, fill: 'sheet' };
}

/** A pin seen along its axis: solid, as hooks and eyes are outlines. */
export function solidPin(role: LineRole, centre: Point, radius: number): Circle {
  return { kind: 'circle', role, centre, radius, fill: 'line' };
}
