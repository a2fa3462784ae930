import type { Answer } from '../../engine/assess/index.ts';
import type { Station } from '../../engine/lift/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { shaftAt } from '../shaft/shaftWords.ts';
import { pitchWords } from './readings.ts';
import { worstAt } from './worst.ts';

/** One height in a few words, and whether anything is in the way there. */
interface Told {
  readonly words: string;
  readonly isBad: boolean;
}

/** How the implement stands at a station, and the worst of lift and drive shaft: what is in the way comes alone, else both are told. */
export function toldAt(
  answer: Pick<Answer, 'findings' | 'figures' | 'sweep' | 'shaft'>,
  index: number,
  system: UnitSystem,
): Told {
  const { sweep } = answer;
  const here = sweep?.stations[index] as Station;
  const lift = sweep === null ? { words: '', isBad: false } : worstAt(answer, sweep, here, system);
  if (!here.closes) return lift;
  const shaft = shaftAt(answer, index, system);
  const isShaftAlone = shaft?.isBad === true && !lift.isBad;
  const words = [
    pitchWords(here.pitch),
    ...(isShaftAlone ? [] : [lift.words]),
    ...(shaft === null ? [] : [shaft.words]),
  ];
  return { words: words.join('; '), isBad: lift.isBad || shaft?.isBad === true };
}
