import type { Interval } from '../geometry/index.ts';
import type { Reading } from '../proof/index.ts';
import { holdsUpper, type LiftQuestion } from './question.ts';
import { openRun } from './run.ts';
import { throughLift } from './throughLift.ts';

/**
 * How the implement turns against hooks or claws that ride on the link ends, over each piece of the lift [rad]: its pitch
 * less the angle of the links, both drawn level.
 *
 * @param lift the lift of a setup [question]
 * @returns turns by piece, or null where a rigid frame holds it or the linkage is not known [rad]
 */
export function swingOf(lift: LiftQuestion): ((at: Reading) => readonly Interval[]) | null {
  const ridesOnLinks = lift.joint.hold === 'hookEnds' || lift.joint.hold === 'clawEnds';
  if (!ridesOnLinks || !lift.structure.linkage || !holdsUpper(lift)) return null;
  const { formula, steps } = throughLift(lift.structure, 'stroke');
  return openRun(formula, lift.leaves, [steps.swing]).along(steps.swing);
}
