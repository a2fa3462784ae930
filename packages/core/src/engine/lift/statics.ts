import type { Step } from '../formula/index.ts';
import type { Arrow, BodyPlace, Plane } from '../linkage/index.ts';
import type { Carried } from './carried.ts';

/** Forces of the links on what they hold [kg]. */
export interface ForceSteps {
  /** Pull of the top link, tension positive. */
  readonly topLinkForce: Step;
  /** Force of the lower links, or of hooks on them, on the body, upward, both sides together. */
  readonly lowerForceUp: Step;
  /** Size of the force on the pins in the links' balls, both sides together. */
  readonly lowerForce: Step;
}

/**
 * Statics of the body that the top link holds: the pull of the top link by moments about the body's lower points, then what
 * the lower links carry there. What rides on the links by itself never passes through the top link.
 */
export function forcesOn(
  p: Plane,
  body: BodyPlace,
  topPivot: Arrow,
  topLink: Step,
  { held, riding }: Carried,
): ForceSteps {
  const sum = (terms: readonly Step[]): Step => terms.reduce((a, b) => p.add(a, b), p.constant(0));
  const mass = sum(held.map((one) => one.mass));
  const moment = sum(held.map((one) => p.multiply(one.mass, p.subtract(one.at.x, body.origin.x))));
  const pull = p.minus(topPivot, body.upper);
  const lever = p.divide(p.cross(p.minus(body.upper, body.origin), pull), topLink);
  const tension = p.divide(moment, lever);
  const alongLink = p.divide(tension, topLink);
  const back = p.multiply(alongLink, pull.x);
  const up = p.subtract(mass, p.multiply(alongLink, pull.z));
  const onPins = p.add(up, sum(riding.map((one) => one.mass)));
  return { topLinkForce: tension, lowerForceUp: up, lowerForce: p.length(p.arrow(back, onPins)) };
}
