import type { Step } from '../formula/index.ts';
import { closing, leanOf, type Arrow, type Plane, type Turn } from './plane.ts';

/** The tractor's lower links seen from the side, as steps of a formula [mm]. */
export interface LowerLinks {
  readonly pivot: Arrow;
  /** Length as it projects into the side view. */
  readonly length: Step;
  /** Projected length ÷ true length. */
  readonly foreshortening: Step;
  /** Half of the spread at the front pivots, and of the ball centres. */
  readonly halfAtPivot: Step;
  readonly halfAtBall: Step;
}

/** The links at one height. */
export interface LinkPlace {
  readonly direction: Turn;
  readonly ball: Arrow;
  /** Movement of the ball for a unit of its height [mm/mm]. */
  readonly ballSpeed: Arrow;
  /** Turn of the link for a unit of the ball's height [rad/mm]. */
  readonly spin: Step;
}

/** ℓ = √(L² − (w_ball − w_pivot)²): splayed links look shorter from the side. */
export function lowerLinks(p: Plane, pivot: Arrow, trueLength: Step, halfAtPivot: Step, halfAtBall: Step): LowerLinks {
  const splay = p.subtract(halfAtBall, halfAtPivot);
  const length = p.squareRoot(p.subtract(p.square(trueLength), p.square(splay)));
  return { pivot, length, foreshortening: p.divide(length, trueLength), halfAtPivot, halfAtBall };
}

/** The links with their ball ends at a height: they point rearward. */
export function linksAt(p: Plane, links: LowerLinks, height: Step): LinkPlace {
  const sin = p.divide(p.subtract(height, links.pivot.z), links.length);
  const cos = p.squareRoot(p.subtract(p.constant(1), p.square(sin)));
  const along = p.times(p.arrow(cos, sin), links.length);
  return {
    direction: { cos, sin },
    ball: p.plus(links.pivot, along),
    ballSpeed: p.arrow(p.scaled(p.divide(sin, cos), -1), p.constant(1)),
    spin: p.divide(p.constant(1), along.x),
  };
}

/** A body that the lower links and the top link hold, in its own frame. */
export interface HeldBody {
  /** From the ball to the body's origin where the body's lower points ride on the link ends, turning with the links; else zero. */
  readonly onLink: Arrow | null;
  /** The upper point that the top link takes, in the body's frame. */
  readonly upper: Arrow;
}

/** The body at one height. */
export interface BodyPlace {
  readonly origin: Arrow;
  readonly originSpeed: Arrow;
  readonly upper: Arrow;
  /** φ, positive where the rear rises [rad]. */
  readonly pitch: Step;
  readonly turn: Turn;
  /** Turn of the body for a unit of the ball's height [rad/mm]. */
  readonly spin: Step;
  /** What is left before top link and body are in line or folded: the linkage closes where it is ≥ 0 [mm]. */
  readonly closes: Step;
}

/** Where the body's origin is, and how it moves, by the links alone. */
function originOf(p: Plane, place: LinkPlace, { onLink }: HeldBody): { at: Arrow; speed: Arrow } {
  if (onLink === null) return { at: place.ball, speed: place.ballSpeed };
  const arm = p.turned(onLink, place.direction);
  return {
    at: p.plus(place.ball, arm),
    speed: p.plus(place.ballSpeed, p.times(p.quarter(arm), place.spin)),
  };
}

/**
 * The body by closing the four-bar, its upper point above the line from the top link's pivot to its origin: pitch
 * φ = atan(O_z − B_z over O_x − B_x) + asin(lean of the body on that line) + atan(e/h), see docs/method/linkage.md.
 */
export function bodyAt(p: Plane, place: LinkPlace, body: HeldBody, pivot: Arrow, topLink: Step): BodyPlace {
  const { at, speed } = originOf(p, place, body);
  const line = p.minus(at, pivot);
  const apart = p.length(line);
  const mast = p.length(body.upper);
  const lean = leanOf(p, apart, mast, topLink);
  const fall = p.arcTangent(p.divide(line.z, line.x));
  const setback = p.arcTangent(p.divide(body.upper.x, body.upper.z));
  const pitch = p.tighten(p.add(p.add(fall, p.arcSine(lean)), setback));
  const turn = p.turnOf(pitch);
  const arm = p.turned(body.upper, turn);
  const lever = p.multiply(p.multiply(mast, apart), p.squareRoot(p.subtract(p.constant(1), p.square(lean))));
  return {
    origin: at,
    originSpeed: speed,
    upper: p.plus(at, arm),
    pitch,
    turn,
    spin: p.tighten(p.divide(p.dot(p.plus(line, arm), speed), lever)),
    closes: closing(p, apart, mast, topLink),
  };
}

/** The body standing in a given attitude at one height: where its upper point then is. */
export function bodyStanding(p: Plane, place: LinkPlace, body: HeldBody, turn: Turn): { origin: Arrow; upper: Arrow } {
  const { at } = originOf(p, place, body);
  return { origin: at, upper: p.plus(at, p.turned(body.upper, turn)) };
}

/** How far a point of the body rises for a unit of the ball's height: its own lift against that of the balls [mm/mm]. */
export function riseOf(p: Plane, place: BodyPlace, point: Arrow): Step {
  return p.tighten(p.add(place.originSpeed.z, p.multiply(place.spin, p.subtract(point.x, place.origin.x))));
}

/** Lift arms and rods as steps of a formula; along and above place the rod's lower end on the projected link [mm]. */
export interface LiftArms {
  readonly pivot: Arrow;
  readonly length: Step;
  readonly along: Step;
  readonly above: Step;
  readonly rod: Step;
}

/** The lift arm at one height. */
export interface ArmPlace {
  readonly end: Arrow;
  readonly rodFoot: Arrow;
  /** ψ, direction of the arm from its pivot [rad]. */
  readonly angle: Step;
  /** Turn of the arm for a unit of the ball's height [rad/mm]. */
  readonly spin: Step;
  readonly closes: Step;
}

/** The arm from the link: of the two places where arm and rod meet, the rearward one; the rod's foot lies under the pivot. */
export function armAt(p: Plane, links: LowerLinks, place: LinkPlace, arms: LiftArms): ArmPlace {
  const reach = p.turned(p.arrow(arms.along, arms.above), place.direction);
  const foot = p.plus(links.pivot, reach);
  const hang = p.minus(foot, arms.pivot);
  const apart = p.length(hang);
  const lean = leanOf(p, apart, arms.length, arms.rod);
  const drop = p.arcTangent(p.divide(hang.x, p.scaled(hang.z, -1)));
  const angle = p.subtract(drop, p.arcSine(lean));
  const direction = p.turnOf(angle);
  const end = p.plus(arms.pivot, p.times(p.arrow(direction.cos, direction.sin), arms.length));
  const footSpeed = p.times(p.quarter(reach), place.spin);
  const lever = p.multiply(p.multiply(arms.length, apart), p.squareRoot(p.subtract(p.constant(1), p.square(lean))));
  return {
    end,
    rodFoot: foot,
    angle,
    spin: p.tighten(p.divide(p.dot(p.minus(end, foot), footSpeed), lever)),
    closes: closing(p, apart, arms.length, arms.rod),
  };
}

/** Height of the balls with the lift arm at an angle: the rod's foot lies below the line from link pivot to arm end. */
export function ballHeightAt(p: Plane, links: LowerLinks, arms: LiftArms, angle: Step): Step {
  const direction = p.turnOf(angle);
  const end = p.plus(arms.pivot, p.times(p.arrow(direction.cos, direction.sin), arms.length));
  const line = p.minus(end, links.pivot);
  const reach = p.arrow(arms.along, arms.above);
  const lean = leanOf(p, p.length(line), p.length(reach), arms.rod);
  const rodAngle = p.arcTangent(p.divide(arms.above, arms.along));
  const upright = p.arcTangent(p.divide(line.x, line.z));
  const link = p.subtract(p.subtract(p.arcSine(lean), upright), rodAngle);
  return p.add(links.pivot.z, p.multiply(links.length, p.sine(link)));
}
