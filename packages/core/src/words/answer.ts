import type { Alternative, Answer, Outcome } from '../engine/assess/index.ts';
import { topicOf, type CheckId, type Finding, type Threshold } from '../engine/findings/index.ts';
import { fieldRules, type Setup } from '../records/index.ts';
import { printQuantity, type Dimension, type Rounding, type UnitSystem } from '../units/index.ts';
import { checkWords } from './checks.ts';
import { asksWhetherDriven, sayWhether } from './drive.ts';
import { sentenceOf, shortOf } from './findings.ts';
import { fieldOf, howToMeasure, labelOf } from './labels.ts';

/** What a verdict is told from. */
type Judged = Pick<Answer, 'verdict' | 'lead'>;

/**
 * The verdict in the trade’s words; one that fails says by which of the four answers.
 *
 * @param answer the answer, or its verdict and lead [record]
 * @returns a few words [text]
 */
export function verdictWords({ verdict, lead }: Judged): string {
  return wordsFor(verdict, lead);
}

const verdicts: Readonly<Record<Exclude<Outcome, 'willNot'>, string>> = {
  works: 'Works',
  withParts: 'Works with parts',
  measureFirst: 'Measure first',
  notChecked: 'Not checked yet',
  notNeeded: 'Not checked yet',
};

const fails = {
  hooksUp: 'Will not hook up',
  runs: 'Will not run',
  lifts: 'Will not lift',
  staysUpright: 'Will not stay upright',
} as const;

function wordsFor(outcome: Outcome, lead: Pick<Finding, 'id'> | null): string {
  return outcome === 'willNot' ? fails[topicOf(lead?.id ?? 'mounting')] : verdicts[outcome];
}

/** The four answers by name. */
export const topicWords = { hooksUp: 'Hooks up', runs: 'Runs', lifts: 'Lifts', staysUpright: 'Stays upright' } as const;

const topicAnswers: Readonly<Record<Outcome, string>> = {
  works: 'yes',
  withParts: 'not as it stands',
  measureFirst: 'not known yet',
  willNot: 'no',
  notChecked: 'not checked yet',
  notNeeded: 'needs no drive',
};

/**
 * What a topic says under its name.
 *
 * @param answer the answer [record]
 * @param topic one of the four answers [name]
 * @returns a few words [text]
 */
export function topicLine(answer: Answer, topic: keyof typeof topicWords): string {
  const outcome = answer.outcomes[topic];
  return topic === 'runs' && asksWhetherDriven(answer) ? sayWhether : topicAnswers[outcome];
}

/**
 * The sentence under the verdict: what is wrong as it stands, or what is open; null where everything fits.
 *
 * @param answer the answer [record]
 * @param setup a setup that was read [record]
 * @param system unit system to write in [us | metric]
 * @returns one sentence, or null [text]
 */
export function becauseOf(answer: Answer, setup: Setup, system: UnitSystem): string | null {
  const { lead } = answer;
  if (lead === null) return null;
  const cured = answer.findings.find((finding) => finding.core && finding.status === 'cured');
  const reason = reasonOf(lead, setup, system);
  if (lead.status === 'fail' && answer.perhaps !== null) return `${reason} ${perhapsWords}`;
  return lead.status === 'undecided' && cured !== undefined ? `${sentenceOf(cured, setup, system)} ${reason}` : reason;
}

const perhapsWords = 'Whether what is on the list of parts cures it depends on what is not measured yet.';

/** Why the leading finding leads. */
function reasonOf(lead: Finding, setup: Setup, system: UnitSystem): string {
  if (lead.status === 'undecided' && lead.margin !== null && lead.conflictsWith.length === 0)
    return `${checkWords[lead.id].title}: ${sentenceOf(lead, setup, system)}`;
  return sentenceOf(lead, setup, system);
}

/**
 * The findings of an answer, those that are open with what may cure it in the place of those as it stands.
 *
 * @param answer the answer [record]
 * @returns findings [list]
 */
export function openFindings({ findings, perhaps }: Pick<Answer, 'findings' | 'perhaps'>): readonly Finding[] {
  const open = perhaps?.open ?? [];
  return [...findings.filter(({ id }) => !open.some((one) => one.id === id)), ...open];
}

/**
 * What to measure for an undecided finding and where the figure decides; null where nothing can be measured.
 *
 * @param finding the finding [record]
 * @param system unit system to write in [us | metric]
 * @returns one or two sentences, or null [text]
 */
export function askOf(finding: Finding, system: UnitSystem): string | null {
  const [first] = finding.asks;
  if (finding.status !== 'undecided' || first === undefined) return null;
  const decides = decidesText(first, system, outcomeWords(finding.id));
  if (decides !== '') return `Measure the ${labelOf(first.path)}: ${decides} ${howToMeasure(first.path)}`.trim();
  const open = finding.asks.filter(({ path }) => !path.includes('washer')).slice(0, 4);
  if (open.length === 1)
    return `Find out the ${labelOf(first.path)}. ${howToMeasure(first.path)}`
      .trim()
      .replace('the how', 'how')
      .replace('the whether', 'whether');
  return `Measure the ${open.map(({ path }) => labelOf(path)).join(', the ')}: together they decide it.`;
}

/** What a check that holds comes to: `it fits`. */
export function outcomeWords(id: CheckId): string {
  return { hooksUp: 'it fits', runs: 'it runs', lifts: 'it lifts', staysUpright: 'it stays upright' }[topicOf(id)];
}

/** Where a figure decides by itself: `between 14 5/8 and 15 3/8 in and it fits.`, or an empty text. */
export function decidesText({ path, passes, fails }: Threshold, system: UnitSystem, outcome: string): string {
  const rule = fieldRules.get(fieldOf(path));
  if (rule === undefined) return '';
  const ends: Ends = { ...rule, system };
  const good = passes.map((range) => rangeText(range, ends)).join(' or ');
  const bad = fails.map((range) => rangeText(range, ends)).join(' or ');
  if (good !== '') return `${good} and ${outcome}.`;
  return bad === '' ? '' : `${bad} and ${outcome.replace(/^it (\w+)s\b/, 'it does not $1')}.`;
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
  return `about ${middle}, read with a caliper,`;
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

/**
 * What another way to hook up comes to, in one line.
 *
 * @param alternative another way to hook up [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function alternativeText(alternative: Alternative, system: UnitSystem): string {
  const what =
    alternative.kind === 'leaveCouplerOff'
      ? 'Leave the coupler off'
      : `Take ${alternative.coupler ?? 'another coupler'}`;
  const verdict = wordsFor(alternative.outcome, alternative.lead).toLowerCase();
  const reason = alternative.lead === null ? '' : ` (${shortOf(alternative.lead, system)})`;
  return `${what}: ${verdict}${reason}.`;
}

/**
 * `upper pin 2 in (51 mm) too high` for a cell, or the plain verdict.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @returns a few words [text]
 */
export function cellText(answer: Answer, system: UnitSystem): string {
  return answer.lead === null ? verdictWords(answer).toLowerCase() : shortOf(answer.lead, system);
}
