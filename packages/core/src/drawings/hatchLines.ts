import type { Point } from './scene.ts';

/**
 * The 45° lines that fill an outline, cut at its edges by the even-odd rule. Lines of one slope lie on one grid through
 * the origin, so that neighbouring areas run into each other.
 *
 * @param outline corners in order [mm]
 * @param spacing distance of two lines [mm]
 * @param falling true for lines that fall to the right [boolean]
 * @returns the lines by their ends [mm]
 */
export function hatchLines(outline: readonly Point[], spacing: number, falling: boolean): [Point, Point][] {
  const slope = falling ? -1 : 1;
  const step = spacing * Math.SQRT2;
  const offsets = outline.map(([y, z]) => z - slope * y);
  const first = Math.ceil(Math.min(...offsets) / step);
  const last = Math.floor(Math.max(...offsets) / step);
  return Array.from({ length: Math.max(0, Math.min(400, last - first + 1)) }, (_, i) => (first + i) * step).flatMap(
    (offset) => pairs(crossings(outline, slope, offset)),
  );
}

function crossings(outline: readonly Point[], slope: number, offset: number): Point[] {
  const found: Point[] = [];
  outline.forEach(([y0, z0], i) => {
    const [y1, z1] = outline[(i + 1) % outline.length] as Point;
    const from = z0 - slope * y0 - offset;
    const to = z1 - slope * y1 - offset;
    if (from < 0 === to < 0) return;
    const t = from / (from - to);
    found.push([y0 + t * (y1 - y0), z0 + t * (z1 - z0)]);
  });
  return found.sort((a, b) => a[0] - b[0]);
}

function pairs(points: readonly Point[]): [Point, Point][] {
  const lines: [Point, Point][] = [];
  for (let i = 0; i + 1 < points.length; i += 2) lines.push([points[i] as Point, points[i + 1] as Point]);
  return lines;
}
