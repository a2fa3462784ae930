import type { Answer } from '../../engine/assess/index.ts';
import type { BalanceStation } from '../../engine/balance/index.ts';
import { shown } from '../shown.ts';

/** Which way a slope tips. */
export type Tipping = 'sideways' | 'uphill';

/** A tractor at an ideal limit, seen as one rigid body [mm, deg]. */
export interface AtLimit {
  readonly which: Tipping;
  readonly ballHeight: number;
  /** The ideal angle; null where the front wheels leave the ground on the level already. */
  readonly angle: number | null;
  readonly wheelbase: number;
  readonly track: number;
  /** Width of a tyre; a usual share of its height where the width over both is not known. */
  readonly tyreWidth: number;
  readonly tyre: number;
  readonly isTyreMeasured: boolean;
  readonly pivotHeight: number;
  /** Centre of everything: ahead of the rear axle, above the ground, and toward the downhill side. */
  readonly ahead: number;
  readonly height: number;
  readonly aside: number;
}

/** For place only, where nobody measured them [mm; share of the tyre's height]. */
const forPlace = { tyre: 450, tyreWidth: 0.32 } as const;

/**
 * A tractor at its ideal limit one way: at a station, or where the limit is least through the lift. Height and offset of the
 * centre are read back from the angles, so that the picture can't differ from them.
 */
export function atLimit(answer: Answer, which: Tipping, asked: number | undefined): AtLimit | null {
  const here = stationOf(answer, which, asked);
  if (here === null || here.tips === null || answer.balance === null) return null;
  const { tips, ahead, front } = here;
  const read = (key: string, otherwise: number): number => shown(answer, `tractor.${key}`, otherwise).value;
  const tyre = shown(answer, 'tractor.tyreRadius', forPlace.tyre);
  const track = read('rearTrack', 0);
  const outer = shown(answer, 'tractor.outerWidth', 0);
  const stands = front > 0 && tips.uphill > 0 && tips.sideways > 0;
  const height = stands ? ahead / tangent(tips.uphill) : read('centreHeight', 0);
  return {
    which,
    ballHeight: here.ballHeight,
    angle: stands ? tips[which] : null,
    wheelbase: answer.balance.wheelbase,
    track,
    tyreWidth: outer.standing === 'unknown' ? 2 * tyre.value * forPlace.tyreWidth : outer.value - track,
    tyre: tyre.value,
    isTyreMeasured: tyre.standing === 'measured',
    pivotHeight: read('frontPivotHeight', 0),
    ahead,
    height,
    aside: stands ? track / 2 - height * tangent(tips.sidewaysOnStop) : 0,
  };
}

function stationOf({ balance }: Answer, which: Tipping, asked: number | undefined): BalanceStation | null {
  const known = (balance?.stations ?? []).filter(({ tips }) => tips !== null);
  if (known.length === 0) return null;
  if (asked !== undefined && Number.isFinite(asked)) {
    return known[Math.min(known.length - 1, Math.max(0, Math.round(asked)))] ?? null;
  }
  const angle = ({ tips }: BalanceStation): number => tips?.[which] ?? Infinity;
  return known.reduce((a, b) => (angle(b) < angle(a) ? b : a));
}

/** Tangent of an angle in degrees: the grade of a slope. */
export function tangent(degrees: number): number {
  return Math.tan((degrees * Math.PI) / 180);
}

/** A reserve on the grade: our own choice, no source. */
const reserve = 2;

/** The angle of half the grade [deg]. */
export function halfGrade(degrees: number): number {
  return (Math.atan(tangent(degrees) / reserve) * 180) / Math.PI;
}
