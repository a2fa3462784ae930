import type { Step } from '../formula/index.ts';
import type { Arrow, BodyPlace, LinkPlace, LowerLinks, Plane } from '../linkage/index.ts';

/** Height of the lowest part above the ground [mm]. */
export function clearanceOf(p: Plane, pins: Arrow, pitch: Step): Step {
  const lowest = p.arrow(p.leaf('lowestBehind'), p.scaled(p.leaf('lowestBelow'), -1));
  return p.add(pins.z, p.turned(lowest, p.turnOf(pitch)).z);
}

/**
 * The link leaves the tyre's disc at its rim: there, or at the pivot where the links come together rearward, its outer face
 * stands nearest to the tyre. Pushed over by all of its side play.
 */
export function tyreGapOf(p: Plane, links: LowerLinks, place: LinkPlace): Step {
  const radius = p.leaf('tyreRadius');
  const fromWheel = p.minus(links.pivot, p.arrow(p.constant(0), radius));
  const inward = p.dot(fromWheel, p.arrow(place.direction.cos, place.direction.sin));
  const reach = p.add(p.square(inward), p.subtract(p.square(radius), p.lengthSquared(fromWheel)));
  const leaves = p.subtract(p.squareRoot(reach), inward);
  const share = p.divide(p.lesser(links.length, p.greater(p.constant(0), leaves)), links.length);
  const splay = p.subtract(links.halfAtBall, links.halfAtPivot);
  const farthest = p.add(links.halfAtPivot, p.greater(p.constant(0), p.multiply(splay, share)));
  const outer = p.add(p.add(farthest, p.half(p.leaf('lowerLinkThickness'))), p.leaf('sidePlay'));
  return p.subtract(p.half(p.leaf('tyreInnerSpan')), outer);
}

/** Where the links' lines meet ahead of the balls: seen from the side, and from above [mm]. */
export interface ConvergenceSteps {
  readonly convergenceSide: Step;
  readonly convergencePlan: Step;
}

/** Where the lines of the links meet, ahead of the balls. */
export function convergence(
  p: Plane,
  links: LowerLinks,
  place: LinkPlace,
  body: BodyPlace,
  topPivot: Arrow,
): ConvergenceSteps {
  const along = p.arrow(place.direction.cos, place.direction.sin);
  const topLine = p.minus(body.upper, topPivot);
  const between = p.minus(topPivot, place.ball);
  const distance = p.divide(p.cross(between, topLine), p.cross(along, topLine));
  const splay = p.subtract(links.halfAtBall, links.halfAtPivot);
  return {
    convergenceSide: p.scaled(p.multiply(distance, place.direction.cos), -1),
    convergencePlan: p.divide(p.multiply(links.halfAtBall, links.length), splay),
  };
}
