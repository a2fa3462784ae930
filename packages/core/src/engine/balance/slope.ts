/** A tractor with everything on it, seen as one rigid body on firm level ground [mm]. */
export interface Standing {
  readonly wheelbase: number;
  /** Width between the lines on which the rear tyres stand. */
  readonly rearTrack: number;
  /** Height of the pin that the front axle swings on. */
  readonly pivotHeight: number;
  /** Centre of gravity: ahead of the rear axle, above the ground, and off the middle toward the downhill side. */
  readonly ahead: number;
  readonly height: number;
  readonly aside: number;
}

/** Slopes at which a tractor standing still would just tip over: ideal limits, never slopes to work on [deg]. */
export interface TippingAngles {
  /** Sideways, until the front axle meets its stop: about the line from the lower rear tyre to the front pivot. */
  readonly sideways: number;
  /** Sideways about both tyres of one side, once the front axle has met its stop: information only. */
  readonly sidewaysOnStop: number;
  /** Facing uphill, about the rear axle. */
  readonly uphill: number;
}

const degrees = (angle: number): number => (angle * 180) / Math.PI;

/**
 * Tipping angles of a tractor at rest on a slope: rigid tyres, even ground, no speed.
 *
 * @param standing the tractor with everything on it [mm]
 * @returns three angles; zero or less where it would not stand on the level [deg]
 * @source engineering mechanics: the line of gravity through the tipping axis; the swinging front axle makes three points of support
 */
export function tippingAngles({ wheelbase, rearTrack, pivotHeight, ahead, height, aside }: Standing): TippingAngles {
  const half = rearTrack / 2;
  const across = half * (wheelbase - ahead) - wheelbase * aside;
  return {
    sideways: degrees(Math.atan2(across, wheelbase * height - ahead * pivotHeight)),
    sidewaysOnStop: degrees(Math.atan2(half - aside, height)),
    uphill: degrees(Math.atan2(ahead, height)),
  };
}
