import type { Advice, Suggestion, Tool } from '../engine/advice/index.ts';
import { fieldRules, type FieldRule } from '../records/index.ts';
import { mmPerInch, printBoth, printQuantity, type Dimension, type UnitSystem } from '../units/index.ts';
import { settledTexts } from './asks.ts';
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
    rule === undefined || accuracy === 0 ? '' : `, within ${accuracyText(accuracy, rule.dimension, system)}`;
  return `${sentenceCase(labelOf(path))}: ${toolWords[tool]}, about ${Math.ceil(minutes)} min${within}.`;
}

/** Finer than any fraction of an inch that a tape shows [mm]. */
const fine = 0.5;

/** How near a reading comes: never to nothing. */
function accuracyText(accuracy: number, dimension: Dimension, system: UnitSystem): string {
  if (dimension !== 'length' || accuracy >= fine) return printBoth(accuracy, dimension, { system, round: 'up' });
  const millimetres = printQuantity(accuracy, 'length', { system: 'metric', step: 0.1, round: 'up' });
  return system === 'metric' ? millimetres : `${(accuracy / mmPerInch).toFixed(3)} in (${millimetres})`;
}

/**
 * Where the tape goes for a figure, and where it decides alone.
 *
 * @param suggestion the figure [record]
 * @param system unit system to write in [us | metric]
 * @returns sentences, none where there is nothing to say [texts]
 */
export function suggestionDetails({ path, thresholds }: Suggestion, system: UnitSystem): string[] {
  const settled = settledTexts(thresholds, system).map((text) => `${sentenceCase(text)}.`);
  return [howToMeasure(path), ...settled].filter((text) => text !== '');
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

/** How one reading lies to where its figure decides: clear of it by so much on the good or the bad side, or too close to tell. */
interface Standing {
  readonly side: 'passes' | 'fails' | 'close';
  /** How far it is from the nearest end that decides [canonical unit]. */
  readonly spare: number;
}

function standingTo({ passes, fails }: Suggestion['thresholds'][number], rule: FieldRule, value: number, off: number) {
  const isOpen = (end: number): boolean => end <= rule.min || end >= rule.max;
  const spareIn = ({ low, high }: { low: number; high: number }): number =>
    Math.min(isOpen(low) ? Infinity : value - low, isOpen(high) ? Infinity : high - value);
  const best = (ranges: Suggestion['thresholds'][number]['passes']): number =>
    Math.max(-Infinity, ...ranges.map(spareIn));
  const [good, bad] = [best(passes), best(fails)];
  if (good >= off) return { side: 'passes', spare: good } as Standing;
  if (bad >= off) return { side: 'fails', spare: bad } as Standing;
  return Math.max(good, bad) > -off ? ({ side: 'close', spare: 0 } as Standing) : null;
}

/**
 * What a reading comes to where its figure decides a check alone: `Yours does, with 3/8 in to spare.`
 *
 * @param suggestion the figure with where it decides [record]
 * @param value the reading [canonical unit]
 * @param accuracy how far it may be off either way [canonical unit]
 * @param system unit system to write in [us | metric]
 * @returns one sentence; null where it does not decide alone [text]
 */
export function standingText(
  { path, thresholds }: Pick<Suggestion, 'path' | 'thresholds'>,
  value: number,
  accuracy: number,
  system: UnitSystem,
): string | null {
  const rule = fieldRules.get(fieldOf(path));
  if (rule === undefined) return null;
  const standings = thresholds.map((threshold) => standingTo(threshold, rule, value, accuracy));
  const told = standings.filter((standing) => standing !== null);
  const fails = told.find(({ side }) => side === 'fails');
  if (fails !== undefined) return 'Yours does not.';
  if (told.some(({ side }) => side === 'close'))
    return 'Too close to where it changes for this tool: read it with a finer one.';
  const spare = Math.min(...told.map((standing) => standing.spare));
  if (told.length === 0 || told.length < thresholds.length) return null;
  if (!Number.isFinite(spare)) return 'Yours does.';
  return `Yours does, with ${printQuantity(spare, rule.dimension, { system, round: 'down' })} to spare.`;
}
