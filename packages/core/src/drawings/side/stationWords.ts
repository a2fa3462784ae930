import type { Answer } from '../../engine/assess/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { stationOf } from './heights.ts';
import { heightText } from './readings.ts';
import { toldAt } from './told.ts';
import type { Station } from '../../engine/lift/index.ts';

/**
 * One height of the lift in a few words, as a slider speaks it: the height of the balls, how the implement stands, and the
 * worst that is to be said there of the lift and of the drive shaft.
 *
 * @param answer the answer [record]
 * @param station the station of its sweep, taken to the nearest that exists [from 0]
 * @param system the system printed first [us | metric]
 * @returns a few words, empty where the lift is not known [text]
 * @example stationWords(driven, 10, 'us') // '17 1/16 in (434 mm): level; shaft overlap 2 5/8 in (68 mm), 5 7/8 in (150 mm) wanted, joints 6.2° and 6.1°'
 * @example stationWords(answer, 40, 'us') // '25 1/2 in (648 mm): 6° nose down; lift 1,104 lb (500 kg) to spare'
 */
export function stationWords(answer: Answer, station: number, system: UnitSystem): string {
  const { sweep } = answer;
  if (sweep === null) return '';
  const index = stationOf(sweep, station);
  const here = sweep.stations[index] as Station;
  const height = heightText(here.ballHeight, system);
  return `${height}: ${toldAt(answer, index, system).words}`;
}
