import { loadIndexMass } from '../../tables/index.ts';
import { exactly, type Interval } from '../geometry/index.ts';
import type { Joint } from '../joint/index.ts';
import type { LeafTerms, Leaves } from '../lift/index.ts';
import type { Term } from '../proof/index.ts';

const nothing: Term = () => exactly(0);

/** What may or may not be on a tractor; what is not said is not counted. */
const ifGiven = ['driverMass', 'frontWeightMass', 'wheelWeightMass', 'tyreLiquidMass'] as const;

/**
 * The terms of the axle loads beside those of the lift [mm, kg].
 *
 * @param joint what the checks are written from [record]
 * @param lift the terms of the lift [terms]
 * @returns both [mm, deg, kg, bar]
 */
export function balanceLeaves(joint: Joint, lift: Leaves): Leaves {
  const own = ownLeaves(joint);
  return { exact: new Map([...lift.exact, ...own]), quick: new Map([...lift.quick, ...own]) };
}

function ownLeaves({ ledger, setup, tractor }: Joint): LeafTerms {
  const isFilled = (key: string): boolean => key === 'tyreLiquidMass' && setup.tractor.tyreLiquid !== undefined;
  const counted = (key: string): boolean => ledger.given(`tractor.${key}`) || isFilled(key);
  return new Map<string, Term>([
    ['wheelbase', tractor('wheelbase')],
    ['tractorMass', tractor('mass')],
    ['frontAxleMass', tractor('frontAxleMass')],
    ...ifGiven.map((key): [string, Term] => [key, counted(key) ? tractor(key) : nothing]),
    ['driverAhead', counted('driverMass') ? tractor('driverAhead') : nothing],
    ['frontWeightAhead', counted('frontWeightMass') ? tractor('frontWeightAhead') : nothing],
    ['ballastAhead', tractor('frontWeightAhead')],
    ['loaderMass', tractor('loaderMass')],
    ['loaderAhead', tractor('loaderAhead')],
    ['loaderLoad', tractor('loaderLoad')],
    ['loaderLoadAhead', tractor('loaderLoadAhead')],
  ]);
}

/** An end of the tractor. */
export type Axle = 'front' | 'rear';

/** What both tyres of an axle may carry [kg]: as stated, or by their load index; null where neither is known. */
export function tyreRating({ ledger, setup, tractor }: Joint, axle: Axle): Term | null {
  const key = `${axle}TyreLimit`;
  if (ledger.given(`tractor.${key}`)) {
    const one = tractor(key);
    return (at): Interval => ({ low: 2 * one(at).low, high: 2 * one(at).high });
  }
  const index = axle === 'front' ? setup.tractor.frontTyreIndex : setup.tractor.rearTyreIndex;
  const mass = index === undefined ? null : loadIndexMass(index);
  return mass === null ? null : () => exactly(2 * mass);
}
