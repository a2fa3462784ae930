import type { LiftQuestion, Structure } from '../lift/index.ts';

/** What decides how the formula of a drive shaft is written, apart from any figure. */
export interface ShaftStructure {
  readonly lift: Structure;
  /** The input shaft points to one side. */
  readonly turnedAside: boolean;
}

/** The structure of a drive. */
export function structureOf({ structure, joint }: LiftQuestion): ShaftStructure {
  return { lift: structure, turnedAside: joint.ledger.given('implement.inputYaw') };
}
