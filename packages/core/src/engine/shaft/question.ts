import { driveRules, type DriveRuleSet } from '../../tables/index.ts';
import type { Shaft } from '../../records/index.ts';
import { holdsUpper, type Course, type Leaves, type LiftQuestion } from '../lift/index.ts';
import { shaftLeaves } from './leaves.ts';
import { structureOf, type ShaftStructure } from './structure.ts';

/** Everything that the lines of one drive are written from. */
export interface ShaftQuestion {
  readonly lift: LiftQuestion;
  readonly structure: ShaftStructure;
  readonly leaves: Leaves;
  readonly rules: DriveRuleSet;
  readonly shaft: Shaft;
  /** Whether a shaft drives the implement; null where nobody said. */
  readonly driven: boolean | null;
  /** Whether the drive turns on the way from pick-up to the carrying height; taken to, unless said otherwise. */
  readonly turnsWhileRaised: boolean;
}

/** A joint of the shaft by its end. */
export type JointEnd = 'tractor' | 'implement';

/**
 * Opens the drive of a setup.
 *
 * @param lift the lift of the same setup [question]
 * @returns the drive [question]
 */
export function openShaft(lift: LiftQuestion): ShaftQuestion {
  const { setup } = lift.joint;
  return {
    lift,
    structure: structureOf(lift),
    leaves: shaftLeaves(lift.joint, lift.leaves),
    rules: driveRules(setup.rules?.driveShaft ?? 'usual'),
    shaft: setup.shaft ?? {},
    driven: isDriven(lift),
    turnsWhileRaised: setup.implement.turnsWhileRaised ?? true,
  };
}

/** Said, or shown by an input shaft or a drive shaft that is described. */
function isDriven({ joint: { setup, ledger } }: LiftQuestion): boolean | null {
  if (setup.implement.driven !== undefined) return setup.implement.driven;
  const isDescribed = setup.shaft !== undefined || ledger.given('implement.inputBehind');
  return isDescribed ? true : null;
}

/** Where the linkage, and then stub and input shaft are: class ranges of a linkage leave every length of a shaft open. */
const places = [
  'tractor.lowerLinkLength',
  'tractor.lowerLinkPivotBehindAxle',
  'tractor.lowerLinkPivotHeight',
  'tractor.topLinkPivotBehindAxle',
  'tractor.topLinkPivotHeight',
  'tractor.stubBehindAxle',
  'tractor.stubHeight',
  'implement.inputBehind',
  'implement.inputAbove',
];

/**
 * What has to be known before lengths and angles mean anything; null where it is. Without a top link to hold, nothing says
 * how the implement stands at a height: its shaft has to be tried by hand.
 */
export function askedFirst({ lift }: ShaftQuestion): string | null {
  if (!holdsUpper(lift)) return 'shaft.triedByHand';
  return places.find((path) => !lift.joint.ledger.given(path)) ?? null;
}

/** Can lengths and angles be computed? */
export function isPlaced(question: ShaftQuestion): boolean {
  return question.driven === true && askedFirst(question) === null;
}

/** The limits of one joint by its kind [deg]. */
export function angleLimits({ rules, shaft }: ShaftQuestion, end: JointEnd): { turning: number; stop: number } {
  const kind = end === 'tractor' ? shaft.jointFront : shaft.jointRear;
  return kind === 'wideAngle'
    ? { turning: rules.wideTurningAngle.value, stop: rules.wideStopAngle.value }
    : { turning: rules.turningAngle.value, stop: rules.stopAngle.value };
}

/** Everywhere the lift goes; a top link set apart for carrying has a course of its own. */
export function everywhere({ structure }: ShaftQuestion): readonly Course[] {
  return structure.lift.carriesApart ? ['stroke', 'raise'] : ['stroke'];
}
