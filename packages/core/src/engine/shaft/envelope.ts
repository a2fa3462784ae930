import type { Step } from '../formula/index.ts';
import type { Arrow, Plane } from '../linkage/index.ts';

/**
 * The guard in one view: a line from joint to joint, with a tube about it and a cone at either end that tapers to the tube
 * [mm].
 */
export interface Envelope {
  readonly from: Arrow;
  readonly along: Arrow;
  readonly length: Step;
}

/** The envelope between two joints as one view shows them. */
export function envelopeOf(p: Plane, from: Arrow, to: Arrow): Envelope {
  const span = p.minus(to, from);
  const length = p.length(span);
  return { from, along: p.times(span, p.divide(p.constant(1), length)), length };
}

/**
 * What is left between the guard and a point that has to stay to the left of its line (above, where the line runs
 * rearward in the side view): the distance to the line less the guard’s radius there. The line goes on beyond the joints as
 * the shafts do. Along a straight edge this has no least but at the ends of the edge: the distance goes straight, the
 * radius bends up toward either joint.
 */
export function roomTo(p: Plane, envelope: Envelope, point: Arrow): Step {
  return p.subtract(p.cross(envelope.along, p.minus(point, envelope.from)), radiusAt(p, envelope, point));
}

/** The same for a point that has to stay to the right (below). */
export function roomBelow(p: Plane, envelope: Envelope, point: Arrow): Step {
  const below = p.cross(p.minus(point, envelope.from), envelope.along);
  return p.subtract(below, radiusAt(p, envelope, point));
}

/** Radius of the guard beside a point: the cone’s at and beyond a joint, tapering to the tube’s over the length of the cone. */
function radiusAt(p: Plane, { from, along, length }: Envelope, point: Arrow): Step {
  const tube = p.half(p.leaf('guardTubeDiameter'));
  const cone = p.half(p.leaf('guardConeDiameter'));
  const behind = p.dot(along, p.minus(point, from));
  const nearer = p.greater(p.constant(0), p.lesser(behind, p.subtract(length, behind)));
  const share = p.greater(p.constant(0), p.subtract(p.constant(1), p.divide(nearer, p.leaf('guardConeLength'))));
  return p.add(tube, p.multiply(p.subtract(cone, tube), share));
}
