import { isTwoSided, type Agreement, type Doubt, type Suspicion } from '../engine/readings/index.ts';
import { fieldRules } from '../records/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';
import { fieldOf } from './labels.ts';

/**
 * What is doubtful about a reading, as a question to the person who took it.
 *
 * @param doubt the doubt [record]
 * @param path field path, or one end of what can be set [text]
 * @param system unit system to write in [us | metric]
 * @returns a sentence or two [text]
 */
export function doubtText(doubt: Doubt, path: string, system: UnitSystem): string {
  const told = (value: number): string => printed(value, path, system);
  if ('meant' in doubt) return meantWords[doubt.kind](told(doubt.meant));
  if (doubt.kind === 'outside')
    return `This category has ${told(doubt.expected.low)} to ${told(doubt.expected.high)}. Look at the drawing again: is it read between those points?`;
  return doubtWords[doubt.kind];
}

type Meant = Extract<Doubt, { meant: number }>['kind'];
type Other = Exclude<Doubt['kind'], Meant | 'outside'>;

const meantWords: Readonly<Record<Meant, (meant: string) => string>> = {
  decimal: (meant) => `A tape shows eighths: did you mean ${meant}? Write the fraction as the tape shows it.`,
  unit: (meant) => `That is far from what this category has. Did you mean ${meant}, in another unit?`,
  tips: (meant) => `Was that from tip to tip of the pins? From step to step it would be about ${meant}.`,
  centres: (meant) => `Was that from ball centre to ball centre? From step to step it would be about ${meant}.`,
  insidePlates: (meant) =>
    `Was that between the inner faces of the plates? From step to step it would be about ${meant}.`,
  outsidePlates: (meant) =>
    `Was that over the plates, without the collars? From step to step it would be about ${meant}.`,
};

const doubtWords: Readonly<Record<Other, string>> = {
  bushing: 'That is as thick as a bushing. Is one on the pin? Then pull it off and read the bare pin.',
  worn: 'That is thin for this category. Was it the shiny worn band? Read beside it as well.',
  coated:
    'That is a little thick for this category. Is there paint or rust under the caliper? Scrape it off and read again.',
  pastHole:
    'That leaves no room for the retaining pin’s hole before the tip. Was one of the two read to another edge of the hole?',
  drawnOut: 'The tubes reach little into each other for a closed shaft. Is it pushed right together?',
  weighedLoaded: 'That is an odd share for the front axle. Was an implement hung on, or did the hitch carry it?',
};

/** A range of the same in both units, so that a person sees the other at once. */
function printed(value: number, path: string, system: UnitSystem): string {
  const dimension = fieldRules.get(fieldOf(path))?.dimension ?? 'length';
  return printBoth(value, dimension, { system });
}

/**
 * How the readings of a figure agree, and what to do about it.
 *
 * @param agreement what they come to [record]
 * @param path field path, or one end of what can be set [text]
 * @param system unit system to write in [us | metric]
 * @returns a sentence or two [text]
 */
export function agreementText(agreement: Agreement, path: string, system: UnitSystem): string {
  if (agreement.kind === 'once') return secondReadingText(path);
  if (agreement.kind === 'agrees') return agreedText(agreement);
  const apart = `The readings are ${printed(agreement.apart, path, system)} apart, more than the tool explains.`;
  if (agreement.looksLike.length === 0) return `${apart} Read a third time.`;
  const causes = agreement.looksLike.map((suspicion) => suspicionWords[suspicion]);
  return `${apart} ${causes.length === 1 ? 'That is about' : 'That may be'} ${causes.join(', or ')}. Look, and read again.`;
}

function agreedText({ kept, setAside }: Extract<Agreement, { kind: 'agrees' }>): string {
  if (setAside > 0) return `${kept} readings agree; ${setAside === 1 ? 'one is' : `${setAside} are`} set aside.`;
  return kept === 2 ? 'Both readings agree.' : `All ${kept} readings agree.`;
}

const suspicionWords: Readonly<Record<Suspicion, string>> = {
  edges: 'the thickness of a pin: one end was read to another edge',
  uneven: 'one side hanging lower: level the lift arms, look at the tyres',
  centres: 'the width of a ball: one was read from ball centre to ball centre',
  tips: 'two pins: one was read from tip to tip',
  plates: 'plates or collars: one was read at the plates, not at the steps',
  faces: 'another face of the balls or hooks',
  groove: 'groove to end: one was read to the groove, one to the end of the shaft',
  yokes: 'yokes: one was read to the cross, one past it',
};

/**
 * How the second reading of a figure is best taken.
 *
 * @param path field path, or one end of what can be set [text]
 * @returns one sentence [text]
 */
export function secondReadingText(path: string): string {
  return isTwoSided(fieldOf(path))
    ? 'Now read the same on the other side.'
    : 'Take the tape off, put it on again and read a second time.';
}
