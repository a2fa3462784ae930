/**
 * Length in plan [mm] of the lower links whose lines meet a distance C ahead of the ball ends: C·(1 − f/S).
 *
 * @param ballSpan - S, ball centre to ball centre [mm], above 0
 * @param frontSpacing - f, between the front pivots [mm]
 * @param convergence - C, from the ball ends to where the lines meet [mm]
 * @source manual-seed-drill, manual-plough (their columns agree with one another through this)
 */
export function linkPlanLength(ballSpan: number, frontSpacing: number, convergence: number): number {
  return convergence * (1 - frontSpacing / ballSpan);
}

/** Inverse of {@link linkPlanLength} for the front spacing f = S·(1 − length/C). [mm] */
export function frontSpacing(ballSpan: number, planLength: number, convergence: number): number {
  return ballSpan * (1 - planLength / convergence);
}

/** Angle in plan between one lower link and the tractor's centre plane: atan((S/2)/C). [rad] */
export function convergenceHalfAngle(ballSpan: number, convergence: number): number {
  return Math.atan2(ballSpan / 2, convergence);
}
