import type { Answer } from '@hitchwright/core/assess';
import { namedHeights, stationNear } from '../lift/heights.ts';

/** The axle loads of an answer, seen at every height. */
export type Balance = NonNullable<Answer['balance']>;
type Station = Balance['stations'][number];

/** What the axles carry at one height, or with nothing hung behind [mm, kg]. */
export interface AxleRow {
  readonly name: string;
  /** Ball height; null where nothing hangs behind. */
  readonly height: number | null;
  readonly front: number;
  readonly rear: number;
  /** What the rule wants on the front axle there. */
  readonly wanted: number;
  /** What the front axle carries, as a share of the tractor as weighed and of everything. */
  readonly ofTractor: number;
  readonly ofEverything: number;
}

/** Rows for nothing hung behind, for the heights that have a name, and for where the front axle has least to spare. */
export function axleRows({ balance, sweep }: Pick<Answer, 'sweep'> & { readonly balance: Balance }): AxleRow[] {
  const heights =
    sweep === null
      ? endsOf(balance)
      : namedHeights(sweep)
          .filter(({ isReached }) => isReached)
          .map(({ name, station }) => [name, station] as const);
  return [
    unloaded(balance),
    ...heights.map(([name, station]) => rowAt(balance, station, name)),
    rowAt(balance, worstStation(balance), 'Least to spare in front'),
  ].filter((row) => row !== null);
}

/** Links that are not placed have no named heights: the ends of the lift stand for them. */
function endsOf({ stations }: Balance): readonly (readonly [string, number])[] {
  return [
    ['Lowest', 0],
    ['Highest', stations.length - 1],
  ];
}

/** The station where the front axle has least to spare. */
export function worstStation({ stations, worst }: Balance): number {
  return stationNear(stations, worst.ballHeight);
}

/** The axle loads at a station; null where there is none. */
export function rowAt(balance: Balance, station: number, name: string): AxleRow | null {
  const at = balance.stations[station];
  return at === undefined ? null : rowOf(balance, name, at.ballHeight, at);
}

function unloaded(balance: Balance): AxleRow | null {
  const [first] = balance.stations;
  if (first === undefined) return null;
  const total = first.total - balance.behind;
  const front = balance.frontFree;
  return rowOf(balance, 'Nothing hung behind', null, { front, rear: total - front, total, wanted: first.wanted });
}

function rowOf(
  balance: Balance,
  name: string,
  height: number | null,
  { front, rear, total, wanted }: Pick<Station, 'front' | 'rear' | 'total' | 'wanted'>,
): AxleRow {
  return { name, height, front, rear, wanted, ofTractor: front / balance.base, ofEverything: front / total };
}

/** What is counted ahead of the rear axle, in words of one kind. */
export const fittedNames: Readonly<Record<Balance['fitted'][number]['what'], string>> = {
  driver: 'the driver',
  frontWeights: 'the front weights',
  loader: 'the loader',
  loaderLoad: 'what lies in the loader',
};
