import { hasUpperPin, type Joint } from '../joint/index.ts';
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
