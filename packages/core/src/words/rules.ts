import type { RuledOutcome } from '../engine/assess/index.ts';
import { driveRules, type DriveRuleName } from '../tables/index.ts';
import { printQuantity, type UnitSystem } from '../units/index.ts';
import { shortOf } from './findings.ts';

/** The rule sets for drive shafts by what they are known for. */
export const driveRuleWords: Readonly<Record<DriveRuleName, string>> = {
  usual: 'The usual',
  thirdOfTube: 'A third of the tube',
  halfOfTube: 'Half of the tube',
  oneInch: 'One inch clear',
  mostCautious: 'Most cautious of all sources',
  leastCautious: 'Least cautious of all sources',
};

/**
 * What a rule set asks for, in one line.
 *
 * @param name which set [name]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function driveRuleText(name: DriveRuleName, system: UnitSystem): string {
  const { clearance, overlap, turningAngle, stopAngle } = driveRules(name);
  const size = (value: number): string => sizeText(value, system);
  const { value } = overlap.figure;
  const wanted =
    overlap.kind === 'length' ? `${size(value)} of overlap` : `${shareWords(value)} of the profile overlapping`;
  return `${size(clearance.value)} left at its shortest, ${wanted} while it turns, joints up to ${turningAngle.value}° turning, drive off above ${stopAngle.value}°`;
}

const shares: Readonly<Record<number, string>> = { 2: 'half', 3: 'a third' };

function shareWords(share: number): string {
  const parts = Math.round(1 / share);
  return shares[parts] ?? `one part in ${parts}`;
}

/** A rule's length to an eighth of an inch and a millimetre, as the drawings letter it. */
function sizeText(value: number, system: UnitSystem): string {
  const inches = printQuantity(value, 'length', { system: 'us', step: 8 });
  const millimetres = printQuantity(value, 'length', { system: 'metric' });
  return system === 'us' ? `${inches} (${millimetres})` : `${millimetres} (${inches})`;
}

const ruledOutcomes: Readonly<Record<RuledOutcome['outcome'], string>> = {
  works: 'runs',
  withParts: 'runs with parts',
  measureFirst: 'not known yet',
  willNot: 'will not run as it stands',
  notChecked: 'not checked',
  notNeeded: 'needs no drive',
};

/**
 * What the drive comes to by one set of rules, in a few words: `will not run as it stands: overlap 2 in (51 mm) short`.
 *
 * @param ruled the outcome by that set [record]
 * @param system unit system to write in [us | metric]
 * @returns a few words [text]
 */
export function ruledWords({ outcome, lead }: RuledOutcome, system: UnitSystem): string {
  return `${ruledOutcomes[outcome]}${lead === null ? '' : `: ${shortOf(lead, system)}`}`;
}

/**
 * What the drive comes to by one set of rules, and what the set asks for, in one line.
 *
 * @param ruled the outcome by that set [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function ruledText(ruled: RuledOutcome, system: UnitSystem): string {
  const used = ruled.chosen ? ', used here' : '';
  return `${driveRuleWords[ruled.rules]}${used}: ${ruledWords(ruled, system)}. Wants ${driveRuleText(ruled.rules, system)}.`;
}
