import type { Answer } from '@hitchwright/core/assess';
import type { CheckId } from '@hitchwright/core/hookup';
import type { Bound, Setup, Value } from '@hitchwright/core/records';
import type { Reply } from '../check/assessor.ts';
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

/** The lower right pin of one implement, from the centre line [mm]. */
export interface DrawnLowerPin {
  readonly shoulder: number;
  readonly tip: number;
  readonly diameter: number;
  readonly plate: number;
  readonly isMisfit: boolean;
}

/** The upper pin of one implement, above the lower ones [mm]. */
export interface DrawnUpperPin {
  readonly heights: readonly number[];
  readonly diameter: number;
  readonly isMisfit: boolean;
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

function lowerPin({ implement }: Setup, answer: Answer): DrawnLowerPin | 'not measured' {
  const span = middle(implement.shoulderSpan);
  const standOut = middle(implement.standOut);
  if (span === null || standOut === null) return 'not measured';
  const way = implement.pinsPoint === 'in' ? -1 : 1;
  return {
    shoulder: span / 2,
    tip: span / 2 + way * standOut,
    diameter: middle(implement.lowerPinDiameter) ?? 22,
    plate: middle(implement.plateThickness) ?? 10,
    isMisfit: fails(answer, [
      'front.span',
      'rear.shoulders',
      'rear.pinSeat',
      'rear.retention',
      'rear.lowerPin',
      'front.lowerPin',
    ]),
  };
}

function upperPin({ implement }: Setup, answer: Answer): DrawnUpperPin | 'not measured' | 'none' {
  const { mounting, mastHeight } = implement;
  if (mounting === 'boomOnTopLinkBracket' || mounting === 'subframe' || mounting === 'twoPointsAndWheels')
    return 'none';
  const heights =
    mastHeight?.kind === 'stops' ? mastHeight.at.map(centre) : [middle(mastHeight)].filter((height) => height !== null);
  if (heights.length === 0) return 'not measured';
  return { heights, diameter: middle(implement.upperPinDiameter) ?? 19, isMisfit: fails(answer, ['rear.mast']) };
}

function fails(answer: Answer, ids: readonly CheckId[]): boolean {
  return answer.findings.some(({ id, status }) => ids.includes(id) && (status === 'fail' || status === 'cured'));
}

function lowerHooks({ coupler, tractor }: Setup): Bound[] {
  if (coupler === undefined) {
    const { ballSpan } = tractor;
    return ballSpan?.kind === 'adjustable' ? [{ low: ballSpan.lowest.low / 2, high: ballSpan.highest.high / 2 }] : [];
  }
  const span = middle(coupler.hookSpan);
  const width = middle(coupler.hookWidth);
  return span === null || width === null ? [] : [{ low: (span - width) / 2, high: (span + width) / 2 }];
}

/** Each hole of the top hook, as wide as a seated pin can move; or the whole range that it can be set to. */
function upperHooks({ coupler }: Setup): Bound[] {
  const height = coupler?.topHookHeight;
  const half = Math.max((middle(coupler?.topHookPlay) ?? 0) / 2, 3);
  if (height?.kind === 'stops') return height.at.map((stop) => ({ low: stop.low - half, high: stop.high + half }));
  if (height?.kind === 'adjustable') return [{ low: height.lowest.low, high: height.highest.high }];
  const fixed = middle(height);
  return fixed === null ? [] : [{ low: fixed - half, high: fixed + half }];
}

function middle(value: Value | undefined): number | null {
  if (value === undefined || value.kind === 'unknown') return null;
  if (value.kind === 'stated') return value.value;
  if (value.kind === 'adjustable') return (value.lowest.low + value.highest.high) / 2;
  return value.kind === 'stops' ? null : centre(value.bound);
}

function centre({ low, high }: Bound): number {
  return (low + high) / 2;
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
