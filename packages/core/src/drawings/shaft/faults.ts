import type { CheckId, Finding } from '../../engine/findings/index.ts';
import type { Driven } from './driven.ts';
import type { ShaftStation, ShaftSweep } from '../../engine/shaft/index.ts';

/** A joint by its end. */
export type End = 'tractor' | 'implement';

/** What is at fault with the shaft at one height, by what its sweep says there. */
export interface Faults {
  /** The halves come apart, or a tube runs into a yoke. */
  readonly apart: boolean;
  readonly bottoms: boolean;
  /** The drive turns here, and the halves overlap less than they should. */
  readonly short: boolean;
  /** A tube comes nearer to a yoke than it should. */
  readonly tight: boolean;
  /** The angle that a joint bends beyond [deg]; null where it doesn't. */
  readonly over: Readonly<Record<End, number | null>>;
}

/** A length on a limit is within it [mm, deg]. */
const slack = 1e-6;

/** Whether the drive turns at a height, or within half a step of it: a station stands for the heights about it. */
export function turnsAt({ turnsFrom, turnsTo, stations }: ShaftSweep, ballHeight: number): boolean {
  const height = (station: ShaftStation | undefined): number => station?.ballHeight ?? 0;
  const step = Math.abs(height(stations.at(-1)) - height(stations[0])) / Math.max(1, stations.length - 1);
  const reach = step / 2 + slack;
  return ballHeight >= turnsFrom - reach && ballHeight <= turnsTo + reach;
}

/** How far a joint may bend at a height: less where the drive turns; elsewhere what its check holds it to [deg]. */
function angleLimit({ answer, shaft }: Driven, { ballHeight }: ShaftStation, end: End): number {
  if (turnsAt(shaft, ballHeight)) return shaft.limits.turning[end];
  return raisedLimit(answer, shaft, end);
}

/** How far a joint may bend where nothing turns [deg]. */
export function raisedLimit({ findings }: Driven['answer'], { limits }: ShaftSweep, end: End): number {
  return findings.find(({ id }) => id === `shaft.${end}JointRaised`)?.band?.high ?? limits.stop[end];
}

/** What is at fault with the shaft at a height. */
export function faultsAt(driven: Driven, station: ShaftStation): Faults {
  const { limits } = driven.shaft;
  const { overlap, toBottom } = station;
  const bent = (end: End, angle: number): number | null => {
    const limit = angleLimit(driven, station, end);
    return angle > limit + slack ? limit : null;
  };
  const wanted = turnsAt(driven.shaft, station.ballHeight) ? limits.overlap : null;
  return {
    apart: overlap !== null && overlap < 0,
    bottoms: toBottom !== null && toBottom < 0,
    short: overlap !== null && wanted !== null && overlap < wanted - slack,
    tight: toBottom !== null && toBottom < limits.clearance - slack,
    over: { tractor: bent('tractor', station.tractorAngle), implement: bent('implement', station.implementAngle) },
  };
}

/** Whether anything is at fault with the shaft at a height. */
export function isAtFault({ apart, bottoms, short, tight, over }: Faults): boolean {
  return apart || bottoms || short || tight || over.tractor !== null || over.implement !== null;
}

const order: readonly Finding['status'][] = ['fail', 'cured', 'undecided'];

/** The worst that was found of the drive shaft; null where all of it holds, or is not checked. */
export function worstShaftFinding({ findings }: Driven['answer']): Finding | null {
  const own = findings.filter(({ id }) => id.startsWith('shaft.'));
  for (const status of order) {
    const found = own.find((finding) => finding.status === status);
    if (found !== undefined) return found;
  }
  return null;
}

/** Whether any of some findings is not settled for good. */
export function isInQuestion({ findings }: Driven['answer'], ...ids: readonly CheckId[]): boolean {
  return findings.some(({ id, status }) => ids.includes(id) && order.includes(status));
}
