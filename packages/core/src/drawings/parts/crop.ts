import type { Bounds, Point, Stroke } from '../scene.ts';

/** The parts of a run of lines that lie inside a box. */
export function cropped(stroke: Stroke, box: Bounds): Stroke[] {
  const points = stroke.closed ? [...stroke.points, ...stroke.points.slice(0, 1)] : stroke.points;
  const runs: Point[][] = [];
  for (let i = 1; i < points.length; i += 1) {
    const piece = inside(points[i - 1] as Point, points[i] as Point, box);
    if (piece === null) continue;
    const last = runs.at(-1);
    const end = last?.at(-1);
    if (last !== undefined && end !== undefined && end[0] === piece[0][0] && end[1] === piece[0][1])
      last.push(piece[1]);
    else runs.push([...piece]);
  }
  return runs.map((run): Stroke => ({ kind: 'stroke', role: stroke.role, points: run, closed: false }));
}

/** The part of a segment inside the box, after Liang and Barsky. */
function inside([y0, z0]: Point, [y1, z1]: Point, box: Bounds): [Point, Point] | null {
  const [dy, dz] = [y1 - y0, z1 - z0];
  const edges = [
    [-dy, y0 - box.left],
    [dy, box.right - y0],
    [-dz, z0 - box.bottom],
    [dz, box.top - z0],
  ] as const;
  let [from, to] = [0, 1];
  for (const [p, q] of edges) {
    if (p === 0 && q < 0) return null;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  if (from >= to) return null;
  const at = (t: number): Point => [y0 + t * dy, z0 + t * dz];
  return [from === 0 ? [y0, z0] : at(from), to === 1 ? [y1, z1] : at(to)];
}
