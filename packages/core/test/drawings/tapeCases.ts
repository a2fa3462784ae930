import { fieldRules } from '../../src/records/index.ts';
import { tapeDrawing, type Item, type Point, type Scene } from '../../src/drawings/index.ts';
import type { TapeRow } from '../../src/drawings/tape/row.ts';
import { rowOf } from '../../src/drawings/tape/rows.ts';

/** One drawing of where the tape goes: a field, and a reference point where it isn’t the usual one. */
export interface TapeCase {
  readonly path: string;
  readonly from: string | undefined;
  readonly row: TapeRow;
}

/** Every drawing, between every pair of reference points. */
export const tapeCases: readonly TapeCase[] = [...fieldRules].flatMap(([path, rule]) =>
  [undefined, ...(rule.from ?? []).slice(1)].flatMap((from) => {
    const row = rowOf(path, from);
    return row === null ? [] : [{ path, from, row }];
  }),
);

/** What a case is called in a message. */
export function named({ path, from }: TapeCase): string {
  return from === undefined ? path : `${path} from ${from}`;
}

const phone = new Map<TapeCase, Scene>();

/** A case as a phone shows it; each is drawn once. */
export function onPhone(one: TapeCase): Scene {
  const known = phone.get(one);
  if (known !== undefined) return known;
  const { path, from } = one;
  const scene = tapeDrawing(path, { system: 'us', format: 'phone', ...(from === undefined ? {} : { from }) }) as Scene;
  phone.set(one, scene);
  return scene;
}

/** How far a point lies from the lines of an item, or from the middle of a circle [mm]. */
export function distanceTo(item: Item, point: Point): number {
  if (item.kind === 'circle') {
    const off = Math.hypot(point[0] - item.centre[0], point[1] - item.centre[1]);
    return Math.min(off, Math.abs(off - item.radius));
  }
  if (item.kind !== 'stroke') return Infinity;
  const points = item.closed ? [...item.points, item.points[0] as Point] : item.points;
  return Math.min(...points.slice(1).map((end, i) => toSegment(point, points[i] as Point, end)));
}

/** How far a point lies from an edge that stops something moving along a direction: a line across it, not an axis [mm]. */
export function offEdge(item: Item, point: Point, along: Point): number {
  if (item.kind === 'circle') {
    const out: Point = [point[0] - item.centre[0], point[1] - item.centre[1]];
    const off = Math.hypot(...out);
    const facing = Math.abs(out[0] * along[0] + out[1] * along[1]) / (off || 1);
    return facing > 0.34 ? Math.abs(off - item.radius) : Infinity;
  }
  if (item.kind !== 'stroke' || item.role === 'centre') return Infinity;
  const points = item.closed ? [...item.points, item.points[0] as Point] : item.points;
  const across = points.slice(1).map((end, i): number => {
    const start = points[i] as Point;
    const [dx, dz] = [end[0] - start[0], end[1] - start[1]];
    const lies = Math.abs(dx * along[0] + dz * along[1]) / (Math.hypot(dx, dz) || 1);
    return lies > 0.94 ? Infinity : toSegment(point, start, end);
  });
  return Math.min(...across);
}

/** How far a point lies from the middle of an item, or from a line of axes [mm]. */
export function offMiddle(item: Item, point: Point): number {
  if (item.kind === 'circle') return Math.hypot(point[0] - item.centre[0], point[1] - item.centre[1]);
  if (item.kind !== 'stroke') return Infinity;
  if (item.role === 'centre') return distanceTo(item, point);
  const middle = [0, 1].map((axis) => {
    const along = item.points.map((corner) => corner[axis] as number);
    return (Math.min(...along) + Math.max(...along)) / 2;
  });
  return Math.hypot(point[0] - (middle[0] as number), point[1] - (middle[1] as number));
}

function toSegment([x, z]: Point, [x0, z0]: Point, [x1, z1]: Point): number {
  const [dx, dz] = [x1 - x0, z1 - z0];
  const length = dx * dx + dz * dz;
  const share = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * dx + (z - z0) * dz) / length));
  return Math.hypot(x - x0 - share * dx, z - z0 - share * dz);
}
