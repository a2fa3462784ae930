import { exactly, lesser, middle, multiply } from '../geometry/index.ts';
import type { Step } from '../formula/index.ts';
import type { Term } from '../proof/index.ts';
import type { LeafTerms } from './leaves.ts';
import { openRun } from './run.ts';
import type { Structure } from './structure.ts';
import { throughLift } from './throughLift.ts';

/** A quantity bounded with care, and the same at the middle of a box, quickly. */
export interface Torque {
  readonly exact: Term;
  readonly quick: Term;
}

const none: Term = () => exactly(0);

/**
 * The constant torque of the lift arms whose smallest force over the whole stroke equals the rating, the lower of the two
 * ratings where there are two [kg·mm]: rating × the greatest rise of its test point for a unit turn of the arm.
 */
export function constantTorque(structure: Structure, leaves: LeafTerms): Torque {
  if (!structure.arms || (!structure.atBalls && !structure.at610)) return { exact: none, quick: none };
  const { formula, steps } = throughLift(structure, 'rated');
  const rated: readonly (readonly [string, Step])[] = [
    ...(structure.atBalls ? [['liftAtBalls', steps.supply.ballsByArm] as const] : []),
    ...(structure.at610 ? [['liftAt610', steps.supply.testByArm] as const] : []),
  ];
  const run = openRun(
    formula,
    { exact: leaves, quick: leaves },
    rated.map(([, rise]) => rise),
  );
  const least =
    (torques: readonly Term[]): Term =>
    (at) =>
      torques.map((torque) => torque(at)).reduce(lesser);
  const rating = (name: string): Term => leaves.get(name) as Term;
  return {
    exact: least(
      rated.map(([name, rise]) => {
        const greatest = run.greatest(rise);
        return (at) => multiply(rating(name)(at), greatest(at));
      }),
    ),
    quick: least(
      rated.map(([name, rise]) => {
        const greatest = run.greatestEstimate(rise);
        return (at) => exactly(middle(rating(name)(at)) * greatest(at));
      }),
    ),
  };
}
