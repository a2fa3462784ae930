/**
 * Length in plan [mm] of the lower links whose lines meet a distance C ahead of the ball ends: C·(1 − f/S).
 *
 * @param ballSpan - S, ball centre to ball centre [mm], above 0
 * @param frontSpacing - f, between the front pivots [mm]
 * @param convergence - C, from the ball ends to where the lines meet [mm]
 * @returns length of a link seen from above [mm]
 * @source manual-seed-drill, manual-plough (their columns agree with one another through this)
 */
export function linkPlanLength(ballSpan: number, frontSpacing: number, convergence: number): number {
  return convergence * (1 - frontSpacing / ballSpan);
}

/**
 * Inverse of {@link linkPlanLength} for the front spacing f = S·(1 − length/C). [mm]
 *
 * @param ballSpan ball centre to ball centre [mm]
 * @param planLength length of a link seen from above [mm]
 * @param convergence where the links would meet, ahead of the balls [mm]
 * @returns between the front pivots [mm]
 */
export function frontSpacing(ballSpan: number, planLength: number, convergence: number): number {
  return ballSpan * (1 - planLength / convergence);
}

/**
 * Angle in plan between one lower link and the tractor's centre plane: atan((S/2)/C). [rad]
 *
 * @param ballSpan ball centre to ball centre [mm]
 * @param convergence where the links would meet, ahead of the balls [mm]
 * @returns half of the angle between the links [rad]
 */
export function convergenceHalfAngle(ballSpan: number, convergence: number): number {
  return Math.atan2(ballSpan / 2, convergence);
}
