import type { Answer } from '../engine/assess/index.ts';
import type { Station, Sweep } from '../engine/lift/index.ts';
import { printBoth, type Rounding, type UnitSystem } from '../units/index.ts';

const basisWords: Readonly<Record<Answer['liftBasis'], string | null>> = {
  cylinder:
    'The lift is worked out from its cylinder, pressure and linkage; friction and the weight of the links are left out.',
  linkage: 'The lift is worked out from its rating and its linkage; friction and the weight of the links are left out.',
  ratings:
    'The lift is worked out from its ratings alone, everything standing level: place the links on the tractor for a closer answer.',
  none: null,
};

/**
 * What is worth saying of the lift beside its findings: what it was worked out from, what it manages on the way up, how
 * long the top link is set, where it stalls or binds.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @returns sentences, none where there is nothing to say [texts]
 */
export function liftRemarks(answer: Answer, system: UnitSystem): string[] {
  const { sweep, liftBasis } = answer;
  const beside = sweep === null ? [] : sweepRemarks(sweep, system);
  return [basisWords[liftBasis], ...beside].filter((remark) => remark !== null);
}

function sweepRemarks(sweep: Sweep, system: UnitSystem): (string | null)[] {
  return [
    capacityRemark(sweep, system),
    ratingsRemark(sweep),
    topLinkRemark(sweep, system),
    stallRemark(sweep, system),
    bindRemark(sweep, system),
  ];
}

function mass(value: number, system: UnitSystem, round: Rounding): string {
  return printBoth(value, 'mass', { system, round });
}

function height(value: number, system: UnitSystem): string {
  return printBoth(value, 'length', { system });
}

/** The least that it manages between pick-up and carrying height, proven and estimated. */
function capacityRemark(sweep: Sweep, system: UnitSystem): string | null {
  const least = weakest(sweep);
  if (least?.proven == null || sweep.load === null) return null;
  const proven = mass(Math.max(0, least.proven), system, 'down');
  const most =
    least.estimated === null || least.estimated <= least.proven
      ? ''
      : `, perhaps ${mass(least.estimated, system, 'down')}`;
  const load = mass(sweep.load, system, 'up');
  return `With the balls at ${height(least.ballHeight, system)} it lifts least: ${proven} in the load’s place is proven${most}, once the allowance is off; the load is ${load}.`;
}

function weakest({ stations, pickUp, carry }: Sweep): Station | null {
  const asked = stations.filter(
    ({ ballHeight }) => ballHeight >= (pickUp ?? -Infinity) && ballHeight <= (carry ?? Infinity),
  );
  const proven = (station: Station): number => station.proven ?? Infinity;
  return asked.reduce<Station | null>((a, b) => (a === null || proven(b) < proven(a) ? b : a), null);
}

function ratingsRemark({ ratingsDisagree }: Sweep): string | null {
  return ratingsDisagree
    ? 'The two ratings do not belong to one pull on this linkage: what they prove is used, and no more is estimated.'
    : null;
}

function topLinkRemark({ topLink, work }: Sweep, system: UnitSystem): string {
  const where = work === null ? 'with the lower links level' : 'at work';
  return `To stand as set ${where}, the top link is ${height(topLink, system)} from pin to pin.`;
}

/** A stall above the carrying height is worth knowing, and no failure. */
function stallRemark({ stallProven, carry }: Sweep, system: UnitSystem): string | null {
  if (stallProven === null || carry === null || stallProven <= carry) return null;
  return `Above the carrying height, from ${height(stallProven, system)} on, the lift is not proven to manage the load.`;
}

function bindRemark({ unreachable }: Sweep, system: UnitSystem): string | null {
  if (unreachable === null) return null;
  return `The linkage can’t reach ball heights from ${height(unreachable.low, system)} to ${height(unreachable.high, system)}.`;
}
