import type { Answer } from '@hitchwright/core/assess';
import type { Finding } from '@hitchwright/core/findings';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import {
  alternativeText,
  askOf,
  becauseOf,
  cautionWords,
  cureText,
  labelOf,
  remarksOn,
  ruledText,
  scopeWords,
  sentenceOf,
  titleOf,
  topicLine,
  topicWords,
  verdictWords,
} from '@hitchwright/core/words';
import { visible } from './visible.ts';

const lineLength = 78;

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
    [
      `${scopeWords.toUpperCase()}: ${verdictWords(answer).toUpperCase()}`,
      ...(because === null ? [] : wrapped(because, 2)),
    ].join('\n'),
    topics(answer),
    findingLines(answer, setup, system),
    list(
      'To measure',
      answer.findings.map((finding) => askOf(finding, system)),
    ),
    list(
      'Parts and adjustments that cure it (each tried and checked again)',
      answer.cures.map((cure) => `${cureText(cure, system)}${cure.inSmallestSet ? ' (in the smallest set)' : ''}`),
    ),
    list(
      'Other ways',
      answer.alternatives.map((alternative) => alternativeText(alternative, system)),
    ),
    list(
      'The drive by each set of rules',
      answer.otherRules.map((ruled) => ruledText(ruled, system)),
    ),
    list('Beside it', remarksOn(answer, system)),
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
  const shown = answer.findings.filter((finding) => finding.status !== 'notNeeded');
  const lines = shown.flatMap((finding) => {
    const [first = '', ...rest] = wrapped(sentenceOf(finding, setup, system), 14);
    return [`  ${marks[finding.status].padEnd(12)}${titleOf(finding)}`, `${first}`, ...rest];
  });
  const note = shown.some((finding) => finding.status === 'cured') ? ['  * cured by a part below'] : [];
  return ['Findings', ...lines, ...note].join('\n');
}

function list(heading: string, entries: readonly (string | null)[]): string {
  const lines = entries
    .filter((entry) => entry !== null)
    .flatMap((entry) => wrapped(visible(entry), 4).map((line, i) => (i === 0 ? `  - ${line.trimStart()}` : line)));
  return lines.length === 0 ? '' : [heading, ...lines].join('\n');
}

/** Words set to the width of a terminal, indented. */
function wrapped(text: string, indent: number): string[] {
  const lines: string[] = [''];
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1] as string;
    if (last !== '' && last.length + word.length + 1 > lineLength - indent) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.map((line) => ' '.repeat(indent) + line);
}
