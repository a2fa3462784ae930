import type { Deciding } from '../engine/advice/index.ts';
import { topicOf, type CheckId, type Finding, type Threshold } from '../engine/findings/index.ts';
import { fieldRules } from '../records/index.ts';
import { printQuantity, type Dimension, type Rounding, type UnitSystem } from '../units/index.ts';
import { checkWords } from './checks.ts';
import { fieldOf, howToMeasure, labelOf } from './labels.ts';

/** What is asked for, in words. */
export interface Ask {
  /** The figure that is to be read first [path]. */
  readonly path: string;
  /** What to measure or find out, and where it decides: one sentence. */
  readonly text: string;
  /** How it is measured; empty where there is nothing to say. */
  readonly how: string;
}

/**
 * What to measure for an undecided finding and where the figure decides; null where nothing can be measured.
 *
 * @param finding the finding [record]
 * @param system unit system to write in [us | metric]
 * @returns one or two sentences, or null [text]
 */
export function askOf(finding: Finding, system: UnitSystem): string | null {
  const [ask] = asksOf([finding], system);
  return ask === undefined ? null : `${ask.text} ${ask.how}`.trim();
}

/**
 * What to measure for several findings: each figure once, with everything that it decides.
 *
 * @param findings findings, those that are not open ask nothing [list]
 * @param system unit system to write in [us | metric]
 * @returns what is asked, in the order of the findings [texts]
 */
export function asksOf(findings: readonly Finding[], system: UnitSystem): Ask[] {
  const open = findings.filter(({ status, asks }) => status === 'undecided' && asks.length > 0);
  const asked = open.map((finding) => ({ finding, first: decidingOf(finding) }));
  const asks = new Map<string, Ask>();
  for (const { finding, first } of asked) {
    const { path } = first;
    const alike = asked.flatMap((other) => (other.first.path === path ? [other.first] : []));
    const settled = settles(first) ? settledText(alike, system) : '';
    const text = settled === '' ? togetherText(finding) : `Measure the ${labelOf(path)}${settled}`;
    asks.set(text, { path, text, how: settled === '' && isSeveral(finding) ? '' : howToMeasure(path) });
  }
  return [...asks.values()];
}

function decidingOf({ id, asks }: Finding): Deciding {
  const [first] = asks;
  if (first === undefined) throw new Error('invariant: an open finding asks for a figure');
  return { ...first, check: id };
}

function settles({ passes, fails }: Threshold): boolean {
  return passes.length + fails.length > 0;
}

/** `: 687 mm or less and it fits.`, or what it settles of each of several checks; empty where that can't be told. */
function settledText(deciders: readonly Deciding[], system: UnitSystem): string {
  const [one, ...others] = settledTexts(deciders, system);
  if (one === undefined) return '';
  return others.length === 0 ? `: ${one}.` : `. What it settles by itself: ${[one, ...others].join('; ')}.`;
}

/**
 * Where a figure settles checks by itself. Where it settles several each is named: it may hold for one and fail another.
 *
 * @param deciders where it settles each [list]
 * @param system unit system to write in [us | metric]
 * @returns one text for each that can be told [texts]
 */
export function settledTexts(deciders: readonly Deciding[], system: UnitSystem): string[] {
  const deciding = deciders.filter((one) => settles(one) && fieldRules.has(fieldOf(one.path)));
  const texts = deciding.map((one) =>
    deciding.length === 1 ? decidesText(one, system, outcomesOf(one.check)) : namedText(one, system),
  );
  return [...new Set(texts.filter((text) => text !== ''))];
}

/** `“Steering” with 902 lb (409 kg) or less` */
function namedText({ check, ...threshold }: Deciding, system: UnitSystem): string {
  const name = `“${checkWords[check].title}”`;
  const [good, bad] = rangesOf(threshold, system);
  return good !== '' ? `${name} with ${good}` : `${name} fails with ${bad}`;
}

/** What decides only together. */
function togetherText(finding: Finding): string {
  const labels = together(finding).map(({ path }) => labelOf(path));
  if (isSeveral(finding)) return `Measure the ${labels.join(', the ')}: together they decide it.`;
  return `Find out the ${labels.join('')}.`.replace('the how', 'how').replace('the whether', 'whether');
}

function isSeveral(finding: Finding): boolean {
  return together(finding).length !== 1;
}

function together({ asks }: Finding): readonly Threshold[] {
  return asks.filter(({ path }) => !path.includes('washer')).slice(0, 4);
}

/** What a check comes to that holds, and one that does not. */
type Outcomes = readonly [holds: string, fails: string];

export const fit: Outcomes = ['it fits', 'it does not fit'];

/** Of a figure that decides one check nothing more is said than that check: others of the same answer may fail. */
const outcomes: Readonly<Partial<Record<CheckId, Outcomes>>> = {
  'lift.height': ['it is lifted high enough', 'it is not lifted high enough'],
  'lift.force': ['the lift is strong enough', 'the lift is too weak'],
  'shaft.power': ['the power is enough', 'the power is not enough'],
  'shaft.bottoming': ['the shaft does not bottom', 'the shaft bottoms'],
  'shaft.overlap': ['its halves overlap enough', 'its halves overlap too little'],
  'shaft.apart': ['its halves stay together', 'its halves come apart'],
  'shaft.tractorJoint': bendAt('tractor'),
  'shaft.implementJoint': bendAt('implement'),
  'shaft.tractorJointRaised': bendAt('tractor'),
  'shaft.implementJointRaised': bendAt('implement'),
  'shaft.passage': ['the shaft clears what it passes', 'the shaft touches what it passes'],
  'balance.frontShare': ['enough stays on the front axle', 'too little stays on the front axle'],
  'balance.rearShare': ['enough stays on the rear axle', 'too little stays on the rear axle'],
};

function bendAt(end: string): Outcomes {
  return [`the joint at the ${end} bends no more than it may`, `the joint at the ${end} bends too far`];
}

function outcomesOf(id: CheckId): Outcomes {
  if (outcomes[id] !== undefined) return outcomes[id];
  if (topicOf(id) === 'hooksUp' && !id.startsWith('limit.')) return fit;
  const name = `“${checkWords[id].title}”`;
  return [`${name} holds`, `${name} does not hold`];
}

/** Where a figure decides a check by itself: `between 14 5/8 and 15 3/8 in and it fits`, or an empty text. */
export function decidesText(threshold: Threshold, system: UnitSystem, [holds, doesNot]: Outcomes): string {
  const [good, bad] = rangesOf(threshold, system);
  if (good !== '') return `${good} and ${holds}`;
  return bad === '' ? '' : `${bad} and ${doesNot}`;
}

/** The ranges in which a figure passes, and those in which it fails, in words. */
function rangesOf({ path, passes, fails }: Threshold, system: UnitSystem): [string, string] {
  const rule = fieldRules.get(fieldOf(path));
  if (rule === undefined) return ['', ''];
  const ends: Ends = { ...rule, system };
  const inWords = (ranges: Threshold['passes']): string => ranges.map((range) => rangeText(range, ends)).join(' or ');
  return [inWords(passes), inWords(fails)];
}

interface Ends {
  readonly dimension: Dimension;
  readonly min: number;
  readonly max: number;
  readonly system: UnitSystem;
}

/**
 * Ends of a range are rounded inward, so that the figure printed still lies in it: to what a tape shows, to finer steps
 * where the range is narrow, and where no step lies inside to its middle with the word that it takes a caliper.
 */
function rangeText(range: { low: number; high: number }, { dimension, min, max, system }: Ends): string {
  const isNarrow = range.high - range.low < 8;
  const step = stepFor(system, isNarrow);
  const low = inBoth(range.low, dimension, system, 'up', isNarrow);
  const high = inBoth(range.high, dimension, system, 'down', isNarrow);
  if (range.low <= min) return `${high} or less`;
  if (range.high >= max) return `${low} or more`;
  if (holdsAStep(range, dimension === 'length' && system === 'us' ? 25.4 / step : step))
    return `between ${low} and ${high}`;
  const middle = inBoth((range.low + range.high) / 2, dimension, system, 'nearest', true);
  return `about ${middle}, read ${dimension === 'length' ? 'with a caliper' : 'closely'},`;
}

/** The chosen unit first, the other in brackets, both to the same fineness: the ends of a narrow range stay apart. */
function inBoth(value: number, dimension: Dimension, system: UnitSystem, round: Rounding, isFine: boolean): string {
  const other = system === 'us' ? 'metric' : 'us';
  const printed = (one: UnitSystem): string =>
    printQuantity(
      value,
      dimension,
      dimension === 'length' ? { system: one, round, step: stepFor(one, isFine) } : { system: one, round },
    );
  return dimension === 'angle' ? printed(system) : `${printed(system)} (${printed(other)})`;
}

function stepFor(system: UnitSystem, isNarrow: boolean): number {
  if (system === 'us') return isNarrow ? 64 : 16;
  return isNarrow ? 0.1 : 1;
}

function holdsAStep({ low, high }: { low: number; high: number }, step: number): boolean {
  return Math.floor(high / step) > Math.ceil(low / step);
}
