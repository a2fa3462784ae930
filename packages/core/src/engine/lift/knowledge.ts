import type { Joint } from '../joint/index.ts';

/** What is known of a tractor's lift; every check through the lift is written from what there is. */
export interface Knowledge {
  /** Lower links and top link are placed: attitudes can be computed. */
  readonly linkage: boolean;
  /** Lift arms and rods are placed: their angle, and torque, can be computed. */
  readonly arms: boolean;
  /** The range of the lift follows from the arms' angles. */
  readonly armAngles: boolean;
  /** How low and how high the balls go is known. */
  readonly heights: boolean;
  /** The lift cylinder is known: its push, not a rating, says what the arms turn with. */
  readonly cylinder: boolean;
  readonly atBalls: boolean;
  readonly at610: boolean;
}

/** How the lift is worked out: from its cylinder, from its linkage and ratings, from its ratings alone, or not at all. */
export type LiftBasis = 'cylinder' | 'linkage' | 'ratings' | 'none';

const linkagePaths = [
  'lowerLinkLength',
  'lowerLinkPivotBehindAxle',
  'lowerLinkPivotHeight',
  'topLinkPivotBehindAxle',
  'topLinkPivotHeight',
];
const armPaths = ['liftArmPivotBehindAxle', 'liftArmPivotHeight', 'liftArmLength', 'liftRodLength', 'liftRodAlong'];
const cylinderPaths = [
  'cylinderBore',
  'liftPressure',
  'cylinderPivotBehindAxle',
  'cylinderPivotHeight',
  'cylinderCrank',
  'cylinderCrankAngle',
];

/** Reads off what is known. */
export function knowledgeOf({ ledger }: Joint): Knowledge {
  const all = (keys: readonly string[]): boolean => keys.every((key) => ledger.given(`tractor.${key}`));
  const linkage = all(linkagePaths);
  const arms = linkage && all(armPaths);
  const armAngles = arms && all(['liftArmLowest', 'liftArmHighest']);
  return {
    linkage,
    arms,
    armAngles,
    heights: armAngles || all(['ballHeightLow', 'ballHeightHigh']),
    cylinder: arms && all(cylinderPaths),
    atBalls: ledger.given('tractor.liftAtBalls'),
    at610: ledger.given('tractor.liftAt610'),
  };
}
