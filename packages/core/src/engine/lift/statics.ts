import type { Step } from '../formula/index.ts';
import type { Arrow, BodyPlace, Plane } from '../linkage/index.ts';
import type { Carried } from './carried.ts';

/** Forces of the links on what they hold [kg]. */
export interface ForceSteps {
  /** Pull of the top link, tension positive. */
  readonly topLinkForce: Step;
  /** Force of the lower links on what they carry, upward, and its size, both sides together. */
  readonly lowerForceUp: Step;
  readonly lowerForce: Step;
}

/** Statics of what the top link holds: its pull by moments about the body's lower points, then what the lower links carry. */
export function forcesOn(
  p: Plane,
  body: BodyPlace,
  topPivot: Arrow,
  topLink: Step,
  { total, centre }: Carried,
): ForceSteps {
  const pull = p.minus(topPivot, body.upper);
  const lever = p.divide(p.cross(p.minus(body.upper, body.origin), pull), topLink);
  const tension = p.divide(p.multiply(total, p.subtract(centre.x, body.origin.x)), lever);
  const alongLink = p.divide(tension, topLink);
  const back = p.multiply(alongLink, pull.x);
  const up = p.subtract(total, p.multiply(alongLink, pull.z));
  return { topLinkForce: tension, lowerForceUp: up, lowerForce: p.length(p.arrow(back, up)) };
}
