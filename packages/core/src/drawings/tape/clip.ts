import type { Bounds, Circle, Item, Point, Stroke } from '../scene.ts';
import { arc, rectangle } from '../strokes.ts';

/** A convex window, its corners anticlockwise. */
export type Window = readonly Point[];

/** A rectangular window. */
export function windowOf({ left, right, bottom, top }: Bounds): Window {
  return rectangle([left, bottom], [right, top]);
}

/** A round window as a polygon, which is also its rim. */
export function roundWindow(centre: Point, radius: number): Window {
  return arc(centre, radius, 0, 360).slice(0, -1);
}

/** What of lines, circles and hatches lies inside a window; lettering and dimensions are left as they are. */
export function clipped(item: Item, window: Window): Item[] {
  switch (item.kind) {
    case 'stroke':
      return item.closed ? clippedOutline(item, item.points, window) : clippedRun(item, window);
    case 'circle':
      return isInside(item, window) ? [item] : clippedOutline(strokeOf(item), circlePoints(item), window);
    case 'hatch': {
      const outline = polygonIn(item.outline, window);
      return outline.length < 3 ? [] : [{ ...item, outline }];
    }
    default:
      return [item];
  }
}

function circlePoints({ centre, radius }: Circle): Point[] {
  return arc(centre, radius, 0, 360).slice(0, -1);
}

function strokeOf({ role, fill, view }: Circle): Omit<Stroke, 'points'> {
  const extra = { ...(fill === undefined ? {} : { fill }), ...(view === undefined ? {} : { view }) };
  return { kind: 'stroke', role, closed: true, ...extra };
}

function isInside({ centre, radius }: Circle, window: Window): boolean {
  return edgesOf(window).every(([a, b]) => distanceInside(centre, a, b) >= radius);
}

/** A filled outline is cut along the window; one that hides nothing keeps only its own lines. */
function clippedOutline(style: Omit<Stroke, 'points'>, points: readonly Point[], window: Window): Stroke[] {
  if (style.fill === undefined)
    return clippedRun({ ...style, closed: false, points: [...points, ...points.slice(0, 1)] }, window);
  const inside = polygonIn(points, window);
  return inside.length < 3 ? [] : [{ ...style, points: inside }];
}

function edgesOf(window: Window): (readonly [Point, Point])[] {
  return window.map((point, i) => [point, window[(i + 1) % window.length] as Point] as const);
}

/** How far a point lies to the left of an edge [mm]. */
function distanceInside([x, z]: Point, [ax, az]: Point, [bx, bz]: Point): number {
  return ((bx - ax) * (z - az) - (bz - az) * (x - ax)) / Math.hypot(bx - ax, bz - az);
}

/** The part of a polygon inside a convex window, after Sutherland and Hodgman. */
function polygonIn(points: readonly Point[], window: Window): readonly Point[] {
  return edgesOf(window).reduce<readonly Point[]>(
    (left, [a, b]) =>
      left.flatMap((point, i) => {
        const next = left[(i + 1) % left.length] as Point;
        const [here, there] = [distanceInside(point, a, b), distanceInside(next, a, b)];
        const kept = here >= 0 ? [point] : [];
        return here >= 0 === there >= 0 ? kept : [...kept, between(point, next, here / (here - there))];
      }),
    points,
  );
}

function between([x0, z0]: Point, [x1, z1]: Point, share: number): Point {
  return [x0 + (x1 - x0) * share, z0 + (z1 - z0) * share];
}

/** The parts of a run of lines inside a convex window, after Cyrus and Beck. */
function clippedRun({ points, ...style }: Stroke, window: Window): Stroke[] {
  const runs: Point[][] = [];
  for (let i = 1; i < points.length; i += 1) {
    const part = segmentIn(points[i - 1] as Point, points[i] as Point, window);
    if (part === null) continue;
    const last = runs.at(-1);
    const end = last?.at(-1);
    if (last !== undefined && end !== undefined && end[0] === part[0][0] && end[1] === part[0][1]) last.push(part[1]);
    else runs.push([...part]);
  }
  return runs.map((run) => ({ ...style, points: run }));
}

function segmentIn(from: Point, to: Point, window: Window): readonly [Point, Point] | null {
  let [start, end] = [0, 1];
  for (const [a, b] of edgesOf(window)) {
    const [here, there] = [distanceInside(from, a, b), distanceInside(to, a, b)];
    if (here < 0 && there < 0) return null;
    if (here < 0) start = Math.max(start, here / (here - there));
    else if (there < 0) end = Math.min(end, here / (here - there));
  }
  if (start >= end) return null;
  return [start === 0 ? from : between(from, to, start), end === 1 ? to : between(from, to, end)];
}
