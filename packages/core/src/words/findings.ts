import type { Setup } from '../records/index.ts';
import {
  topicOf,
  type Finding,
  type Mismatch,
  type Need,
  type NotNeeded,
  type RuledOut,
} from '../engine/findings/index.ts';
import { printMarginSize, type UnitSystem } from '../units/index.ts';
import { checkWords } from './checks.ts';
import { labelOf } from './labels.ts';
import { mismatchSentence } from './mismatches.ts';
import { mountingReasons, mountingShort } from './mounting.ts';
import { hydraulicShortage } from './workChecks.ts';

const notNeeded: Readonly<Record<NotNeeded, string>> = {
  noCoupler: 'Not needed: there is no coupler.',
  otherKind: 'Not needed with this kind of coupler.',
  noBushing: 'Not needed: no bushing is fitted.',
  noUpperPin: 'Not needed: the implement has no upper pin.',
  hookHoldsPin: 'Not needed: the hook itself keeps the pin from sliding out.',
  platesHoldPin: 'Not needed: the pin is held between two plates.',
  noReceiver: 'Not needed: the implement carries no such counterpart.',
  pinned: 'Not needed: the lower pins are held in their balls.',
  noWorkHeight: 'Not needed: no working height is given, so the links are taken level at work.',
  noCarryHeight: 'Not needed: no carrying height is asked for.',
  notDriven: 'Not needed: no drive shaft drives it.',
  noLimiter: 'Not needed: nothing in the shaft limits the torque.',
  noLoader: 'Not needed: no front loader is on.',
  noFrontWeights: 'Not needed: no front weights are on.',
  notDrawn: 'Not needed: this kind of work is not drawn through the soil.',
  anyWidth: 'Not needed: this kind of work need not cover the wheel tracks.',
  noRemotes: 'Not needed: it takes no remotes.',
};

const needs: Readonly<Record<Need, string>> = {
  ratedLoad: 'Not checked: needs the rated load of the coupler.',
  pinLoad: 'Not checked: needs the rated load of the lower pins.',
  load: 'Not checked: needs the mass of the implement.',
  tyres: 'Not checked: needs the radius of the rear tyres and the gap between them.',
  outlines: 'Not checked: needs outlines of the tractor and of the implement.',
  lowestPart: 'Not checked: needs the lowest part of the implement.',
  heights: 'Not checked: needs the lowest and the highest ball height of the lift.',
  driven: 'Not checked: say whether a drive shaft drives the implement.',
  powerWanted: 'Not checked: needs the PTO power that the implement wants.',
  series: 'Not checked: needs the size of the drive shaft’s joints.',
  seriesSpeed: 'Not checked: sizes of shafts are published for 540 and 1000 rpm only.',
  guard: 'Not checked: needs the guard’s tube and cone diameters.',
  axleMasses: 'Not checked: needs the wheelbase, the mass of the tractor and what its front axle carries.',
  plate: 'Not checked: needs the limit from the plate.',
  tyreRating: 'Not checked: needs the load index of the tyres, or what one may carry.',
  bracketLimit: 'Not checked: needs what the front bracket holds.',
  work: 'Not checked: say what kind of work the implement does.',
  workWidth: 'Not checked: needs the working width of the implement.',
  workDepth: 'Not checked: needs the working depth of the implement.',
  workSpeed: 'Not checked: needs the working speed.',
  tools: 'Not checked: say how many shanks, bodies or rows the implement works with.',
  ptoPower: 'Not checked: needs the PTO power of the tractor.',
  powerMost: 'Not checked: needs the most power that the implement may be driven with.',
  outerWidth: 'Not checked: needs the width over the rear tyres.',
  remotesTaken: 'Not checked: say how many remotes the implement takes.',
  remotes: 'Not checked: say how many remotes the tractor has.',
  remoteFlow: 'Not checked: needs the flow of the tractor’s remotes.',
  remotePressure: 'Not checked: needs the pressure of the tractor’s remotes.',
  flowWanted: 'Not checked: needs the oil flow that the implement wants.',
  pressureWanted: 'Not checked: needs the oil pressure that the implement wants.',
  window: 'Not checked: needs the opening of the coupler that the shaft passes.',
  shields: 'Not checked: needs how far the shields reach over the guard at both ends.',
  limiterTorque: 'Not checked: needs the torque of the limiter, or that there is none.',
  linkage: 'Not checked: needs the lower links and the top link placed on the tractor.',
};

/**
 * The heading of a finding.
 *
 * @param finding the finding [record]
 * @returns the heading [text]
 */
export function titleOf(finding: Finding): string {
  return checkWords[finding.id].title;
}

/**
 * One plain sentence why a finding stands as it does, in the person's units.
 *
 * @param finding the finding [record]
 * @param setup a setup that was read [record]
 * @param system unit system to write in [us | metric]
 * @returns one sentence [text]
 */
export function sentenceOf(finding: Finding, setup: Setup, system: UnitSystem): string {
  const words = checkWords[finding.id];
  if (finding.status === 'notNeeded') return notNeeded[finding.reason as NotNeeded];
  if (finding.status === 'notChecked') return needs[finding.reason as Need];
  if (finding.margin === null) return settledSentence(finding, setup, system);
  if (finding.status === 'pass') return holdsSentence(finding, system);
  if (finding.conflictsWith.length > 0) return conflictSentence(finding, system);
  if (finding.status === 'undecided') return openSentence(finding, system);
  return filled(finding.side === 'high' ? words.high : words.low, missOf(finding, system));
}

/**
 * What a finding comes to in a few words, for a cell of the yard.
 *
 * @param finding the finding [record]
 * @param system unit system to write in [us | metric]
 * @returns a few words [text]
 */
export function shortOf(finding: Finding, system: UnitSystem): string {
  const { short, title } = checkWords[finding.id];
  if (finding.status === 'undecided')
    return `${title.toLowerCase()}: ${isRead(finding) ? 'too close to tell' : 'not measured'}`;
  if (finding.id === 'mounting' && finding.reason !== null) return mountingShort[finding.reason as RuledOut];
  if (finding.margin === null) return short.low;
  if (finding.conflictsWith.length > 0) return `${title.toLowerCase()}: no one setting`;
  return filled(finding.side === 'high' ? short.high : short.low, missOf(finding, system));
}

/** Whether everything that an open finding hangs on was read: then it was not read closely enough. */
function isRead({ drivers }: Finding): boolean {
  return drivers.length > 0 && drivers.every(({ origin }) => ['stated', 'range'].includes(origin));
}

/**
 * `1/4 in (7 mm)`, or `1/4 in (7 mm) to 1/2 in (13 mm)` where the miss is a range.
 *
 * @param finding the finding [record]
 * @param system unit system to write in [us | metric]
 * @returns the size of the miss, or its range [text]
 */
export function missOf(finding: Finding, system: UnitSystem): string {
  const { low, high } = finding.margin ?? { low: null, high: null };
  const most = low === null ? null : size(low, finding, system);
  const least = high === null ? null : size(high, finding, system);
  if (least === null) return most ?? 'an unknown amount';
  if (most === null) return `at least ${least}`;
  return isSamePrint(most, least) ? most : `${least} to ${most}`;
}

/** A range whose ends print alike in the unit that stands first is told by its worse end alone. */
function isSamePrint(one: string, other: string): boolean {
  const firstUnit = (text: string): string => text.split(' (')[0] ?? text;
  return firstUnit(one) === firstUnit(other);
}

/**
 * What a finding that holds has to spare, where its sentence says so; else null.
 *
 * @param finding the finding [record]
 * @param system unit system to write in [us | metric]
 * @returns the size of what is left, as its sentence has it, or null [text]
 */
export function spareOf(finding: Finding, system: UnitSystem): string | null {
  const low = finding.status === 'pass' ? (finding.margin?.low ?? null) : null;
  const isSaid = checkWords[finding.id].holds.includes('{m}');
  return low === null || low < 0 || !isSaid ? null : size(low, finding, system);
}

function holdsSentence(finding: Finding, system: UnitSystem): string {
  const { low } = finding.margin ?? { low: null };
  if (low !== null && low < 0 && topicOf(finding.id) === 'lifts')
    return 'It holds for every figure it may turn out to be, by a margin too narrow to state.';
  if (low !== null && low < 0)
    return 'It can always be set to fit, though no one setting fits every figure it may turn out to be.';
  return filled(checkWords[finding.id].holds, low === null ? 'enough' : size(low, finding, system));
}

function openSentence(finding: Finding, system: UnitSystem): string {
  const { low, high } = finding.margin ?? { low: null, high: null };
  const words = checkWords[finding.id];
  if (finding.unresolved) return 'It was not settled within the work limit, so it counts as open.';
  if (low === null || high === null) return 'Not known yet: nothing bounds it.';
  if (low >= 0) return 'Not settled: it hangs together with another check that is open.';
  const miss = filled(finding.side === 'high' ? words.high : words.low, `as much as ${size(low, finding, system)}`);
  return high < 0
    ? miss
    : `Not known yet. At worst: ${lowered(miss)} At best there is ${size(high, finding, system)} to spare.`;
}

function conflictSentence(finding: Finding, system: UnitSystem): string {
  const names = [finding.id, ...finding.conflictsWith].map((id) => `“${checkWords[id].title}”`).join(' and ');
  const verb = finding.status === 'undecided' ? 'may need' : 'need';
  const { low } = finding.margin ?? { low: null };
  const miss = low === null || low >= 0 ? '' : ` At the best one this misses by ${size(low, finding, system)}.`;
  return `${names} ${verb} different settings of the same adjustment: no one setting serves both.${miss}`;
}

function settledSentence(finding: Finding, setup: Setup, system: UnitSystem): string {
  if (finding.status === 'undecided') return `Not known yet: ${labelOf(finding.asks[0]?.path ?? '')}.`;
  if (finding.status === 'pass') return checkWords[finding.id].holds;
  const shortage = hydraulicShortage(finding.id, setup, system);
  if (shortage !== null) return shortage;
  if (finding.id === 'limit.hooks')
    return 'It rides on wheels of its own: whatever pushes it up from below may lift its pins out of the hooks.';
  if (finding.id === 'mounting') return mountingReasons[finding.reason as RuledOut];
  if (topicOf(finding.id) === 'runs') return mismatchSentence(finding.reason as Mismatch, setup);
  return setup.coupler?.kind === 'bar'
    ? 'The implement has no jaws to drop over the bar.'
    : 'The implement has no receiver for a triangular frame.';
}

function size(value: number, finding: Finding, system: UnitSystem): string {
  return printMarginSize(value, dimensions[finding.unit ?? 'mm'], system);
}

const dimensions = { mm: 'length', deg: 'angle', kg: 'mass', kW: 'power', 'N·m': 'torque' } as const;

function filled(text: string, amount: string): string {
  return text.replace('{m}', () => amount);
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
