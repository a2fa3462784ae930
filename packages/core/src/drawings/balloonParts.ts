import type { Balloon, Point } from './scene.ts';

/** A balloon taken apart for a writer [scene mm]. */
export interface BalloonParts {
  readonly radius: number;
  /** Size of its number. */
  readonly size: number;
  /** How far the number's baseline lies under the centre. */
  readonly drop: number;
  /** From the rim to what it is about, where a dot stands. */
  readonly leader: { readonly line: readonly [Point, Point]; readonly dot: number } | null;
}

/** Radius of a balloon, size of its number, and radius of the dot that its leader ends in [paper mm]. */
const paper = { radius: 2.9, size: 3.7, dot: 0.55 } as const;

/**
 * Takes a balloon apart into circle, number and leader.
 *
 * @param balloon the balloon [scene mm]
 * @param scale scene length of one paper millimetre [mm per mm]
 * @returns its measures and its leader [scene mm]
 */
export function balloonParts({ at, leaderTo }: Balloon, scale: number): BalloonParts {
  const size = paper.size * scale;
  const leader = leaderTo === null ? null : { line: leaderOf(at, leaderTo, scale), dot: paper.dot * scale };
  return { radius: paper.radius * scale, size, drop: size * 0.35, leader };
}

function leaderOf(at: Point, to: Point, scale: number): readonly [Point, Point] {
  const distance = Math.max(Math.hypot(to[0] - at[0], to[1] - at[1]), paper.radius * scale);
  const part = (paper.radius * scale) / distance;
  return [[at[0] + (to[0] - at[0]) * part, at[1] + (to[1] - at[1]) * part], to];
}
