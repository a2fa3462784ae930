import type { Alternative, Answer, Outcome } from '../engine/assess/index.ts';
import { topicOf, type Finding } from '../engine/findings/index.ts';
import type { Setup } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { checkWords } from './checks.ts';
import { asksWhetherDriven, sayWhether } from './drive.ts';
import { sentenceOf, shortOf } from './findings.ts';

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
