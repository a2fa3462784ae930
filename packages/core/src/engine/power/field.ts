/**
 * Ground worked in an hour: width · speed · efficiency / 10.
 *
 * @param width working width [m]
 * @param speed forward speed [km/h]
 * @param efficiency share of width times speed that comes out as worked ground [0–1]
 * @returns field capacity [ha/h]
 * @example fieldCapacity(2, 8, 0.8); // 1.28
 * @source extension-field-capacity
 */
export function fieldCapacity(width: number, speed: number, efficiency: number): number {
  return (width * speed * efficiency) / 10;
}
