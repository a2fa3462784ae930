import { middle } from '../../engine/geometry/index.ts';
import type { ShaftStation, ShaftSweep } from '../../engine/shaft/index.ts';
import type { Setup } from '../../records/index.ts';
import type { Guard } from './parts.ts';

/** A drive shaft by itself [mm]. */
export interface MeasuredShaft {
  readonly closedLength: number;
  readonly closedOverlap: number | null;
  readonly guard: Guard;
  readonly isGuardMeasured: boolean;
}

/** How the two points are called that a drive was placed by, and how far they are apart [mm]. */
export interface Places {
  readonly words: string;
  readonly distance: number;
}

/** A guard for place only, where nobody measured it [mm]. */
const guardForPlace: Guard = { tube: 33, cone: 70, coneLength: 110 };

/** The shaft by itself; null where its closed length is not known. */
export function measuredShaft({ closedLength, closedOverlap, guard }: ShaftSweep): MeasuredShaft | null {
  if (closedLength === null) return null;
  const own =
    guard === null ? guardForPlace : { tube: guard.tube / 2, cone: guard.cone / 2, coneLength: guard.coneLength };
  return { closedLength, closedOverlap, guard: own, isGuardMeasured: guard !== null };
}

/** Where the shaft is shortest. */
export function shortestStation({ stations, shortestAt }: ShaftSweep): ShaftStation {
  return stations.find(({ ballHeight }) => ballHeight === shortestAt) ?? (stations[0] as ShaftStation);
}

const pointWords: Readonly<Record<string, string>> = { groove: 'groove', shaftEnd: 'end', crossCentre: 'cross' };

/** The points that stub and input shaft were measured at, with how far they are apart where the shaft is shortest. */
export function placesOf(
  { tractor, implement }: Setup,
  { stub, input, implementCross, leftmost, rightmost }: ShaftStation,
): Places | null {
  const wordOf = (from: string | undefined): string => pointWords[from ?? 'groove'] ?? 'groove';
  const [front, rear] = [
    wordOf(tractor.stubBehindAxle?.provenance.from),
    wordOf(implement.inputBehind?.provenance.from),
  ];
  if (front === 'cross' && rear === 'cross') return null;
  const nearest = Math.max(leftmost, Math.min(rightmost, 0));
  const yaw = implement.inputYaw !== undefined && 'bound' in implement.inputYaw ? middle(implement.inputYaw.bound) : 0;
  const reach = Math.hypot(input[0] - implementCross[0], input[1] - implementCross[1]);
  const aside = nearest - reach * Math.tan((yaw * Math.PI) / 180);
  return { words: `${front} to ${rear}`, distance: Math.hypot(input[0] - stub[0], input[1] - stub[1], aside) };
}
