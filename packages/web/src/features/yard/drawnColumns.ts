import type { Answer } from '@hitchwright/core/assess';
import type { Bound, Setup } from '@hitchwright/core/records';
import type { Reply } from '../check/assessor.ts';
import { lowerHooks, lowerPin, upperHooks, upperPin, type DrawnLowerPin, type DrawnUpperPin } from './pinFigures.ts';
import type { YardRow } from './useYard.ts';

/** A stretch of a drawn column [mm], and the length that it is drawn on [px]. */
export interface Scale {
  readonly from: number;
  readonly to: number;
}

/** Width of a drawn column [px]. */
export const columnWidth = 196;

/** Where a distance falls in its column [px]. */
export function across(scale: Scale, mm: number): number {
  return ((mm - scale.from) / (scale.to - scale.from)) * columnWidth;
}

export interface DrawnColumn<Pin> {
  readonly scale: Scale;
  /** What is hatched. */
  readonly words: string;
  readonly hatched: readonly Bound[];
  /** A pin for each row; a word where there is none to draw. */
  readonly pins: readonly (Pin | 'waiting' | 'not measured' | 'none')[];
}

export interface DrawnColumns {
  readonly lower: DrawnColumn<DrawnLowerPin>;
  readonly upper: DrawnColumn<DrawnUpperPin>;
}

/** Both drawn columns for the chosen coupler, from the figures that its answers used. */
export function drawnColumns(rows: readonly YardRow[], chosen: number): DrawnColumns {
  const replies = rows.map(({ replies }) => replies[chosen] ?? null);
  const setup = replies.find((reply) => reply?.kind === 'answer')?.setup ?? null;
  const lower = { pins: replies.map(pinOf(lowerPin)), hatched: setup === null ? [] : lowerHooks(setup) };
  const upper = { pins: replies.map(pinOf(upperPin)), hatched: setup === null ? [] : upperHooks(setup) };
  const drawnLower = lower.pins.filter((pin) => typeof pin !== 'string');
  const drawnUpper = upper.pins.filter((pin) => typeof pin !== 'string');
  return {
    lower: {
      ...lower,
      words: wordsFor(setup, lower.hatched, 'From the centre.'),
      scale: scaleOf(
        [...lower.hatched.flatMap(ends), ...drawnLower.flatMap((pin) => [pin.shoulder - pin.plate, pin.tip])],
        [320, 500],
      ),
    },
    upper: {
      ...upper,
      words: wordsFor(setup, upper.hatched, 'Above the lower pins.'),
      scale: scaleOf(
        [...upper.hatched.flatMap(ends), ...drawnUpper.flatMap(({ heights }) => [...heights])],
        [350, 540],
      ),
    },
  };
}

function wordsFor(setup: Setup | null, hatched: readonly Bound[], from: string): string {
  if (setup === null || hatched.length === 0) return from;
  return `Hatched: ${setup.coupler === undefined ? 'where the balls reach' : 'the hook'}. ${from}`;
}

function pinOf<Pin>(draw: (setup: Setup, answer: Answer) => Pin | 'not measured' | 'none') {
  return (reply: Reply | null): Pin | 'waiting' | 'not measured' | 'none' =>
    reply === null ? 'waiting' : reply.kind === 'answer' ? draw(reply.setup, reply.answer) : 'not measured';
}

function ends({ low, high }: Bound): number[] {
  return [low, high];
}

/** A stretch that shows everything, with room at both ends. */
function scaleOf(marks: readonly number[], usual: readonly [number, number]): Scale {
  const from = Math.min(usual[0], ...marks) - 12;
  const to = Math.max(usual[1], ...marks) + 12;
  return { from, to };
}
