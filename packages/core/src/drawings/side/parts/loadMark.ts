import type { Item, LineRole, Point, Stroke } from '../../scene.ts';
import { arc } from '../../strokes.ts';
import { disc } from './bars.ts';
import { at } from './linkage.ts';

/** The usual sign of a centre of gravity: a circle in quarters, two of them filled. */
export function loadMark(role: LineRole, centre: Point, radius: number): Item[] {
  const quarter = (from: number): Stroke => ({
    kind: 'stroke',
    role,
    points: [centre, ...arc(centre, radius, from, from + 90)],
    closed: true,
    fill: 'line',
  });
  return [at('centre', disc(role, centre, radius)), quarter(0), quarter(180)];
}
