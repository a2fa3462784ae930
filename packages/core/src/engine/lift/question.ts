import { hasUpperPin, type Joint } from '../joint/index.ts';
import type { LiftBasis } from './knowledge.ts';
import { leavesOf, type Leaves } from './leaves.ts';
import { structureOf, type Structure } from './structure.ts';
import { constantTorque } from './torque.ts';

/** Everything that the lines through the lift of one setup are written from. */
export interface LiftQuestion {
  readonly joint: Joint;
  readonly structure: Structure;
  readonly leaves: Leaves;
}

/** Opens the lift of a setup. */
export function openLift(joint: Joint): LiftQuestion {
  const structure = structureOf(joint);
  const plain = leavesOf(joint);
  const torque = constantTorque(structure, plain);
  const leaves: Leaves = {
    exact: new Map([...plain, ['constantTorque', torque.exact]]),
    quick: new Map([...plain, ['constantTorque', torque.quick]]),
  };
  return { joint, structure, leaves };
}

/** Has the top link anything to hold? */
export function holdsUpper({ joint }: LiftQuestion): boolean {
  return joint.frontUpper.path !== 'implement' || hasUpperPin(joint.setup.implement);
}

/**
 * The best that is known of a lift decides how it is worked out; without a top link to hold, only ratings are left.
 *
 * @param lift the lift of a setup [question]
 * @returns how the lift is worked out [name]
 */
export function basisOf(lift: LiftQuestion): LiftBasis {
  const { cylinder, linkage, atBalls, at610 } = lift.structure;
  if (linkage && holdsUpper(lift)) {
    if (cylinder) return 'cylinder';
    if (atBalls || at610) return 'linkage';
  }
  return at610 ? 'ratings' : 'none';
}
