import { openFormula, type Formula, type Step } from '../formula/index.ts';
import { keyOf, liftSteps, type Course, type LiftSteps } from '../lift/index.ts';
import { planeOf, type Arrow, type Plane, type Turn } from '../linkage/index.ts';
import type { ShaftStructure } from './structure.ts';

/**
 * The drive shaft at a place of the lift, as steps of a formula [mm, rad]. Shift and sway move the joint at the implement
 * from its leftmost to its rightmost; what is greatest or least is so over all of them.
 */
export interface ShaftSteps {
  readonly lift: LiftSteps;
  /** Cross centres in the side view, J1 at the tractor and J2 at the implement. */
  readonly tractorCross: Arrow;
  readonly implementCross: Arrow;
  /** Groove, or other point read, of stub and input shaft. */
  readonly stub: Arrow;
  readonly input: Arrow;
  /** How far J2 stands to the right of J1, at its leftmost and at its rightmost. */
  readonly leftmost: Step;
  readonly rightmost: Step;
  /** D at its shortest and its longest. */
  readonly shortest: Step;
  readonly longest: Step;
  /** β1 and β2 at their greatest. */
  readonly tractorAngle: Step;
  readonly implementAngle: Step;
  /** Direction of the input shaft, from its front to its rear, in the side view: α + φ + δ. */
  readonly slope: Step;
}

/** A formula with its steps. */
export interface ThroughShaft {
  readonly formula: Formula;
  readonly steps: ShaftSteps;
}

const known = new Map<string, ThroughShaft>();

/** The formula of a drive along a course of the lift; setups of the same structure share it. */
export function throughShaft(structure: ShaftStructure, course: Course): ThroughShaft {
  const key = `${course} ${String(structure.turnedAside)} ${keyOf(structure.lift)}`;
  const made = known.get(key) ?? write(structure, course);
  known.set(key, made);
  return made;
}

function write(structure: ShaftStructure, course: Course): ThroughShaft {
  const writer = openFormula();
  const p = planeOf(writer);
  const steps = shaftSteps(p, structure, liftSteps(p, structure.lift, course));
  return { formula: writer.finish(), steps };
}

/** Writes the drive at a place of the lift. */
export function shaftSteps(p: Plane, structure: ShaftStructure, lift: LiftSteps): ShaftSteps {
  const stub = p.arrow(p.leaf('stubBehindAxle'), p.leaf('stubHeight'));
  const tractorCross = p.arrow(p.add(stub.x, p.leaf('stubReach')), stub.z);
  const slope = p.add(p.scaled(p.leaf('inputAngle'), Math.PI / 180), lift.pitch);
  const axis = p.turnOf(slope);
  const yaw = structure.turnedAside ? p.turnOf(p.scaled(p.leaf('inputYaw'), Math.PI / 180)) : null;
  const input = p.plus(lift.pins, p.turned(p.arrow(p.leaf('inputBehind'), p.leaf('inputAbove')), p.turnOf(lift.pitch)));
  const reach = yaw === null ? p.leaf('inputReach') : p.multiply(p.leaf('inputReach'), yaw.cos);
  const implementCross = p.minus(input, p.times(p.arrow(axis.cos, axis.sin), reach));
  const span = p.minus(implementCross, tractorCross);
  const { leftmost, rightmost } = asideOf(p, yaw);
  const farSquared = p.greater(p.square(leftmost), p.square(rightmost));
  const along = p.turned(span, p.back(axis));
  const angleAt = (aside: Step): Step => angleToInput(p, along, aside, yaw);
  const flat = p.lengthSquared(span);
  return {
    lift,
    tractorCross,
    implementCross,
    stub,
    input,
    leftmost,
    rightmost,
    shortest: p.squareRoot(p.add(flat, p.square(nearest(p, leftmost, rightmost)))),
    longest: p.squareRoot(p.add(flat, farSquared)),
    tractorAngle: angleBetween(p, span.x, p.squareRoot(p.add(p.square(span.z), farSquared))),
    implementAngle: p.greater(angleAt(leftmost), angleAt(rightmost)),
    slope,
  };
}

/** The joint at the implement goes aside with the shift of the implement and the sway of the links. */
function asideOf(p: Plane, yaw: Turn | null): { leftmost: Step; rightmost: Step } {
  const straight = p.subtract(p.leaf('inputAside'), p.leaf('stubAside'));
  const middle = yaw === null ? straight : p.add(straight, p.multiply(p.leaf('inputReach'), yaw.sin));
  const sway = p.leaf('sidePlay');
  return {
    leftmost: p.subtract(middle, p.add(p.leaf('shiftLeft'), sway)),
    rightmost: p.add(middle, p.add(p.leaf('shiftRight'), sway)),
  };
}

/** The least distance from the middle plane between two places: none where the plane lies between them. */
function nearest(p: Plane, leftmost: Step, rightmost: Step): Step {
  return p.greater(p.constant(0), p.greater(leftmost, p.scaled(rightmost, -1)));
}

/** The angle between a line and an axis, from how far it goes along the axis and across it: over 90° where it goes back. */
function angleBetween(p: Plane, along: Step, across: Step): Step {
  return p.subtract(p.constant(Math.PI / 2), p.arcTangent(p.divide(along, p.greater(across, p.constant(straight)))));
}

/** Less than this across counts as straight [mm]: nothing is divided by nothing. */
const straight = 1e-9;

/**
 * β2 with the joint at one place aside. While the shaft goes rearward along the input shaft, the cosine of this angle has
 * one greatest value over the places aside and no least between them: the angle is greatest at one of its ends.
 */
function angleToInput(p: Plane, along: Arrow, aside: Step, yaw: Turn | null): Step {
  if (yaw === null) return angleBetween(p, along.x, p.squareRoot(p.add(p.square(along.z), p.square(aside))));
  const forward = p.subtract(p.multiply(along.x, yaw.cos), p.multiply(aside, yaw.sin));
  const sideways = p.add(p.multiply(along.x, yaw.sin), p.multiply(aside, yaw.cos));
  return angleBetween(p, forward, p.squareRoot(p.add(p.square(along.z), p.square(sideways))));
}
