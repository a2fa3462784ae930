import type { Cure } from '../engine/assess/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';

/**
 * What a cure is, in one line.
 *
 * @param cure the cure [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function cureText(cure: Cure, system: UnitSystem): string {
  const back = cure.returnable ? '' : ' Can’t be returned once cut.';
  return `${sentenceCase(whatOf(cure, system))}.${back}`;
}

function whatOf(cure: Cure, system: UnitSystem): string {
  const amount = cure.amount === null ? '' : printBoth(cure.amount, 'length', { system });
  switch (cure.kind) {
    case 'reversePins':
      return 'turn the lower pins round';
    case 'liftStop':
      return `set the lift to stop with the balls ${amount} above the ground, or lower`;
    case 'longerTubes':
      return `have both halves of the shaft made ${amount} longer, guards too`;
    case 'cutShaft':
      return `cut ${amount} off both tubes and off both guards, all four the same`;
    case 'stubExtender':
      return `last of all, and advised against: ${cure.part ?? 'an extender'} on the PTO stub`;
    case 'cutBushing':
      return `${cure.part ?? ''}, cut to length${placeOf(cure)}`;
    case 'part':
      return cure.on === 'shaft'
        ? `${cure.part ?? ''} as the drive shaft for this pair`
        : `${cure.part ?? ''}${placeOf(cure)}`;
  }
}

function placeOf({ on }: Cure): string {
  return on === 'coupler.front' ? ' on the front of the coupler' : '';
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
