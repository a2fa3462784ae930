import type { Circle, Hatch, LineRole, Point, Stroke } from './scene.ts';

/** A straight line. */
export function line(role: LineRole, from: Point, to: Point): Stroke {
  return { kind: 'stroke', role, points: [from, to], closed: false };
}

/** An open run of lines. */
export function run(role: LineRole, points: readonly Point[]): Stroke {
  return { kind: 'stroke', role, points, closed: false };
}

/** A closed outline that hides what lies behind it. */
export function body(role: LineRole, points: readonly Point[]): Stroke {
  return { kind: 'stroke', role, points, closed: true, fill: 'sheet' };
}

/** A closed outline that hides nothing. */
export function outline(role: LineRole, points: readonly Point[]): Stroke {
  return { kind: 'stroke', role, points, closed: true };
}

/** A circle that hides nothing. */
export function circle(role: LineRole, centre: Point, radius: number): Circle {
  return { kind: 'circle', role, centre, radius };
}

/** The corners of a rectangle between two opposite corners. */
export function rectangle([y0, z0]: Point, [y1, z1]: Point): Point[] {
  return [
    [y0, z0],
    [y1, z0],
    [y1, z1],
    [y0, z1],
  ];
}

/** A rectangle with its corners rounded. */
export function rounded([y0, z0]: Point, [y1, z1]: Point, radius: number): Point[] {
  const [left, right] = [Math.min(y0, y1), Math.max(y0, y1)];
  const [bottom, top] = [Math.min(z0, z1), Math.max(z0, z1)];
  const r = Math.min(radius, (right - left) / 2, (top - bottom) / 2);
  return [
    ...arc([right - r, bottom + r], r, -90, 0),
    ...arc([right - r, top - r], r, 0, 90),
    ...arc([left + r, top - r], r, 90, 180),
    ...arc([left + r, bottom + r], r, 180, 270),
  ];
}

/** Points along an arc, from one angle to another [deg]. */
export function arc([y, z]: Point, radius: number, from: number, to: number): Point[] {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / 10));
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [y + radius * Math.cos(angle), z + radius * Math.sin(angle)];
  });
}

/** The same points on the other side of the centre line. */
export function mirrored(points: readonly Point[]): Point[] {
  return points.map(([y, z]): Point => [-y, z]);
}

/** A hatched area. */
export function hatch(role: Hatch['role'], points: readonly Point[], falling = false): Hatch {
  return { kind: 'hatch', role, outline: points, spacing: role === 'misfit' ? 1.1 : 1.4, falling };
}

/** A break line: straight with a jog in the middle, where a body goes on undrawn. */
export function breakLine([y, z0]: Point, z1: number): Stroke {
  const middle = (z0 + z1) / 2;
  const jog = (z1 - z0) / 8;
  return run('thin', [
    [y, z0],
    [y, middle - jog],
    [y - jog, middle - jog / 3],
    [y + jog, middle + jog / 3],
    [y, middle + jog],
    [y, z1],
  ]);
}
