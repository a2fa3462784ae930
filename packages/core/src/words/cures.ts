import type { Candidate } from '../engine/assess/index.ts';
import type { Price } from '../records/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';
import { sentenceCase } from './sentenceCase.ts';

/**
 * What a cure is, in one line.
 *
 * @param cure the cure [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function cureText(cure: Candidate, system: UnitSystem): string {
  const back = cure.returnable ? '' : ' Can’t be returned once cut.';
  return `${sentenceCase(whatOf(cure, system))}.${costOf(cure)}${back}`;
}

/** What it costs in all, where that is known: ` USD 255.00.` */
function costOf({ price, count }: Candidate): string {
  return price === null ? '' : ` ${priceText({ ...price, amount: price.amount * count })}.`;
}

/**
 * A price by its currency code, which says the same everywhere: `USD 85.00`.
 *
 * @param price amount and ISO 4217 code [record]
 * @returns a few words [text]
 */
export function priceText({ amount, currency }: Price): string {
  return `${currency} ${amount.toFixed(2)}`;
}

/** What is done, with how much of it in the person’s units. */
const doings: Readonly<Record<Candidate['kind'], (cure: Candidate, amount: string) => string>> = {
  part: (cure) =>
    cure.on === 'shaft' ? `${named(cure)} as the drive shaft for this pair` : `${named(cure)}${placeOf(cure)}`,
  reversePins: () => 'turn the lower pins round',
  cutBushing: (cure) => `${named(cure)}, cut to length${placeOf(cure)}`,
  longerTubes: (cure, amount) => `have both halves of the shaft made ${amount} longer, guards too${ifMuch(cure)}`,
  liftStop: (_, amount) => `set the lift to stop with the balls ${amount} above the ground, or lower`,
  cutShaft: (cure, amount) => `cut ${amount} off both tubes and off both guards, all four the same${ifMuch(cure)}`,
  stubExtender: (cure) => `last of all, and advised against: ${named(cure)} on the PTO stub`,
  frontWeights: (cure) => `hang ${cure.count} × ${named(cure)} on the front, in place of what hangs there`,
  loaderOn: () => 'take the front loader along, empty and low',
};

/** More than this off or on both halves is much: about the overlap that a shaft needs at all [mm], our own choice. */
const much = 150;

function ifMuch({ amount }: Candidate): string {
  return amount !== null && amount > much ? ' – so much that another shaft is the better buy' : '';
}

function whatOf(cure: Candidate, system: UnitSystem): string {
  return doings[cure.kind](cure, cure.amount === null ? '' : printBoth(cure.amount, 'length', { system }));
}

function named({ part }: Candidate): string {
  return part ?? '';
}

function placeOf({ on }: Candidate): string {
  return on === 'coupler.front' ? ' on the front of the coupler' : '';
}
