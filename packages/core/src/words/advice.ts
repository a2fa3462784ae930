import type { Advice, Suggestion, Tool } from '../engine/advice/index.ts';
import { fieldRules } from '../records/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';
import { decidesText, outcomeWords } from './answer.ts';
import { titleOf } from './findings.ts';
import { fieldOf, howToMeasure, labelOf } from './labels.ts';
import { sentenceCase } from './sentenceCase.ts';

/** What each tool is called, as it is taken along. */
export const toolWords: Readonly<Record<Tool, string>> = {
  tape: 'tape',
  caliper: 'caliper',
  plumbLine: 'plumb line and tape',
  scale: 'scale',
  protractor: 'protractor',
  papers: 'plate or manual',
  word: 'a look',
};

/**
 * One figure worth reading, in a line: `Mast height of the implement: tape, about 2 min, within 1/16 in (1.5 mm).`
 *
 * @param suggestion the figure [record]
 * @param system unit system to write in [us | metric]
 * @returns one line [text]
 */
export function suggestionText(suggestion: Suggestion, system: UnitSystem): string {
  const { path, tool, minutes, accuracy } = suggestion;
  const rule = fieldRules.get(fieldOf(path));
  const within =
    rule === undefined || accuracy === 0 ? '' : `, within ${printBoth(accuracy, rule.dimension, { system })}`;
  return `${sentenceCase(labelOf(path))}: ${toolWords[tool]}, about ${Math.ceil(minutes)} min${within}.`;
}

/**
 * Where the tape goes for a figure, and where it decides alone.
 *
 * @param suggestion the figure [record]
 * @param system unit system to write in [us | metric]
 * @returns sentences, none where there is nothing to say [texts]
 */
export function suggestionDetails({ path, thresholds }: Suggestion, system: UnitSystem): string[] {
  const decides = thresholds.map((threshold) => decidesText(threshold, system, outcomeWords(threshold.check)));
  return [howToMeasure(path), ...decides.map(sentenceCase)].filter((text) => text !== '');
}

/**
 * Why there is nothing more to read, or what readings can't settle.
 *
 * @param advice the advice [record]
 * @returns sentences, none while there is something to read [texts]
 */
export function restWords({ settled, next, tooClose, needless, answer }: Advice): string[] {
  const close = answer.findings
    .filter(({ id }) => tooClose.includes(id))
    .map((finding) => titleOf(finding).toLowerCase());
  return [
    ...(settled ? ['Nothing that could still be measured changes the verdict.'] : []),
    ...(!settled && close.length > 0
      ? [`Too close for a tape: ${close.join(', ')}. Read again with a caliper, or try it on.`]
      : []),
    ...(needless.length > 0 && (settled || next.length > 0)
      ? [`No need to measure: ${needless.map(labelOf).join(', ')}.`]
      : []),
  ];
}
