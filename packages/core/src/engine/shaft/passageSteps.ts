import { openFormula, type Formula, type Step } from '../formula/index.ts';
import { keyOf, liftSteps, type Course } from '../lift/index.ts';
import { planeOf, type Arrow, type Plane } from '../linkage/index.ts';
import { envelopeOf, least, otherSide, roomAt, roomNearEdge, roomToEdge, type Envelope } from './envelope.ts';
import { shaftSteps, type ShaftSteps } from './shaftSteps.ts';
import type { ShaftStructure } from './structure.ts';

/** What stands beside the shaft’s way. */
export interface Surroundings {
  readonly window: boolean;
  readonly windowBottom: boolean;
  /** Corners of each drawbar outline in the side view. */
  readonly drawbars: readonly number[];
}

/** Room of the guard beside everything at a place of the lift, as a step of a formula [mm]. */
export interface ThroughPassage {
  readonly formula: Formula;
  /** Beside each thing by itself. */
  readonly rooms: readonly Step[];
  /** The least of them. */
  readonly room: Step;
}

const known = new Map<string, ThroughPassage>();

/** The formula of the passage along a course of the lift; setups of the same structure share it. */
export function throughPassage(structure: ShaftStructure, surroundings: Surroundings, course: Course): ThroughPassage {
  const key = `${course} ${JSON.stringify(surroundings)} ${String(structure.turnedAside)} ${keyOf(structure.lift)}`;
  const made = known.get(key) ?? write(structure, surroundings, course);
  known.set(key, made);
  return made;
}

function write(structure: ShaftStructure, surroundings: Surroundings, course: Course): ThroughPassage {
  const writer = openFormula();
  const p = planeOf(writer);
  const steps = shaftSteps(p, structure, liftSteps(p, structure.lift, course));
  const side = sideEnvelope(p, steps);
  const rooms = [
    roomUnderTopLink(p, steps, side),
    roomAtLinks(p, steps, side),
    ...(surroundings.window ? windowRooms(p, steps, surroundings) : []),
    ...surroundings.drawbars.map((corners, i) => roomOverDrawbar(p, steps, side, { corners, i })),
  ];
  const room = least(p, rooms);
  return { formula: writer.finish(), rooms, room };
}

/** The envelope from the side, for what has to stay above it; over its swing it leans out of the view by as much as it goes aside. */
function sideEnvelope(p: Plane, steps: ShaftSteps): Envelope {
  return envelopeOf(p, steps.tractorCross, steps.implementCross, sidewaysLean(p, steps), 1);
}

function sidewaysLean(p: Plane, { leftmost, rightmost, longest }: ShaftSteps): Step {
  return p.divide(p.greater(rightmost, p.scaled(leftmost, -1)), longest);
}

function uprightLean(p: Plane, { tractorCross, implementCross, shortest }: ShaftSteps): Step {
  const rise = p.subtract(implementCross.z, tractorCross.z);
  return p.divide(p.greater(rise, p.scaled(rise, -1)), shortest);
}

/** The top link passes above: seen from the side, which leaves the least of any view. */
function roomUnderTopLink(p: Plane, { lift }: ShaftSteps, side: Envelope): Step {
  return p.subtract(roomToEdge(p, side, lift.topPivot, lift.body.upper), p.leaf('topLinkRadius'));
}

/**
 * Each lower link passes beside, or wholly below or above: what is clear in one view is clear. The shaft goes from its
 * leftmost to its rightmost, and the links sway with the implement.
 */
function roomAtLinks(p: Plane, steps: ShaftSteps, side: Envelope): Step {
  const { links, place } = steps.lift;
  const half = p.half(p.leaf('lowerLinkThickness'));
  const below = roomToEdge(p, otherSide(side), links.pivot, place.ball);
  const above = roomToEdge(p, side, links.pivot, place.ball);
  const beside = p.lesser(
    besideLink(p, steps, steps.rightmost, 1),
    besideLink(p, steps, p.scaled(steps.leftmost, -1), -1),
  );
  return p.subtract(p.greater(beside, p.greater(below, above)), half);
}

/** Room in plan between the shaft at one end of its swing and the link on that side; the left side is seen in a mirror. */
function besideLink(p: Plane, steps: ShaftSteps, aside: Step, mirror: 1 | -1): Step {
  const { links, place } = steps.lift;
  const stub = p.scaled(p.leaf('stubAside'), mirror);
  const from = p.arrow(steps.tractorCross.x, stub);
  const to = p.arrow(steps.implementCross.x, p.add(stub, aside));
  const plan = envelopeOf(p, from, to, uprightLean(p, steps), 1);
  const pivot = p.arrow(links.pivot.x, links.halfAtPivot);
  const ball = p.arrow(place.ball.x, p.subtract(links.halfAtBall, p.leaf('sidePlay')));
  return roomToEdge(p, plan, pivot, ball);
}

/** Room to the edges of the coupler’s opening, in the coupler’s own frame: it sways with the links, the shaft’s front end against it. */
function windowRooms(p: Plane, steps: ShaftSteps, { windowBottom }: Surroundings): Step[] {
  const { body } = steps.lift;
  const inFrame = (point: Arrow): Arrow => p.turned(p.minus(point, body.origin), p.back(body.turn));
  const [front, rear] = [inFrame(steps.tractorCross), inFrame(steps.implementCross)];
  const side = envelopeOf(p, front, rear, sidewaysLean(p, steps), 1);
  const edge = (name: string): Arrow => p.arrow(p.leaf('windowBehind'), p.leaf(name));
  const stub = p.leaf('stubAside');
  const sway = p.leaf('sidePlay');
  const post = p.arrow(p.leaf('windowBehind'), p.half(p.leaf('windowWidth')));
  /** From above, seen in a mirror for the left: stub and coupler swayed apart, implement shifted to that side. */
  const beside = (mirror: 1 | -1): Step => {
    const from = p.arrow(front.x, p.add(p.scaled(stub, mirror), sway));
    const outermost = mirror === 1 ? steps.rightmost : p.scaled(steps.leftmost, -1);
    const to = p.arrow(rear.x, p.subtract(p.add(p.scaled(stub, mirror), outermost), sway));
    return roomAt(p, envelopeOf(p, from, to, uprightLean(p, steps), 1), post);
  };
  return [
    roomAt(p, side, edge('windowTop')),
    ...(windowBottom ? [roomAt(p, otherSide(side), edge('windowBottom'))] : []),
    beside(1),
    beside(-1),
  ];
}

/** The drawbar stays below, or to one side. */
function roomOverDrawbar(
  p: Plane,
  steps: ShaftSteps,
  side: Envelope,
  { corners, i }: { readonly corners: number; readonly i: number },
): Step {
  const corner = (at: number): Arrow =>
    p.arrow(p.leaf(`drawbar${i}.${at % corners}.x`), p.leaf(`drawbar${i}.${at % corners}.z`));
  const below = Array.from({ length: corners }, (_, at) =>
    roomNearEdge(p, otherSide(side), corner(at), corner(at + 1)),
  );
  const stub = p.leaf('stubAside');
  const [leftmost, rightmost] = [p.add(stub, steps.leftmost), p.add(stub, steps.rightmost)];
  const cone = p.half(p.leaf('guardConeDiameter'));
  const toLeft = p.subtract(p.leaf(`drawbar${i}.left`), p.greater(stub, rightmost));
  const toRight = p.subtract(p.lesser(stub, leftmost), p.leaf(`drawbar${i}.right`));
  return p.greater(least(p, below), p.subtract(p.greater(toLeft, toRight), cone));
}
