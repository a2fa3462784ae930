/** How long a shaft is drawn, what its tubes overlap, and what is left before it bottoms [mm]. */
export interface Drawn {
  readonly length: number;
  readonly overlap: number;
  readonly toBottom: number;
}

/**
 * A drive shaft along its own line, the joint at the tractor at 0 and that at the implement at `length` [mm]. Both halves are
 * taken to be alike, as they are where the same was cut off each: then either tube bottoms where the other begins.
 */
export interface Halves {
  readonly length: number;
  /** Where the outer tube, on the half of the tractor, begins and ends. */
  readonly outer: readonly [number, number];
  /** Where the inner tube begins, in the outer one, and where it ends at the yoke of the implement. */
  readonly inner: readonly [number, number];
}

/**
 * Lays two halves along a line so that the tubes overlap by just what is given and a tube ends short of where it bottoms by
 * just what is left.
 */
export function halvesOf({ length, overlap, toBottom }: Drawn): Halves {
  const reach = (length + overlap) / 2;
  const root = length - reach - toBottom;
  return { length, outer: [root, reach], inner: [length - reach, length - root] };
}
