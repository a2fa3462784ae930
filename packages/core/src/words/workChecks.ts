import { rangeOf } from '../engine/power/index.ts';
import type { CheckId } from '../engine/findings/index.ts';
import type { Setup, Value } from '../records/index.ts';
import { printBoth, type Dimension, type UnitSystem } from '../units/index.ts';
import type { CheckWords } from './checkWords.ts';

/** Words of the checks of power, width and hydraulics. */
export const workCheckWords = {
  'limit.powerMost': {
    title: 'Most power it may be driven with',
    low: '',
    high: 'The PTO gives {m} more than the implement may be driven with.',
    holds: 'The PTO gives no more than the implement may be driven with, {m} to spare.',
    short: { low: '', high: 'PTO {m} too strong' },
  },
  'limit.draft': {
    title: 'Pull at work',
    low: 'On firm soil the drawbar gives {m} less than the work takes: it goes only slower, shallower or narrower.',
    high: '',
    holds: 'On firm soil the drawbar gives what the work takes, {m} to spare.',
    short: { low: 'drawbar {m} too weak', high: '' },
  },
  'limit.width': {
    title: 'Working width against the wheel tracks',
    low: 'It works {m} less than the width over the rear tyres, both sides together: they run beside its work.',
    high: '',
    holds: 'Its work covers the rear tyres, {m} to spare, both sides together.',
    short: { low: 'works {m} less than the tyres cover', high: '' },
  },
  'limit.remotes': {
    title: 'Remotes',
    low: '',
    high: '',
    holds: 'The tractor has the remotes that it takes.',
    short: { low: 'too few remotes', high: '' },
  },
  'limit.flow': {
    title: 'Oil flow',
    low: '',
    high: '',
    holds: 'One remote gives the flow that it wants.',
    short: { low: 'slower than meant', high: '' },
  },
  'limit.pressure': {
    title: 'Oil pressure',
    low: '',
    high: '',
    holds: 'The remotes give the pressure that it wants.',
    short: { low: 'weaker than meant', high: '' },
  },
} as const satisfies Partial<Record<CheckId, CheckWords>>;

/**
 * What is short of the tractor’s hydraulics, told from the figures themselves; null for every other check.
 *
 * @param id the check [id]
 * @param setup a setup that was read [record]
 * @param system unit system to write in [us | metric]
 * @returns one sentence, or null [text]
 */
export function hydraulicShortage(id: CheckId, { tractor, implement }: Setup, system: UnitSystem): string | null {
  const short = (given: Value | undefined, wanted: Value | undefined, dimension: Dimension): string => {
    const print = (value: number): string => printBoth(value, dimension, { system });
    return `gives ${print(rangeOf(given).high)} of the ${print(rangeOf(wanted).low)} that it wants`;
  };
  if (id === 'limit.remotes')
    return `It takes ${remotes(implement.remotes)}, and the tractor has ${remotes(tractor.remotes)}.`;
  if (id === 'limit.flow')
    return `One remote ${short(tractor.remoteFlow, implement.flowWanted, 'flow')}: it works, slower than meant.`;
  if (id === 'limit.pressure')
    return `A remote ${short(tractor.remotePressure, implement.pressureWanted, 'pressure')}: it has less force than meant.`;
  return null;
}

function remotes(count = 0): string {
  if (count === 0) return 'none';
  return count === 1 ? 'one remote' : `${count} remotes`;
}
