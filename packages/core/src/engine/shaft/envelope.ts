import type { Step } from '../formula/index.ts';
import type { Arrow, Plane } from '../linkage/index.ts';

/**
 * The guard in one view: a line from joint to joint, with a tube about it and a cone at either end that tapers to the tube
 * [mm]. What is left beside it is told on one side of the line.
 */
export interface Envelope {
  readonly from: Arrow;
  readonly along: Arrow;
  readonly length: Step;
  /** How far the round end of a cone reaches beyond its joint where the line leans out of the view. */
  readonly overhang: Step;
  /** 1 for what has to stay to the left of the line (above, where it runs rearward in the side view), −1 to the right. */
  readonly side: 1 | -1;
}

/** The envelope between two joints as one view shows them; `lean` is the sine of the angle between line and view. */
export function envelopeOf(p: Plane, from: Arrow, to: Arrow, lean: Step, side: 1 | -1): Envelope {
  const span = p.minus(to, from);
  const length = p.length(span);
  const along = p.times(span, p.divide(p.constant(1), length));
  return { from, along, length, overhang: p.multiply(p.half(p.leaf('guardConeDiameter')), lean), side };
}

/** The envelope seen from its other side. */
export function otherSide(envelope: Envelope): Envelope {
  return { ...envelope, side: envelope.side === 1 ? -1 : 1 };
}

/** A place beside the envelope: how far along its line, and how far off it. */
interface Beside {
  readonly along: Step;
  readonly off: Step;
}

function besideAt(p: Plane, { from, along, side }: Envelope, point: Arrow): Beside {
  const reach = p.minus(point, from);
  return { along: p.dot(along, reach), off: p.scaled(p.cross(along, reach), side) };
}

/** What is left between the guard and a point. The line goes on beyond the joints, as the shafts do. */
export function roomAt(p: Plane, envelope: Envelope, point: Arrow): Step {
  return roomBeside(p, envelope, besideAt(p, envelope, point));
}

/** The lesser of the distances to the tube and to the slope of the nearer cone. */
function roomBeside(p: Plane, { length, overhang }: Envelope, { along, off }: Beside): Step {
  const tube = p.half(p.leaf('guardTubeDiameter'));
  const flare = p.subtract(p.half(p.leaf('guardConeDiameter')), tube);
  const taper = p.leaf('guardConeLength');
  const nearer = p.greater(p.constant(0), p.subtract(p.lesser(along, p.subtract(length, along)), overhang));
  const share = p.subtract(p.constant(1), p.divide(nearer, taper));
  const slope = p.divide(taper, p.length(p.arrow(taper, flare)));
  const toCone = p.multiply(p.subtract(off, p.add(tube, p.multiply(flare, share))), slope);
  return p.lesser(p.subtract(off, tube), toCone);
}

/**
 * What is left between the guard and a straight edge: along it the room has its least at an end, or beside a joint, where
 * the cone begins.
 */
export function roomToEdge(p: Plane, envelope: Envelope, start: Arrow, end: Arrow): Step {
  const { ends, at } = edgeBeside(p, envelope, start, end);
  const places = [...ends, at(p.constant(0)), at(envelope.length)];
  return least(
    p,
    places.map((place) => roomBeside(p, envelope, place)),
  );
}

/** What lies farther ahead of or behind the joints than this is not looked at, and room is told up to it [mm]. */
const farEnough = 300;

/**
 * The same for an edge that may lie far ahead of the joints or behind them, where no guard is: only what is near is looked
 * at, and what lies farther out is that far away.
 */
export function roomNearEdge(p: Plane, envelope: Envelope, start: Arrow, end: Arrow): Step {
  const { ends, at } = edgeBeside(p, envelope, start, end);
  const [a, b] = ends;
  const far = p.constant(farEnough);
  const places = [p.constant(-farEnough), p.constant(0), envelope.length, p.add(envelope.length, far)];
  const rooms = places.map((along) => roomBeside(p, envelope, at(along)));
  const ahead = p.scaled(p.greater(a.along, b.along), -1);
  const behind = p.subtract(p.lesser(a.along, b.along), envelope.length);
  const away = p.subtract(p.greater(ahead, behind), envelope.overhang);
  return p.lesser(far, p.greater(least(p, rooms), away));
}

interface EdgeBeside {
  readonly ends: readonly [Beside, Beside];
  /** The place of the edge at a distance along the line, or its nearer end. */
  readonly at: (along: Step) => Beside;
}

function edgeBeside(p: Plane, envelope: Envelope, start: Arrow, end: Arrow): EdgeBeside {
  const [a, b] = [besideAt(p, envelope, start), besideAt(p, envelope, end)];
  const run = p.add(p.subtract(b.along, a.along), p.constant(tiny));
  const at = (along: Step): Beside => {
    const share = within(p, p.divide(p.subtract(along, a.along), run));
    const between = (from: Step, to: Step): Step => p.add(from, p.multiply(share, p.subtract(to, from)));
    return { along: between(a.along, b.along), off: between(a.off, b.off) };
  };
  return { ends: [a, b], at };
}

/** Keeps a quotient from nothing over nothing where an edge is seen end-on [mm]. */
const tiny = 1e-9;

function within(p: Plane, share: Step): Step {
  return p.lesser(p.constant(1), p.greater(p.constant(0), share));
}

/** The least of several steps. */
export function least(p: Plane, steps: readonly Step[]): Step {
  return steps.reduce((a, b) => p.lesser(a, b));
}
