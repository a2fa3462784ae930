import type { Step } from '../formula/index.ts';
import type { Plane } from '../linkage/index.ts';
import type { Carried } from './carried.ts';
import type { SupplySteps } from './supply.ts';

/** What the lift has left for the load. */
export interface SpareSteps {
  /** The mass that could sit in the load's place beside everything else, allowance off: proven and estimated [kg]. */
  readonly proven: Step;
  readonly estimated: Step;
  /** How much heavier the load could be [kg]. */
  readonly spare: Step;
}

/** A rise smaller than this counts as this: what hardly rises is no load on the lift [mm/mm]. */
const leastRise = 0.05;

/** What is left of the supply, allowance off, once everything else is lifted, as a mass in the load's place. */
export function spareSteps(p: Plane, { lowAtBalls, highAtBalls }: SupplySteps, { others, load }: Carried): SpareSteps {
  const rise = p.greater(p.constant(leastRise), load.rise);
  const inItsPlace = (atBalls: Step): Step =>
    p.divide(p.subtract(p.multiply(p.leaf('allowance'), atBalls), others), rise);
  const supplied = suppliedBetween(p, lowAtBalls, highAtBalls);
  return {
    proven: inItsPlace(lowAtBalls),
    estimated: inItsPlace(highAtBalls),
    spare: p.subtract(inItsPlace(supplied), load.mass),
  };
}

/** The true supply: somewhere between what is proven and what is estimated. */
export function suppliedBetween(p: Plane, low: Step, high: Step): Step {
  return p.add(low, p.multiply(p.leaf('supplyShare'), p.greater(p.constant(0), p.subtract(high, low))));
}
