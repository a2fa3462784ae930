import type { Gauge } from '../gauge.ts';
import type { Stage } from '../stage.ts';
import type { Misfit } from '../misfit.ts';
import { boreDetail } from './boreDetail.ts';
import { clevisDetail } from './clevisDetail.ts';
import { faceDetail } from './faceDetail.ts';
import { linkDetail } from './linkDetail.ts';
import { pinDetail } from './pinDetail.ts';
import type { DetailPlan } from './plan.ts';
import { seatDetail } from './seatDetail.ts';
import { topHookDetail } from './topHookDetail.ts';

/** A misfit this large on paper is seen well enough in the main view: 40 px, and half as much again for a section [paper mm]. */
const largeEnough = 10.6;
const largeSection = 16;

/** The enlarged view of the first misfit, where it would be small in the main view or has no place in it. */
export function detailOf(stage: Stage, misfits: readonly Misfit[], scale: number): DetailPlan | null {
  const [misfit] = misfits;
  if (misfit === undefined) return null;
  const { gauge, miss } = misfit;
  const onSheet = Math.abs(miss.worst - miss.limit) / gauge.sides / scale;
  const maker = makers[gauge.place];
  if (gauge.place === 'upper' && onSheet >= largeSection) return null;
  if (gauge.place === 'lower' && onSheet >= largeEnough) return null;
  return maker?.(stage, misfit) ?? null;
}

const makers: Partial<Readonly<Record<Gauge['place'], (stage: Stage, misfit: Misfit) => DetailPlan>>> = {
  upper: topHookDetail,
  clevis: clevisDetail,
  lower: (stage, misfit) =>
    stage.frame === null && stage.bar === null ? pinDetail(stage, misfit) : faceDetail(stage, misfit),
  seat: seatDetail,
  topSeat: seatDetail,
  bore: boreDetail,
  topBore: boreDetail,
  link: linkDetail,
};
