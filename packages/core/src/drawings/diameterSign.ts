import type { Point } from './scene.ts';

/** A drawn diameter sign: a circle and the stroke through it [unit of the size]. */
export interface DiameterSign {
  readonly centre: Point;
  readonly radius: number;
  readonly stroke: readonly [Point, Point];
  readonly width: number;
  /** How far the text after it is moved on. */
  readonly advance: number;
}

/**
 * The diameter sign before a text, which the fonts lack.
 *
 * @param at where the lettering begins on its baseline; up is positive [any unit]
 * @param size size of the letters [same unit]
 * @returns the sign's parts [same unit]
 */
export function diameterSign(at: Point, size: number): DiameterSign {
  const [x, y] = [at[0] + size * 0.4, at[1] + size * 0.33];
  const reach = size * 0.42;
  return {
    centre: [x, y],
    radius: size * 0.3,
    stroke: [
      [x - reach * 0.7, y - reach],
      [x + reach * 0.7, y + reach],
    ],
    width: size * 0.075,
    advance: size * 0.95,
  };
}
