import type { Step } from '../formula/index.ts';
import {
  bodyAt,
  bodyStanding,
  linksAt,
  riseOf,
  type ArmPlace,
  type Arrow,
  type BodyPlace,
  type LinkPlace,
  type LowerLinks,
  type Plane,
} from '../linkage/index.ts';
import type { Structure } from './structure.ts';

/** The distance behind the hitch points at which lifts are rated [mm]: ISO 789-2:2018, scope. */
export const testDistance = 610;

/** More than any lift can do [kg]: stands where nothing bounds the lift from above. */
export const noBound = 1e7;

/** What the lift can do at one height, as the mass that it lifts at the ball ends, before any allowance [kg]. */
export interface SupplySteps {
  /** Proven by the ratings, or by the cylinder at its lowest efficiency. */
  readonly lowAtBalls: Step;
  /** The same, estimated; never below what is proven. */
  readonly highAtBalls: Step;
  /** The estimate as it comes: where it lies below what is proven, the ratings contradict it. */
  readonly estimateAtBalls: Step;
  /** Rise of the test point behind the test frame with the balls [mm/mm]. */
  readonly testRise: Step;
  /** Rise of the balls, and of the test point, for a unit turn of the arm [mm]; zero where the arms are unknown. */
  readonly ballsByArm: Step;
  readonly testByArm: Step;
}

/** What the supply is written from. */
export interface SupplyInputs {
  readonly p: Plane;
  readonly structure: Structure;
  readonly links: LowerLinks;
  readonly place: LinkPlace;
  readonly topPivot: Arrow;
  readonly arm: ArmPlace | null;
  /** The load that margins are told for. */
  readonly load: { readonly at: Arrow; readonly rise: Step };
}

/**
 * Virtual work at one height. Dividing by the rise of the balls instead of the turn of the arm, the arm drops out: a rating
 * F at a test point proves F × (rise of the test point) at the balls.
 */
export function supplySteps(inputs: SupplyInputs): SupplySteps {
  const { p, structure } = inputs;
  const test = testFrame(inputs);
  const testRise = riseOf(
    p,
    test,
    p.plus(test.origin, p.turned(p.arrow(p.constant(testDistance), p.constant(0)), test.turn)),
  );
  const byArm = (one: Step): Step => (inputs.arm === null ? p.constant(0) : p.divide(one, inputs.arm.spin));
  const common = { testRise, ballsByArm: byArm(p.constant(1)), testByArm: byArm(testRise) };
  if (structure.cylinder && inputs.arm !== null) {
    const atBalls = cylinderAtBalls(p, inputs.arm);
    return { lowAtBalls: atBalls, highAtBalls: atBalls, estimateAtBalls: atBalls, ...common };
  }
  const lowAtBalls = ratedAtBalls(inputs, testRise);
  const estimateAtBalls = estimateOf(inputs);
  return { lowAtBalls, highAtBalls: p.greater(lowAtBalls, estimateAtBalls), estimateAtBalls, ...common };
}

/** The frame of the lift test on the same links: its mast upright with the links level, unless its top link is known. */
function testFrame({ p, structure, links, place, topPivot }: SupplyInputs): BodyPlace {
  const frame = { onLink: null, upper: p.arrow(p.constant(0), p.leaf('liftTestMastHeight')) };
  const upright = { cos: p.constant(1), sin: p.constant(0) };
  const level = bodyStanding(p, linksAt(p, links, links.pivot.z), frame, upright);
  const topLink = structure.testTopLinkGiven ? p.leaf('liftTestTopLink') : p.length(p.minus(level.upper, topPivot));
  return bodyAt(p, place, frame, topPivot, topLink);
}

/** The largest that the ratings prove at the balls. */
function ratedAtBalls({ p, structure }: SupplyInputs, testRise: Step): Step {
  const back = p.multiply(p.leaf('liftAt610'), testRise);
  if (!structure.at610) return p.leaf('liftAtBalls');
  return structure.atBalls ? p.greater(p.leaf('liftAtBalls'), back) : back;
}

/**
 * The estimate at the balls: with the arms known, the constant torque (a leaf, found over the whole stroke); without
 * them, the line in 1/F through both ratings at the load's distance behind the balls; else nothing bounds it.
 */
function estimateOf({ p, structure, arm, place, load }: SupplyInputs): Step {
  if (arm !== null) return p.multiply(p.leaf('constantTorque'), arm.spin);
  if (!structure.atBalls || !structure.at610) return p.constant(noBound);
  return p.multiply(lineInInverse(p, p.subtract(load.at.x, place.ball.x)), load.rise);
}

/** 1/F on the line through 1/F at the balls and 1/F at the test distance. */
export function lineInInverse(p: Plane, behind: Step): Step {
  const [near, far] = [p.divide(p.constant(1), p.leaf('liftAtBalls')), p.divide(p.constant(1), p.leaf('liftAt610'))];
  const share = p.scaled(p.greater(p.constant(0), behind), 1 / testDistance);
  return p.divide(p.constant(1), p.add(near, p.multiply(share, p.subtract(far, near))));
}

/** η·F·dc/dψ over the rise of the balls: the push of the cylinders by their crank [kg at the balls]. */
function cylinderAtBalls(p: Plane, arm: ArmPlace): Step {
  const pivot = p.arrow(p.leaf('liftArmPivotBehindAxle'), p.leaf('liftArmPivotHeight'));
  const fixed = p.arrow(p.leaf('cylinderPivotBehindAxle'), p.leaf('cylinderPivotHeight'));
  const direction = p.turnOf(p.add(arm.angle, p.scaled(p.leaf('cylinderCrankAngle'), Math.PI / 180)));
  const crank = p.times(p.arrow(direction.cos, direction.sin), p.leaf('cylinderCrank'));
  const rod = p.minus(p.plus(pivot, crank), fixed);
  const lengthening = p.divide(p.dot(rod, p.quarter(crank)), p.length(rod));
  const push = p.multiply(p.multiply(pushOf(p), p.leaf('liftCylinders')), p.leaf('liftEfficiency'));
  return p.multiply(p.multiply(push, lengthening), arm.spin);
}

/** Newtons that lift one kilogram. */
const gravity = 9.80665;
/** Newtons on one square millimetre at one bar. */
const newtonsPerBar = 0.1;

/** Push of one cylinder [kg]: pressure × area of the bore. */
export function pushOf(p: Plane): Step {
  const area = p.scaled(p.square(p.leaf('cylinderBore')), Math.PI / 4);
  return p.scaled(p.multiply(p.leaf('liftPressure'), area), newtonsPerBar / gravity);
}
