import type { Interval } from '../geometry/index.ts';
import type { Reading } from '../proof/index.ts';
import { holdsUpper, type LiftQuestion } from './question.ts';
import { openRun } from './run.ts';
import { throughLift } from './throughLift.ts';

/** Pieces that the lift is cut into: outlines are placed in each. */
const pieces = 6;

/** Turns over each piece of the lift, and at a few places at the middle of a box [rad]. */
export interface Swing {
  readonly along: (at: Reading) => readonly Interval[];
  readonly near: (at: Reading) => readonly number[];
  readonly reads: (at: Reading) => void;
}

/**
 * How the implement turns against hooks or claws that ride on the link ends: its pitch less the angle of the links, both
 * drawn level.
 *
 * @param lift the lift of a setup [question]
 * @returns turns by piece, or null where a rigid frame holds it or the linkage is not known [rad]
 */
export function swingOf(lift: LiftQuestion): Swing | null {
  const ridesOnLinks = lift.joint.hold === 'hookEnds' || lift.joint.hold === 'clawEnds';
  if (!ridesOnLinks || !lift.structure.linkage || !holdsUpper(lift)) return null;
  const { formula, steps } = throughLift(lift.structure, 'stroke');
  const run = openRun(formula, lift.leaves, [steps.swing], pieces);
  return { along: run.along(steps.swing), near: run.values(steps.swing), reads: run.reads(steps.swing) };
}
