import type { Tool } from '../../engine/advice/index.ts';
import { howToMeasure, labelOf } from '../../words/index.ts';
import type { Angle, Length, TapeRow, Weighing } from './row.ts';

/** Where the tape goes, in a few words. Of a weighing, `from` says how it is weighed and `to` in what state. */
export interface TapeWords {
  readonly from: string;
  readonly to: string;
  /** Both as one sentence: `From the step on one pin to the step on the other.` */
  readonly sentence: string;
  /** The usual mistakes: places that are neither. */
  readonly not: readonly string[];
}

/** The words of a row. */
export function wordsOf({ measured, not }: TapeRow): TapeWords {
  return {
    from: measured.from.word,
    to: measured.to.word,
    sentence: measured.kind === 'weight' ? weighed(measured) : `${sentence(endsOf(measured))}.`,
    not: not.map(({ word }) => word),
  };
}

/** `from the step on one pin to the step on the other`. */
function endsOf({ from, to }: Length | Angle): string {
  return `from ${from.word}${from.word.includes(',') ? ',' : ''} to ${to.word}`;
}

function weighed({ from, to }: Weighing): string {
  return `${sentence(from.word)}: ${to.word}.`;
}

/** The name of a figure, as a title. */
export function titleOf(path: string): string {
  const label = labelOf(path);
  return label.charAt(0).toUpperCase() + label.slice(1);
}

/** The drawing in words: what is seen, where the tool goes, what is crossed out, and the reading so far. */
export function describe(path: string, row: TapeRow, tool: Tool, reading: string | null): string {
  const { not, hint, sketch, enlarged } = row;
  return [
    `${titleOf(path)}. ${sketch.view}; a schematic machine, not to scale.`,
    measuredWords(row, tool),
    ...not.map(({ word }) => `Not ${word}.`),
    ...(hint === undefined ? [] : [`${sentence(hint)}.`]),
    ...(enlarged === undefined ? [] : ['A magnifier shows the edge.']),
    howToMeasure(path),
    ...(reading === null || reading.trim() === '' ? [] : [`Reading so far: ${reading.trim()}.`]),
  ].join(' ');
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1).replace(/\.$/, '');
}

/** Where the tool goes, and how it is held, as a sentence. */
function measuredWords({ measured, sketch }: TapeRow, tool: Tool): string {
  if (measured.kind === 'weight') return weighed(measured);
  const ends = endsOf(measured);
  if (measured.kind === 'angle') return `The angle runs ${ends}.`;
  const { jaws } = measured;
  if (jaws !== undefined)
    return `The jaws of the caliper ${jaws.grip === 'over' ? 'close over it' : 'open inside it'}, ${ends}.`;
  const isHung = tool === 'plumbLine' && sketch.isPlan !== true;
  return `The tape runs ${wayOf(measured)} ${ends}${isHung ? ', with a plumb line where an end hangs high' : ''}.`;
}

function wayOf({ along: [x, z] }: Length): string {
  if (z === 0) return 'level';
  if (x !== 0) return 'straight';
  return z > 0 ? 'square up' : 'square down';
}
