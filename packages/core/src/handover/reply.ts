import type { Answer } from '../engine/assess/index.ts';
import type { CheckId, Finding } from '../engine/findings/index.ts';
import type { InputError, Setup, SetupDocument } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import {
  alternativeText,
  asksOf,
  becauseOf,
  cautionWords,
  cureText,
  labelOf,
  openFindings,
  sentenceCase,
  sentenceOf,
  setPriceText,
  titleOf,
  topicLine,
  topicWords,
  verdictWords,
  markupText,
} from '../words/index.ts';
import { htmlList } from './html.ts';
import { judgedFrom, type Judged } from './judged.ts';
import { nameOr, plainText } from './plainText.ts';
import { safeLink } from './safeLink.ts';

/** How a reply is written. */
export interface ReplyOptions {
  readonly system: UnitSystem;
  /** What the machines are called in the reply, where that is not by their own names. */
  readonly names?: { readonly tractor?: string; readonly coupler?: string; readonly implement?: string };
  /** Address that opens the same setup again; http or https, else it is left out. */
  readonly link?: string;
}

/** A reply to somebody who asked, as plain text and as the body of an HTML e-mail. */
export interface Reply {
  readonly subject: string;
  readonly text: string;
  readonly html: string;
}

/** A reply, or everything that is wrong with the setup. */
export type ReplyReading =
  { readonly ok: true; readonly reply: Reply } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * Drafts a reply from the findings, in the words they have everywhere: the verdict first, then why, what cures it, what to
 * measure, what was taken for granted and what was not checked.
 *
 * @param subject a setup document, or a setup with its answer [JSON or record]
 * @param options units, names, link [record]
 * @returns the reply, or every error in the input [texts]
 */
export function replyTo(subject: SetupDocument | Judged, options: ReplyOptions): ReplyReading {
  const judged = judgedFrom(subject);
  if (!judged.ok) return judged;
  const question = questionOf(judged.setup, options);
  const verdict = verdictWords(judged.answer);
  const blocks = blocksOf(judged, options);
  const link = safeLink(options.link);
  return {
    ok: true,
    reply: {
      subject: `${question.charAt(0).toUpperCase()}${question.slice(1)}: ${verdict.toLowerCase()}`,
      text: textOf(question, blocks, link),
      html: htmlOf(question, blocks, link),
    },
  };
}

/** A heading over sentences; a heading is left out where there is none. */
interface Block {
  readonly heading: string | null;
  readonly sentences: readonly string[];
}

function questionOf({ tractor, coupler, implement }: Setup, { names }: ReplyOptions): string {
  const on = nameOr(names?.tractor ?? tractor.name, 'your tractor');
  const what = nameOr(names?.implement ?? implement.name, 'your implement');
  const between = coupler === undefined ? '' : ` with the ${nameOr(names?.coupler ?? coupler.name, 'coupler')}`;
  return `${what} on ${on}${between}`;
}

function blocksOf({ setup, answer }: Judged, { system }: ReplyOptions): Block[] {
  const because = becauseOf(answer, setup, system);
  const topics = Object.keys(topicWords) as (keyof typeof topicWords)[];
  const blocks: Block[] = [
    { heading: null, sentences: [`${verdictWords(answer)}.${because === null ? '' : ` ${because}`}`] },
    { heading: null, sentences: topics.map((topic) => `${topicWords[topic]}: ${topicLine(answer, topic)}.`) },
    {
      heading: because === null ? 'What does not fit as it stands' : 'Also, as it stands',
      sentences: misfitLines({ setup, answer }, system, because),
    },
    { heading: 'What cures it, each tried and checked again', sentences: cureLines(answer, system) },
    {
      heading: 'What may cure it, once more is known',
      sentences: (answer.perhaps?.cures ?? []).map((cure) => cureText(cure, system)),
    },
    { heading: 'Please measure next', sentences: measureLines(answer, system) },
    { heading: 'Other ways', sentences: answer.alternatives.map((other) => alternativeText(other, system)) },
    { heading: 'What fits, the closest first', sentences: closeLines({ setup, answer }, system) },
    {
      heading: 'What I took for granted',
      sentences: answer.assumed.map(
        ({ path, basis }) => `${sentenceCase(labelOf(path))}${basis === null ? '' : `: ${basis}`}.`,
      ),
    },
    { heading: 'What I did not check', sentences: notChecked(answer, setup, system) },
    { heading: 'Please mind', sentences: answer.cautions.map((id) => cautionWords[id]) },
  ];
  return blocks
    .map(({ heading, sentences }) => ({ heading, sentences: sentences.map(plainText) }))
    .filter(({ sentences }) => sentences.length > 0);
}

/** What misses, but for what the verdict was told by. */
function misfitLines({ setup, answer }: Judged, system: UnitSystem, because: string | null): string[] {
  return answer.findings
    .filter(({ status }) => status === 'fail' || status === 'cured')
    .map((finding) => [titleOf(finding), sentenceOf(finding, setup, system)] as const)
    .filter(([, sentence]) => because?.includes(sentence) !== true)
    .map(([title, sentence]) => `${title}: ${sentence}`);
}

/** So many of the checks that hold by a length are told, the closest first; the sheet tells all. */
const closestTold = 3;
/** Told too where they hold. */
const alwaysTold: readonly CheckId[] = ['lift.force', 'shaft.overlap', 'balance.frontShare'];

function closeLines({ setup, answer }: Judged, system: UnitSystem): string[] {
  const holding = answer.findings.filter(({ status, core }) => status === 'pass' && core);
  const spare = ({ margin }: Finding): number => margin?.low ?? Infinity;
  const hasFigure = (finding: Finding): boolean => /\d/.test(sentenceOf(finding, setup, system));
  const close = holding
    .filter((finding) => finding.unit === 'mm' && !alwaysTold.includes(finding.id) && hasFigure(finding))
    .sort((a, b) => spare(a) - spare(b))
    .slice(0, closestTold);
  const others = holding.filter(({ id, margin }) => alwaysTold.includes(id) && margin !== null);
  const rest = holding.length - close.length - others.length;
  return [
    ...[...close, ...others].map((finding) => `${titleOf(finding)}: ${sentenceOf(finding, setup, system)}`),
    ...(rest > 0 ? [`${rest} more ${rest === 1 ? 'check holds' : 'checks hold'}.`] : []),
  ];
}

function cureLines({ cures, everySetTried }: Answer, system: UnitSystem): string[] {
  const price = setPriceText(cures);
  return [
    ...cures.map((cure) => `${cureText(cure, system)}${cure.inSmallestSet ? ' (counted on)' : ''}`),
    ...(price === null ? [] : [price]),
    ...(everySetTried || cures.length === 0 ? [] : ['Not every combination of what is on the list was tried.']),
  ];
}

function measureLines(answer: Answer, system: UnitSystem): string[] {
  return asksOf(openFindings(answer), system).map(({ text, how }) => `${text} ${how}`.trim());
}

/** Each reason once: several checks may wait for the same figure. */
function notChecked(answer: Answer, setup: Setup, system: UnitSystem): string[] {
  const reasons = new Map<string, string[]>();
  for (const finding of answer.findings.filter(({ status }) => status === 'notChecked')) {
    const reason = sentenceOf(finding, setup, system);
    reasons.set(reason, [...(reasons.get(reason) ?? []), titleOf(finding)]);
  }
  return [...reasons].map(([reason, titles]) => `${titles.join(', ')}: ${reason.replace(/^Not checked: /, '')}`);
}

const opening = 'You asked about';
const closing = 'It is worked out from the figures given. If one of them turns out to be different, ask again.';
const linkWords = 'The same setup, to look at and to change:';

function textOf(question: string, blocks: readonly Block[], link: string | null): string {
  const written = blocks.map(({ heading, sentences }) =>
    heading === null ? sentences.join('\n') : [`${heading}:`, ...sentences.map((line) => `- ${line}`)].join('\n'),
  );
  const end = link === null ? [closing] : [closing, `${linkWords}\n${link}`];
  return `${[`${opening} ${question}.`, ...written, ...end].join('\n\n')}\n`;
}

function htmlOf(question: string, blocks: readonly Block[], link: string | null): string {
  const [verdict, ...rest] = blocks.map(({ heading, sentences }, i) => {
    if (i === 0) return `<p><strong>${sentences.map(markupText).join(' ')}</strong></p>`;
    return `${heading === null ? '' : `<p>${markupText(heading)}:</p>\n`}${htmlList(sentences)}`;
  });
  const end = link === null ? [] : [`<p>${linkWords} <a href="${markupText(link)}">${markupText(link)}</a></p>`];
  return `${[`<p>${opening} ${markupText(question)}.</p>`, verdict, ...rest, `<p>${closing}</p>`, ...end].join('\n')}\n`;
}
