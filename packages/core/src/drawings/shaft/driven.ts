import type { Answer } from '../../engine/assess/index.ts';
import type { ShaftStation, ShaftSweep } from '../../engine/shaft/index.ts';

/** The drive shaft that an answer has, and what was found. */
export interface Driven {
  readonly answer: Pick<Answer, 'findings'>;
  readonly shaft: ShaftSweep;
}

/** What drives the implement; null where nothing does, or where its ends are not placed. */
export function drivenOf(answer: Pick<Answer, 'findings' | 'shaft'>): Driven | null {
  return answer.shaft === null ? null : { answer, shaft: answer.shaft };
}

/** The station of a shaft nearest to a ball height. */
export function stationNearest({ stations }: ShaftSweep, ballHeight: number): ShaftStation | undefined {
  const away = (station: ShaftStation): number => Math.abs(station.ballHeight - ballHeight);
  return stations.reduce<ShaftStation | undefined>(
    (best, station) => (best !== undefined && away(best) <= away(station) ? best : station),
    undefined,
  );
}
