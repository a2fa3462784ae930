import type { Degree, Rad } from './dimensions.ts';

/** Degrees at the edges → radians inside the engine. @param angle [deg] @returns [rad] */
export function toRadians(angle: Degree): Rad {
  return (angle * Math.PI) / 180;
}

/** Radians inside the engine → degrees at the edges. @param angle [rad] @returns [deg] */
export function toDegrees(angle: Rad): Degree {
  return (angle * 180) / Math.PI;
}
