import type { Answer } from '../engine/assess/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';

/** Unevenness below this is not worth a word: a share of the speed [1]. */
const noticeable = 0.06;

/** What is worth saying of a drive beside its findings. */
export function shaftRemarks(answer: Answer, system: UnitSystem): (string | null)[] {
  if (answer.shaft === null) return [];
  const size = (value: number): string => printBoth(value, 'length', { system });
  return [
    whereToMeasure(answer.shaft, size),
    wantedShaft(answer, size),
    stopRemark(answer.shaft, size),
    unevenRemark(answer),
  ];
}

type Size = (value: number) => string;
type Drive = NonNullable<Answer['shaft']>;

function whereToMeasure({ shortestAt, longestAt }: Drive, size: Size): string {
  return `The shaft is shortest with the balls ${size(shortestAt)} above the ground and longest at ${size(longestAt)}: measure from groove to groove at both.`;
}

function wantedShaft({ shaftWanted }: Answer, size: Size): string | null {
  if (shaftWanted === null || shaftWanted.closedAtMost <= 0) return null;
  const { closedAtMost, reachAtLeast } = shaftWanted;
  const reach =
    reachAtLeast === null ? '' : `, and closed length and overlap together ${size(reachAtLeast)} at the least`;
  return `A shaft for this pair: closed, from cross to cross, ${size(closedAtMost)} at the most${reach}.`;
}

function stopRemark({ aboveTurning, limits }: Drive, size: Size): string | null {
  if (aboveTurning === null) return null;
  const limit = Math.min(limits.turning.tractor, limits.turning.implement);
  return `With the balls above ${size(aboveTurning)} a joint bends more than ${limit}°: keep the drive off there.`;
}

function unevenRemark({ shaft, sweep }: Answer): string | null {
  const stations = shaft?.stations ?? [];
  const work = sweep?.work ?? null;
  if (work === null) return null;
  const away = (height: number): number => Math.abs(height - work);
  const station = stations.reduce<(typeof stations)[number] | null>(
    (best, one) => (best === null || away(one.ballHeight) < away(best.ballHeight) ? one : best),
    null,
  );
  if (station === null || station.unevenness < noticeable) return null;
  const share = (station.unevenness * 100).toFixed(0);
  return `At work the two joints don’t cancel: the implement’s speed swings by ${share} % within each turn. Set the top link so that the input shaft stands parallel to the PTO.`;
}
