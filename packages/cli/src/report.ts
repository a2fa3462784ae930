import type { Answer } from '@hitchwright/core/assess';
import type { Finding } from '@hitchwright/core/findings';
import type { Setup } from '@hitchwright/core/records';
import { printBoth, type UnitSystem } from '@hitchwright/core/units';
import {
  alternativeText,
  asksOf,
  balanceRemarks,
  becauseOf,
  cautionWords,
  cureText,
  labelOf,
  openFindings,
  remarksBesideAxles,
  ruledText,
  setPriceText,
  sentenceOf,
  steeredText,
  titleOf,
  topicLine,
  topicWords,
  verdictWords,
} from '@hitchwright/core/words';
import { entries, wrapped } from './lines.ts';
import { visible } from './visible.ts';

const marks: Readonly<Record<Finding['status'], string>> = {
  pass: 'fits',
  fail: 'MISFIT',
  cured: 'MISFIT*',
  undecided: 'open',
  notNeeded: '',
  notChecked: 'not checked',
};

/** The answer as a person reads it in a terminal. */
export function report(answer: Answer, setup: Setup, system: UnitSystem): string {
  const because = becauseOf(answer, setup, system);
  const blocks = [
    question(setup),
    [verdictWords(answer).toUpperCase(), ...(because === null ? [] : wrapped(because, 2))].join('\n'),
    topics(answer),
    findingLines(answer, setup, system),
    list(
      'To measure',
      asksOf(openFindings(answer), system).map(({ text, how }) => `${text} ${how}`.trim()),
    ),
    list('Parts and adjustments that cure it (each tried and checked again)', cureLines(answer, system)),
    list(
      'May cure it, once more is known',
      (answer.perhaps?.cures ?? []).map((cure) => cureText(cure, system)),
    ),
    list(
      'Other ways',
      answer.alternatives.map((alternative) => alternativeText(alternative, system)),
    ),
    list(
      'The drive by each set of rules',
      answer.otherRules.map((ruled) => ruledText(ruled, system)),
    ),
    list('Axle loads', axleLines(answer, system)),
    list(
      'The steering by each rule',
      answer.steeringRules.map((steered) => steeredText(steered, system)),
    ),
    list('Beside it', remarksBesideAxles(answer, system, setup)),
    list(
      'Taken for granted',
      answer.assumed.filter(({ basis }) => basis !== null).map(({ path, basis }) => `${labelOf(path)}: ${basis}`),
    ),
    list(
      'Mind',
      answer.cautions.map((id) => cautionWords[id]),
    ),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function question({ tractor, coupler, implement }: Setup): string {
  const withCoupler = coupler === undefined ? '' : ` with the ${visible(coupler.name ?? 'coupler')}`;
  return `Will the ${visible(implement.name ?? 'implement')} go on the ${visible(tractor.name ?? 'tractor')}${withCoupler}?`;
}

function topics(answer: Answer): string {
  const names = Object.keys(topicWords) as (keyof typeof topicWords)[];
  return names.map((name) => `  ${topicWords[name].padEnd(15)} ${topicLine(answer, name)}`).join('\n');
}

function findingLines(answer: Answer, setup: Setup, system: UnitSystem): string {
  const shown = answer.findings.filter((finding) => finding.status !== 'notNeeded' && !waitsForDriven(finding));
  const lines = shown.flatMap((finding) => {
    const [first = '', ...rest] = wrapped(sentenceOf(finding, setup, system), 14);
    return [`  ${marks[finding.status].padEnd(12)}${titleOf(finding)}`, `${first}`, ...rest];
  });
  const note = shown.some((finding) => finding.status === 'cured') ? ['  * cured by a part below'] : [];
  return ['Findings', ...lines, ...driveLines(answer), ...note].join('\n');
}

/** Nobody said whether a shaft drives the implement: every check of the drive waits for that one word. */
function waitsForDriven({ status, reason }: Finding): boolean {
  return status === 'notChecked' && reason === 'driven';
}

function driveLines({ findings }: Answer): string[] {
  if (!findings.some(waitsForDriven)) return [];
  return [
    `  ${marks.notChecked.padEnd(12)}Drive`,
    ...wrapped('Not checked: say whether a drive shaft drives it ("driven").', 14),
  ];
}

/** Every cure, then what the smallest set costs and whether a smaller one may have been missed. */
function cureLines({ cures, everySetTried }: Answer, system: UnitSystem): (string | null)[] {
  return [
    ...cures.map((cure) => `${cureText(cure, system)}${cure.inSmallestSet ? ' (counted on)' : ''}`),
    setPriceText(cures),
    everySetTried ? null : 'Not every combination of what is on the list was tried.',
  ];
}

/** What the axles carry where the front axle has least to spare, and with nothing hung behind. */
function axleLines(answer: Answer, system: UnitSystem): string[] {
  const { balance } = answer;
  const [first] = balance?.stations ?? [];
  if (balance === null || first === undefined) return [];
  const mass = (value: number, round: 'down' | 'up'): string => printBoth(value, 'mass', { system, round });
  const most = Math.max(...balance.stations.map(({ rear }) => rear));
  const { frontFree } = balance;
  const rearFree = first.total - balance.behind - frontFree;
  return [
    ...balanceRemarks(answer, system),
    `The rear axle carries ${mass(most, 'up')} at the most, at the middle of every figure.`,
    `With nothing hung behind the front axle carries ${mass(frontFree, 'down')} and the rear axle ${mass(rearFree, 'up')}.`,
  ];
}

function list(heading: string, texts: readonly (string | null)[]): string {
  const lines = entries(texts.filter((text) => text !== null));
  return lines.length === 0 ? '' : [heading, ...lines].join('\n');
}
