import type { Sweep } from '../../engine/lift/index.ts';

/** A ball height with a name of its own, and the station nearest to it [mm; from 0]. */
export interface HeightMark {
  readonly name: 'pick-up' | 'work' | 'carry' | 'full lift';
  readonly height: number;
  readonly station: number;
}

/** The heights that are asked of the lift, where they are given, and how high it goes; from low to high. */
export function heightMarks(sweep: Sweep): HeightMark[] {
  const full = sweep.stations.at(-1)?.ballHeight ?? 0;
  const named = [
    ['pick-up', sweep.pickUp],
    ['work', sweep.work],
    ['carry', sweep.carry],
    ['full lift', full],
  ] as const;
  return named
    .flatMap(([name, height]) => (height === null ? [] : [{ name, height, station: stationNear(sweep, height) }]))
    .sort((a, b) => a.height - b.height);
}

/** The station nearest to a ball height [from 0]. */
export function stationNear({ stations }: Sweep, height: number): number {
  const away = (i: number): number => Math.abs((stations[i]?.ballHeight ?? Infinity) - height);
  return stations.reduce((best, _, i) => (away(i) < away(best) ? i : best), 0);
}

/** The station shown where none is asked for: nearest to the working height, else half-way up [from 0]. */
export function restingStation(sweep: Sweep): number {
  return sweep.work === null ? Math.floor((sweep.stations.length - 1) / 2) : stationNear(sweep, sweep.work);
}

/** A station that exists [from 0]. */
export function stationOf(sweep: Sweep, asked: number | undefined): number {
  const wanted = asked ?? restingStation(sweep);
  const last = sweep.stations.length - 1;
  return Number.isFinite(wanted) ? Math.min(last, Math.max(0, Math.round(wanted))) : restingStation(sweep);
}

/** Lowest and highest ball height of the stroke [mm]. */
export function strokeOf({ stations }: Sweep): { readonly low: number; readonly high: number } {
  const heights = stations.map(({ ballHeight }) => ballHeight);
  return { low: Math.min(...heights), high: Math.max(...heights) };
}

/** Whether a named height lies on the stroke: then its station is within half a step of it. */
export function isReached(sweep: Sweep, { height }: HeightMark): boolean {
  const { low, high } = strokeOf(sweep);
  const step = (high - low) / Math.max(1, sweep.stations.length - 1);
  return height >= low - step / 2 && height <= high + step / 2;
}
