import type { RuledOutcome, SteeredOutcome } from '../engine/assess/index.ts';
import { driveRules, type DriveRuleName, type SteeringRuleName } from '../tables/index.ts';
import { printMarginSize, printQuantity, type UnitSystem } from '../units/index.ts';
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

/** The rules for the front axle by the share that they want. */
export const steeringRuleWords: Readonly<Record<SteeringRuleName, string>> = {
  ofTractor: '20 % of the tractor',
  ofTotal: '20 % of everything',
  halfOfFront: 'Half of the front axle',
};

/** What each rule takes its share of, and who asks for it. */
const steeringRuleTexts: Readonly<Record<SteeringRuleName, string>> = {
  ofTractor:
    'a fifth of what the tractor itself weighs, made ready for the job, stays on the front axle. Most implement manuals, two tractor manuals, the safety standard for mowers and two sheets on road traffic ask for that',
  ofTotal:
    'a fifth of all that stands on the wheels, implement and driver too, stays on the front axle. A loader manual, a mower manual and two articles of the farm press ask for that',
  halfOfFront:
    'half of what the front axle carries with the implement on the ground stays on it. The manual of one row-crop tractor asks for that',
};

/**
 * What a rule for the front axle asks for and who asks for it, in two sentences without the last stop.
 *
 * @param name which rule [name]
 * @returns two sentences [text]
 */
export function steeringRuleText(name: SteeringRuleName): string {
  return steeringRuleTexts[name];
}

/**
 * What the steering comes to by one rule, in a few words: `kept, 128 lb (58 kg) to spare`.
 *
 * @param steered the finding by that rule [record]
 * @param system unit system to write in [us | metric]
 * @returns a few words [text]
 */
export function steeredWords({ finding }: SteeredOutcome, system: UnitSystem): string {
  const { status, margin } = finding;
  const low = margin?.low ?? null;
  const size = low === null ? null : printMarginSize(low, 'mass', system);
  if (status === 'pass') return low === null || low < 0 ? 'kept' : `kept, ${size} to spare`;
  if (status === 'undecided')
    return low === null || low >= 0 ? 'not known yet' : `not known yet, at worst ${size} short`;
  return shortOf(finding, system);
}

/**
 * What the steering comes to by one rule, and what the rule asks for, in one line.
 *
 * @param steered the finding by that rule [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function steeredText(steered: SteeredOutcome, system: UnitSystem): string {
  const used = steered.chosen ? ', used here' : '';
  return `${steeringRuleWords[steered.rule]}${used}: ${steeredWords(steered, system)}. Wants: ${steeringRuleText(steered.rule)}.`;
}
