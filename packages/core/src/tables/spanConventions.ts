/**
 * Distance between ball centres when both balls stand against the shoulders: S + w. [mm]
 * Tables print either this or the shoulder span; one ball width lies between them.
 *
 * @param shoulderSpan - S, between the pin shoulders [mm]
 * @param ballWidth - w, width of one lower ball [mm]
 * @returns ball centre to ball centre [mm]
 * @example ballCentreSpan(825, 45); // 870
 */
export function ballCentreSpan(shoulderSpan: number, ballWidth: number): number {
  return shoulderSpan + ballWidth;
}

/**
 * Inverse of {@link ballCentreSpan}: the shoulder span [mm] behind a span measured between ball centres.
 *
 * @param ballCentres ball centre to ball centre [mm]
 * @param ballWidth width of a ball along the pin [mm]
 * @returns shoulder to shoulder [mm]
 * @example shoulderSpanFromCentres(1010, 45); // 965
 */
export function shoulderSpanFromCentres(ballCentres: number, ballWidth: number): number {
  return ballCentres - ballWidth;
}
