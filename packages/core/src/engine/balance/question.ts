import type { SteeringRuleName } from '../../tables/index.ts';
import type { Course, Leaves, LiftQuestion } from '../lift/index.ts';
import { balanceLeaves } from './leaves.ts';
import { structureOf, type BalanceStructure } from './structure.ts';

/** Everything that the lines of the axle loads are written from. */
export interface BalanceQuestion {
  readonly lift: LiftQuestion;
  readonly structure: BalanceStructure;
  readonly leaves: Leaves;
}

/**
 * Opens the axle loads of a setup.
 *
 * @param lift the lift of the same setup [question]
 * @param rule which rule decides how much the front axle has to carry; the one that was chosen where it is left out [name]
 * @returns the axle loads [question]
 */
export function openBalance(
  lift: LiftQuestion,
  rule: SteeringRuleName = lift.joint.setup.rules?.steeringShare ?? 'ofTractor',
): BalanceQuestion {
  return { lift, structure: structureOf(lift, rule), leaves: balanceLeaves(lift.joint, lift.leaves) };
}

/** What nothing stands in for: no class of tractor says what it weighs, or where. */
const asked = ['tractor.wheelbase', 'tractor.mass', 'tractor.frontAxleMass'];

/** The first figure that has to be known before an axle load means anything; null where all are. */
export function askedFirst({ lift: { joint } }: BalanceQuestion): string | null {
  return asked.find((path) => !joint.ledger.given(path)) ?? null;
}

/** Everywhere the lift goes; a top link set apart for carrying has a course of its own. */
export function everywhere({ structure }: BalanceQuestion): readonly Course[] {
  return structure.lift.carriesApart && structure.held ? ['stroke', 'raise'] : ['stroke'];
}
