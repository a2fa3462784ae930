import type { RuledOutcome } from '../engine/assess/index.ts';
import { driveRules, type DriveRuleName } from '../tables/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';
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
  const size = (value: number): string => printBoth(value, 'length', { system });
  const share = Math.round(1 / overlap.figure.value);
  const wanted = overlap.kind === 'length' ? size(overlap.figure.value) : `1/${share} of the profile`;
  return `${size(clearance.value)} left when shortest, ${wanted} of overlap while turning, ${turningAngle.value}° turning, off above ${stopAngle.value}°`;
}

/**
 * What the drive comes to by one set of rules, in one line.
 *
 * @param ruled the outcome by that set [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function ruledText({ rules, outcome, lead, chosen }: RuledOutcome, system: UnitSystem): string {
  const said = {
    works: 'runs',
    withParts: 'runs with parts',
    measureFirst: 'not known yet',
    willNot: 'will not run as it stands',
    notChecked: 'not checked',
    notNeeded: 'needs no drive',
  }[outcome];
  const reason = lead === null ? '' : ` (${shortOf(lead, system)})`;
  return `${driveRuleWords[rules]}${chosen ? ', used here' : ''}: ${said}${reason}. ${driveRuleText(rules, system)}.`;
}
