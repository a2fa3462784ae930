import type { Answer } from '../../engine/assess/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { stationOf } from './heights.ts';
import { heightText, pitchWords } from './readings.ts';
import { worstAt } from './worst.ts';
import type { Station } from '../../engine/lift/index.ts';

/**
 * One height of the lift in a few words, as a slider speaks it: the height of the balls, how the implement stands, and the
 * worst that is to be said there.
 *
 * @param answer the answer [record]
 * @param station the station of its sweep, taken to the nearest that exists [from 0]
 * @param system the system printed first [us | metric]
 * @returns a few words, empty where the lift is not known [text]
 * @example stationWords(answer, 40, 'us') // '25 1/2 in (648 mm): 6° nose down; lift 1,104 lb (500 kg) to spare'
 */
export function stationWords(answer: Answer, station: number, system: UnitSystem): string {
  const { sweep } = answer;
  if (sweep === null) return '';
  const here = sweep.stations[stationOf(sweep, station)] as Station;
  const height = heightText(here.ballHeight, system);
  const { words } = worstAt(answer, sweep, here, system);
  return here.closes ? `${height}: ${pitchWords(here.pitch)}; ${words}` : `${height}: ${words}`;
}
