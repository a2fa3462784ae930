import type { Step } from '../formula/index.ts';
import { riseOf, type Arrow, type BodyPlace, type LinkPlace, type Plane } from '../linkage/index.ts';
import type { Structure } from './structure.ts';

/** A mass with the point it sits at, and how much that point rises with the balls. */
interface CarriedMass {
  readonly mass: Step;
  readonly at: Arrow;
  readonly rise: Step;
}

/** δ: the turn of the implement in a rigid coupler [rad]; none where no frame and hook hold it. */
export function turnInCoupler(p: Plane, { hooked }: Structure): Step {
  if (!hooked) return p.constant(0);
  const hook = p.arcTangent(p.divide(p.leaf('topHookBehind'), p.leaf('topHookHeight')));
  const pin = p.arcTangent(p.divide(p.leaf('pinMastBehind'), p.leaf('pinMastAbove')));
  return p.subtract(pin, hook);
}

/** Where the implement is and what is lifted with it. */
export interface Carried {
  /** Implement lower pins and upper pin, and the implement's pitch. */
  readonly pins: Arrow;
  readonly mast: Arrow;
  readonly pitch: Step;
  readonly total: Step;
  /** Centre of all that is carried. */
  readonly centre: Arrow;
  /** All that is carried, as the mass that weighs as much on the lift at the ball ends. */
  readonly demand: Step;
  /** The same without the load itself. */
  readonly others: Step;
  /** The load that margins are told for: what the implement carries, or else the implement itself. */
  readonly load: CarriedMass;
  /** What hangs on the body that the top link holds, and what rides on the links by itself. */
  readonly held: readonly CarriedMass[];
  readonly riding: readonly CarriedMass[];
}

/** Where the implement is and everything that is lifted with it, each mass at its own point. */
export function carriedBy(p: Plane, structure: Structure, place: LinkPlace, body: BodyPlace): Carried {
  const isFramed = structure.held === 'byFrame';
  const hooks = p.arrow(p.leaf('hookBehind'), p.leaf('hookRise'));
  const pins = isFramed ? p.plus(body.origin, p.turned(hooks, body.turn)) : body.origin;
  const pitch = p.add(body.pitch, turnInCoupler(p, structure));
  const turn = isFramed ? p.turnOf(pitch) : body.turn;
  const inImplement = (behind: string, above: string): Arrow =>
    p.plus(pins, p.turned(p.arrow(p.leaf(behind), p.leaf(above)), turn));
  const onImplement = (mass: string, behind: string, above: string): CarriedMass => {
    const at = inImplement(behind, above);
    return { mass: p.leaf(mass), at, rise: riseOf(p, body, at) };
  };
  const onCoupler = (mass: string, behind: string, above: string): CarriedMass => {
    const offset = p.arrow(p.leaf(behind), p.leaf(above));
    if (isFramed) {
      const at = p.plus(body.origin, p.turned(offset, body.turn));
      return { mass: p.leaf(mass), at, rise: riseOf(p, body, at) };
    }
    const arm = p.turned(offset, place.direction);
    const rise = p.add(p.constant(1), p.multiply(place.spin, arm.x));
    return { mass: p.leaf(mass), at: p.plus(place.ball, arm), rise };
  };
  const own = onImplement('mass', 'centreBehind', 'centreAbove');
  const carried = onImplement('carriedMass', 'carriedBehind', 'carriedAbove');
  const load = structure.carries ? carried : own;
  const ofCoupler = [
    onCoupler('couplerMass', 'couplerCentreBehind', 'couplerCentreAbove'),
    onCoupler('hungMass', 'hungBehind', 'hungAbove'),
  ];
  const besides = [structure.carries ? own : carried, ...ofCoupler];
  return {
    pins,
    mast:
      isFramed && structure.hooked
        ? p.plus(pins, p.turned(p.arrow(p.leaf('pinMastBehind'), p.leaf('pinMastAbove')), turn))
        : body.upper,
    pitch,
    ...summed(p, load, structure.alone ? [] : besides),
    held: structure.alone ? [own] : [own, carried, ...(isFramed ? ofCoupler : [])],
    riding: isFramed ? [] : ofCoupler,
  };
}

/** The masses together. With nothing besides, the load's own place is the centre: no division blurs its bounds. */
function summed(
  p: Plane,
  load: CarriedMass,
  besides: readonly CarriedMass[],
): Pick<Carried, 'total' | 'centre' | 'demand' | 'others' | 'load'> {
  const sumOf = (masses: readonly CarriedMass[], of: (one: CarriedMass) => Step): Step =>
    masses.map(of).reduce((a, b) => p.add(a, b), p.constant(0));
  const total = sumOf([load, ...besides], (one) => one.mass);
  const mean = (of: (one: CarriedMass) => Step): Step =>
    besides.length === 0
      ? of(load)
      : p.divide(
          sumOf([load, ...besides], (one) => p.multiply(one.mass, of(one))),
          total,
        );
  const others = sumOf(besides, (one) => p.multiply(one.mass, one.rise));
  return {
    total,
    centre: p.arrow(
      mean((one) => one.at.x),
      mean((one) => one.at.z),
    ),
    demand: p.add(p.multiply(load.mass, load.rise), others),
    others,
    load,
  };
}
