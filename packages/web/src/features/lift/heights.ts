import type { Answer } from '@hitchwright/core/assess';
import { topicOf, type CheckId } from '@hitchwright/core/findings';

/** The lift of an answer, seen at every height. */
export type Sweep = NonNullable<Answer['sweep']>;

/** A height of the lift that people call by name. */
export interface NamedHeight {
  readonly name: string;
  /** Ball height that is asked for [mm]. */
  readonly height: number;
  /** The station nearest to it. */
  readonly station: number;
  /** False where the lift ends before it. */
  readonly isReached: boolean;
}

/** The heights that the slider can jump to, from the lowest: those that are given, and full lift. */
export function namedHeights(sweep: Sweep): NamedHeight[] {
  const { pickUp, work, carry, stations } = sweep;
  const given = [
    ['Pick-up', pickUp],
    ['Work', work],
    ['Carry', carry],
    ['Full lift', stations.at(-1)?.ballHeight ?? null],
  ] as const;
  return given.flatMap(([name, height]) => (height === null ? [] : [named(sweep, name, height)]));
}

function named(sweep: Sweep, name: string, height: number): NamedHeight {
  const station = stationNear(sweep.stations, height);
  const there = sweep.stations[station]?.ballHeight ?? height;
  return { name, height, station, isReached: Math.abs(there - height) <= stepOf(sweep) };
}

/** The station whose balls hang nearest to a height [mm]. */
export function stationNear(stations: readonly { readonly ballHeight: number }[], height: number): number {
  const away = (station: number): number => Math.abs((stations[station]?.ballHeight ?? Infinity) - height);
  return stations.reduce((best, _, station) => (away(station) < away(best) ? station : best), 0);
}

function stepOf({ stations }: Sweep): number {
  return Math.abs((stations[1]?.ballHeight ?? 0) - (stations[0]?.ballHeight ?? 0));
}

/** Where the view opens: at the height that the verdict turns on, else where it is carried. */
export function openingStation(
  { lead, shaft, balance }: Pick<Answer, 'lead' | 'shaft' | 'balance'>,
  sweep: Sweep,
): number {
  const { stations } = sweep;
  const last = stations.length - 1;
  if (lead?.id === 'pickUp.height') return 0;
  if (lead?.id === 'work.height' || lead?.id === 'work.attitude') return stationNear(stations, sweep.work ?? 0);
  if (lead !== null && topicOf(lead.id) === 'lifts' && sweep.stallProven === null) return last;
  if (lead !== null && topicOf(lead.id) === 'staysUpright' && balance !== null)
    return stationNear(stations, balance.worst.ballHeight);
  const drive = lead === null || shaft === null ? null : driveHeight(lead.id, shaft);
  const height = drive ?? sweep.stallProven ?? sweep.carry ?? sweep.work ?? stations[last]?.ballHeight;
  return stationNear(stations, height ?? 0);
}

type ShaftSweep = NonNullable<Answer['shaft']>;
type ShaftStation = ShaftSweep['stations'][number];

/** Ball height at which a check of the drive is at its worst; null where no one height is [mm]. */
function driveHeight(id: CheckId, shaft: ShaftSweep): number | null {
  const { stations, turnsFrom, turnsTo } = shaft;
  const between = stations.filter(({ ballHeight }) => ballHeight >= turnsFrom && ballHeight <= turnsTo);
  const turning = between.length > 0 ? between : [nearestTo(stations, turnsFrom)].filter((one) => one !== undefined);
  const most = (among: readonly ShaftStation[], of: (station: ShaftStation) => number): number | null =>
    [...among].sort((a, b) => of(b) - of(a))[0]?.ballHeight ?? null;
  switch (id) {
    case 'shaft.bottoming':
      return shaft.shortestAt;
    case 'shaft.apart':
      return shaft.longestAt;
    case 'shaft.overlap':
      return most(turning, ({ longest }) => longest);
    case 'shaft.tractorJoint':
      return most(turning, ({ tractorAngle }) => tractorAngle);
    case 'shaft.implementJoint':
      return most(turning, ({ implementAngle }) => implementAngle);
    case 'shaft.tractorJointRaised':
      return most(stations, ({ tractorAngle }) => tractorAngle);
    case 'shaft.implementJointRaised':
      return most(stations, ({ implementAngle }) => implementAngle);
    default:
      return null;
  }
}

function nearestTo(stations: readonly ShaftStation[], height: number): ShaftStation | undefined {
  const away = ({ ballHeight }: ShaftStation): number => Math.abs(ballHeight - height);
  return [...stations].sort((a, b) => away(a) - away(b))[0];
}

/** How far along the ruler a station lies, from 0 to 1. */
export function alongRuler({ stations }: Sweep, station: number): number {
  return station / Math.max(1, stations.length - 1);
}
