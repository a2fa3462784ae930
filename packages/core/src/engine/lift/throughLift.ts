import { openFormula, type Formula, type Step } from '../formula/index.ts';
import {
  armAt,
  ballHeightAt,
  bodyAt,
  bodyStanding,
  linksAt,
  lowerLinks,
  planeOf,
  type Arrow,
  type ArmPlace,
  type BodyPlace,
  type HeldBody,
  type LiftArms,
  type LinkPlace,
  type LowerLinks,
  type Plane,
  type Turn,
} from '../linkage/index.ts';
import { carriedBy, turnInCoupler, type Carried } from './carried.ts';
import { spareSteps, type SpareSteps } from './spare.ts';
import { forcesOn, type ForceSteps } from './statics.ts';
import { keyOf, type Structure } from './structure.ts';
import { supplySteps, type SupplySteps } from './supply.ts';
import { clearanceOf, convergence, tyreGapOf, type ConvergenceSteps } from './surroundings.ts';

/**
 * Which heights the places of a formula run through: the whole stroke from lowest to highest (or the lift stop), the raise
 * from pick-up to carrying height, or one height alone: the lowest, the carrying height, the one at work. A lift is rated over all of its
 * movement, whatever stop is set.
 */
export type Course = 'stroke' | 'raise' | 'rated' | 'bottom' | 'carry' | 'work';

/** Everything computed at a place of the lift, as steps of one formula [mm, rad, kg]. */
export interface LiftSteps extends Carried, SpareSteps, ForceSteps, ConvergenceSteps {
  readonly ballHeight: Step;
  readonly lowest: Step;
  readonly highest: Step;
  readonly workHeight: Step;
  /** Length of the top link that makes the implement stand as set at work, and the length in use. */
  readonly workTopLink: Step;
  readonly topLink: Step;
  readonly links: LowerLinks;
  readonly place: LinkPlace;
  readonly body: BodyPlace;
  readonly topPivot: Arrow;
  readonly arm: ArmPlace | null;
  readonly supply: SupplySteps;
  /** Turn of the body against the links [rad]. */
  readonly swing: Step;
  /** Height of the lowest part above the ground. */
  readonly clearance: Step;
  /** Room between the lower link's outer face and the tyre. */
  readonly tyreGap: Step;
  /** What is left before any loop of the linkage is straight or folded, or the links are out of their reach. */
  readonly closesHere: Step;
  /** The same; over the stroke, also of the raise with a top link that is set apart for carrying. */
  readonly closes: Step;
}

/** A formula with its steps. */
export interface ThroughLift {
  readonly formula: Formula;
  readonly steps: LiftSteps;
}

const known = new Map<string, ThroughLift>();

/** The formula of a structure along a course; setups of the same structure share it. */
export function throughLift(structure: Structure, course: Course): ThroughLift {
  const key = `${course} ${keyOf(structure)}`;
  const made = known.get(key) ?? write(structure, course);
  known.set(key, made);
  return made;
}

function write(structure: Structure, course: Course): ThroughLift {
  const writer = openFormula();
  const steps = liftSteps(planeOf(writer), structure, course);
  return { formula: writer.finish(), steps };
}

/** Writes everything computed at a place of the lift into a formula, for what is computed from it elsewhere. */
export function liftSteps(p: Plane, structure: Structure, course: Course): LiftSteps {
  const links = linksOf(p);
  const arms = structure.arms ? armsOf(p, links) : null;
  const { lowest, highest } = strokeOf(p, structure, course, links, arms);
  const held = heldBody(p, structure);
  const topPivot = p.arrow(p.leaf('topLinkPivotBehindAxle'), p.leaf('topLinkPivotHeight'));
  const working = atWork(p, structure, links, held, topPivot);
  const topLink =
    structure.carriesApart && (course === 'raise' || course === 'carry')
      ? p.leaf('topLinkWhileCarrying')
      : working.topLink;
  const ballHeight =
    course === 'work' ? working.ballHeight : heightOn(p, structure, course, { lowest, highest, links });
  const place = linksAt(p, links, ballHeight);
  const body = bodyAt(p, place, held, topPivot, topLink);
  const arm = arms === null ? null : armAt(p, links, place, arms);
  const carried = carriedBy(p, structure, place, body);
  const supply = supplySteps({ p, structure, links, place, topPivot, arm, load: carried.load });
  const forces = forcesOn(p, body, topPivot, topLink, carried);
  const carriedCloses = (): Step => {
    const raised = linksAt(p, links, heightOn(p, structure, 'raise', { lowest, highest, links }));
    return bodyAt(p, raised, held, topPivot, p.leaf('topLinkWhileCarrying')).closes;
  };
  const closesHere = closingAt(p, links, ballHeight, body, arm);
  return {
    ballHeight,
    lowest,
    highest,
    workHeight: working.ballHeight,
    workTopLink: working.topLink,
    topLink,
    links,
    place,
    body,
    topPivot,
    arm,
    ...carried,
    supply,
    ...spareSteps(p, supply, carried),
    ...forces,
    swing: p.subtract(carried.pitch, p.arcSine(place.direction.sin)),
    clearance: clearanceOf(p, carried.pins, carried.pitch),
    tyreGap: tyreGapOf(p, links, place),
    closesHere,
    closes: course === 'stroke' && structure.carriesApart ? p.lesser(closesHere, carriedCloses()) : closesHere,
    ...convergence(p, links, place, body, topPivot),
  };
}

/** What is left at one height before a loop is straight or folded, and before the links point straight up or down. */
function closingAt(p: Plane, links: LowerLinks, ballHeight: Step, body: BodyPlace, arm: ArmPlace | null): Step {
  const above = p.subtract(ballHeight, links.pivot.z);
  const reach = p.subtract(links.length, p.greater(above, p.scaled(above, -1)));
  const loops = arm === null ? body.closes : p.lesser(body.closes, arm.closes);
  return p.lesser(reach, loops);
}

function linksOf(p: Plane): LowerLinks {
  const pivot = p.arrow(p.leaf('lowerLinkPivotBehindAxle'), p.leaf('lowerLinkPivotHeight'));
  return lowerLinks(p, pivot, p.leaf('lowerLinkLength'), p.leaf('halfPivotSpan'), p.leaf('halfBallSpan'));
}

/** A place on the true link scales to the projected one by ℓ/L; the rod is projected by its own lean. */
function armsOf(p: Plane, links: LowerLinks): LiftArms {
  return {
    pivot: p.arrow(p.leaf('liftArmPivotBehindAxle'), p.leaf('liftArmPivotHeight')),
    length: p.leaf('liftArmLength'),
    along: p.multiply(p.leaf('liftRodAlong'), links.foreshortening),
    above: p.leaf('liftRodAbove'),
    rod: p.squareRoot(p.subtract(p.square(p.leaf('liftRodLength')), p.square(p.leaf('liftRodAside')))),
  };
}

function strokeOf(
  p: Plane,
  structure: Structure,
  course: Course,
  links: LowerLinks,
  arms: LiftArms | null,
): { lowest: Step; highest: Step } {
  const byArms = structure.armAngles && arms !== null;
  const height = (angle: string, ball: string): Step =>
    byArms ? ballHeightAt(p, links, arms, p.scaled(p.leaf(angle), Math.PI / 180)) : p.leaf(ball);
  const top = height('liftArmHighest', 'ballHeightHigh');
  return {
    lowest: height('liftArmLowest', 'ballHeightLow'),
    highest: structure.stopGiven && course !== 'rated' ? p.lesser(top, p.leaf('liftStopHeight')) : top,
  };
}

function heldBody(p: Plane, { held }: Structure): HeldBody {
  return {
    onLink: held === 'onLinkEnds' ? p.arrow(p.leaf('hookBehind'), p.leaf('hookRise')) : null,
    upper: p.arrow(p.leaf('upperBehind'), p.leaf('upperAbove')),
  };
}

/** The working attitude fixes the top link: the implement stands level, within what may be set, at its working height. */
function atWork(
  p: Plane,
  structure: Structure,
  links: LowerLinks,
  held: HeldBody,
  topPivot: Arrow,
): { ballHeight: Step; topLink: Step } {
  const pitch = p.subtract(p.scaled(p.leaf('workPitch'), Math.PI / 180), turnInCoupler(p, structure));
  const turn = p.turnOf(pitch);
  const ballHeight = structure.workGiven
    ? ballHeightFor(p, structure, links, p.leaf('workPinHeight'), turn)
    : links.pivot.z;
  const { upper } = bodyStanding(p, linksAt(p, links, ballHeight), held, turn);
  return { ballHeight, topLink: p.length(p.minus(upper, topPivot)) };
}

/**
 * Height of the balls that brings the hooks, or the pins themselves, to a height: hooks on the link ends turn with the
 * links, as a longer link at an angle to the true one; hooks of a frame turn with the frame.
 */
function ballHeightFor(p: Plane, { held }: Structure, links: LowerLinks, height: Step, frame: Turn): Step {
  const hooks = p.arrow(p.leaf('hookBehind'), p.leaf('hookRise'));
  if (held === 'onBalls') return height;
  if (held === 'byFrame') return p.subtract(height, p.turned(hooks, frame).z);
  const long = p.arrow(p.add(links.length, hooks.x), hooks.z);
  const sine = p.divide(p.subtract(height, links.pivot.z), p.length(long));
  const angle = p.subtract(p.arcSine(sine), p.arcTangent(p.divide(long.z, long.x)));
  return p.add(links.pivot.z, p.multiply(links.length, p.sine(angle)));
}

/** Ball height along the course: its foot, plus its share of the way. */
function heightOn(
  p: Plane,
  structure: Structure,
  course: Course,
  { lowest, highest, links }: { readonly lowest: Step; readonly highest: Step; readonly links: LowerLinks },
): Step {
  const carry = p.lesser(highest, p.leaf('carryHeight'));
  if (course === 'carry') return carry;
  if (course === 'bottom') return lowest;
  const upright = { cos: p.constant(1), sin: p.constant(0) };
  const parked = p.greater(lowest, ballHeightFor(p, structure, links, p.leaf('parkedPinHeight'), upright));
  const from = course === 'raise' && structure.parkedGiven ? p.lesser(parked, carry) : lowest;
  const to = course === 'raise' ? carry : highest;
  return p.add(from, p.multiply(p.lane(), p.subtract(to, from)));
}
