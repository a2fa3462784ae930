import type { Answer } from '../engine/assess/index.ts';
import { middle, type Interval } from '../engine/geometry/index.ts';
import type { LineRole } from './scene.ts';

/** How sure a figure is: measured, a stand-in of its class or habit, or not known at all. */
type Standing = 'measured' | 'standIn' | 'unknown';

/** A figure as it is drawn [mm, deg]: at `value`, which lies between its ends. */
export interface Shown extends Interval {
  readonly path: string;
  readonly value: number;
  readonly standing: Standing;
}

/** A figure of the answer; a figure that nobody knows is drawn at a value for place only, and says so. */
export function shown(answer: Answer, path: string, forPlace: number): Shown {
  const figure = answer.figures[path];
  if (figure === undefined || figure.origin === 'unknown') return unknownAt(path, forPlace);
  const { low, high, origin } = figure;
  const standIn = origin === 'class' || origin === 'habit' || origin === 'default';
  return { path, low, high, value: middle(figure), standing: standIn ? 'standIn' : 'measured' };
}

/** A figure that nobody knows, drawn where it could be. */
export function unknownAt(path: string, forPlace: number): Shown {
  return { path, low: forPlace, high: forPlace, value: forPlace, standing: 'unknown' };
}

/** A figure worked out from others: as unsure as the least sure of them. */
export function worked(path: string, range: Interval, ...from: readonly Shown[]): Shown {
  return { path, low: range.low, high: range.high, value: middle(range), standing: leastSure(from) };
}

function leastSure(from: readonly Shown[]): Standing {
  if (from.some((figure) => figure.standing === 'unknown')) return 'unknown';
  return from.some((figure) => figure.standing === 'standIn') ? 'standIn' : 'measured';
}

/** The line of a part: as wanted where its figures were measured, dashed where they were not. */
export function lineOf(wanted: LineRole, ...figures: readonly Shown[]): LineRole {
  return leastSure(figures) === 'measured' ? wanted : 'hidden';
}
