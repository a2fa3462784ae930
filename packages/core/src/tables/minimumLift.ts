import type { Figure } from './figure.ts';

const clause = {
  source: 'paes-118-2001',
  edition: 'PAES 118:2001',
  locator: 'clause 6.3, table 5, as quoted',
  status: 'readSecondHand',
} as const;

/** Up to this drawbar power the lift asked for grows in full; above it by half as much [kW]. */
const fullUpTo: Figure = { value: 65, printed: '65', printedUnit: 'kW', ...clause };
const perKilowatt: Figure = { value: 0.31, printed: '0.31', printedUnit: 'kN/kW', ...clause };
const atTheBend: Figure = { value: 20.15, printed: '20.15', printedUnit: 'kN', ...clause };
const perKilowattAbove: Figure = { value: 0.155, printed: '0.155', printedUnit: 'kN/kW', ...clause };

/** The printed figures of the rule, in the order in which it reads them. */
export const minimumLiftFigures: readonly Figure[] = [fullUpTo, perKilowatt, atTheBend, perKilowattAbove];

/**
 * The least lift, 610 mm behind the hitch points and through the power range, that a tractor of a drawbar power is asked to
 * have: 0.31·P up to 65 kW, 20.15 + 0.155·(P − 65) above. It says whether a declared rating is plausible, never what a
 * tractor lifts.
 *
 * @param drawbarPower P, greatest drawbar power, above 0 [kW]
 * @returns the lift asked for at the test point [kN]
 * @example minimumLift(25); // 7.75
 * @source paes-118-2001, clause 6.3, table 5, as quoted
 */
export function minimumLift(drawbarPower: number): number {
  if (drawbarPower <= fullUpTo.value) return perKilowatt.value * drawbarPower;
  return atTheBend.value + perKilowattAbove.value * (drawbarPower - fullUpTo.value);
}
