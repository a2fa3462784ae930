import { isTwoSided, type Agreement, type Doubt } from '../engine/readings/index.ts';
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
  switch (doubt.kind) {
    case 'decimal':
      return `A tape shows eighths: did you mean ${told(doubt.meant)}?`;
    case 'feetDecimal':
      return `Did you mean feet and inches: ${told(doubt.meant)}?`;
    case 'unit':
      return `That is far from what this category has. Did you mean ${told(doubt.meant)}, in another unit?`;
    case 'tips':
      return `Was that from tip to tip of the pins? From step to step it would be about ${told(doubt.meant)}.`;
    case 'centres':
      return `Was that from ball centre to ball centre? From step to step it would be about ${told(doubt.meant)}.`;
    case 'insidePlates':
      return `Was that between the plates? From step to step it would be about ${told(doubt.meant)}.`;
    case 'bushing':
      return 'That is as thick as a bushing. Is one on the pin? Then pull it off and read the bare pin.';
    case 'worn':
      return 'That is thin for this category. Was it the shiny worn band? Read beside it as well.';
    case 'coated':
      return 'That is a little thick for this category. Is there paint or rust under the caliper? Scrape it off and read again.';
    case 'drawnOut':
      return 'The tubes reach little into each other for a closed shaft. Is it pushed right together?';
    case 'weighedLoaded':
      return 'That is an odd share for the front axle. Was an implement hung on, or did the hitch carry it?';
    case 'outside':
      return `This category has ${told(doubt.expected.low)} to ${told(doubt.expected.high)}. Look at the drawing again: is it read between those points?`;
  }
}

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
  if (agreement.kind === 'agrees')
    return agreement.setAside === 0 ? 'Both readings agree.' : 'Two readings agree; the other is set aside.';
  const apart = `The readings are ${printed(agreement.apart, path, system)} apart, more than a tape explains.`;
  if (agreement.looksLike === 'edges')
    return `${apart} That is about the thickness of a pin: one of them was read to another edge. Read again, both ends to the same edge.`;
  if (agreement.looksLike === 'uneven')
    return `${apart} One side hangs lower: level the lift arms, look at the tyres, then read again.`;
  return `${apart} Read a third time.`;
}

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
