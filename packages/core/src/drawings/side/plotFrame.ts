import { widthOf } from '../lettering.ts';
import type { Station } from '../../engine/lift/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Lettering, Point, Tone } from '../scene.ts';
import { circle, hatch, line, rectangle, run } from '../strokes.ts';
import { lettering } from '../view/part.ts';

/** A plot against ball height: where it stands [scene mm] and what its two axes show. */
export interface PlotFrame {
  readonly pen: Pen;
  readonly left: number;
  readonly right: number;
  /** Ball heights at its foot and its head [mm]. */
  readonly low: number;
  readonly high: number;
  /** Values at its left and right edge, and the ticks between them, in the unit shown. */
  readonly least: number;
  readonly most: number;
  readonly ticks: readonly number[];
}

/** Where a plot stands: its edges and its foot and head. */
export type PlotPlace = Pick<PlotFrame, 'pen' | 'left' | 'right' | 'low' | 'high'>;

/** Room in a plot for its long names [paper mm]. */
const wide = 46;

/** Whether a plot has room for its long names. */
export function isWide({ left, right, pen }: PlotPlace): boolean {
  return (right - left) / pen.perPaper >= wide;
}

/** A plot: what stands still, and what is read off at a station. */
export interface Plot {
  readonly still: readonly Item[];
  readonly moving: (station: Station) => readonly Item[];
}

/** Heights of the rows above a plot and below it, from its edge [paper mm]. */
const rows = { limit: 1.6, words: 6.4, figure: 11.3, title: 17.6, ticks: 4.9, legend: 9.8, legendRow: 4.7 } as const;

/** Where a value lies [scene mm]. */
export function across({ left, right, least, most }: PlotFrame, value: number): number {
  return left + ((value - least) / (most - least)) * (right - left);
}

/** Round steps between two values, no nearer on paper than their labels allow. */
export function roundTicks(least: number, most: number, room: number, widest: (tick: number) => number): number[] {
  const perUnit = room / (most - least);
  const ticksOf = (step: number): number[] => {
    const first = Math.ceil(least / step - 1e-9);
    const count = Math.floor(most / step + 1e-9) - first + 1;
    return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step);
  };
  const fits = roundSteps.find(
    (step) =>
      step * perUnit >= room / 9 && ticksOf(step).every((tick) => step * perUnit >= widest(tick) * drawnWidth + 0.8),
  );
  return ticksOf(fits ?? (most - least) / 2);
}

/** 1, 2, 5, 10, 20, 25, 50 and so on: every one a whole number. */
const roundSteps: readonly number[] = [1, 2, 5, ...[1, 2, 3, 4].flatMap((n) => [1, 2, 2.5, 5].map((d) => d * 10 ** n))];

/** Numbers are drawn narrower than the safe side says. */
const drawnWidth = 0.92;

/** Axes, ticks and numbers of a plot, with its title. */
export function frameItems(frame: PlotFrame, title: string, label: (tick: number) => string): Item[] {
  const { pen, left, right, low, high, ticks } = frame;
  const { letters } = pen.sheet;
  return [
    line('thin', [left, low], [left, high]),
    line('thin', [left, low], [right, low]),
    ...ticks.map((tick) => line('thin', [across(frame, tick), low], [across(frame, tick), low - onPaper(pen, 1)])),
    ...ticks
      .filter((tick) => hasRoom(frame, tick, label(tick)))
      .map((tick) =>
        lettering([across(frame, tick), low - onPaper(pen, rows.ticks)], label(tick), letters.note, {
          tone: 'second',
          anchor: 'middle',
        }),
      ),
    lettering([left, high + onPaper(pen, rows.title)], title, letters.note, { weight: 600 }),
  ];
}

/** How far a number may stand out at the right of its plot [paper mm]. */
const overhang = 2.6;

/** A number stands under its tick, and is left out where it would leave the sheet. */
function hasRoom(frame: PlotFrame, tick: number, text: string): boolean {
  const { pen, right } = frame;
  const half = onPaper(pen, (widthOf(text, pen.sheet.letters.note) * drawnWidth) / 2);
  return across(frame, tick) + half <= right + onPaper(pen, overhang);
}

/** The figure read off at one height, and a word for it. */
export function figureRows(frame: PlotFrame, figure: string, words: string, tone: Tone): Item[] {
  const { pen, left, high } = frame;
  const { letters } = pen.sheet;
  return [
    lettering([left, high + onPaper(pen, rows.figure)], figure, letters.word, { weight: 600, tone }),
    lettering([left, high + onPaper(pen, rows.words)], words, letters.note, {
      tone: tone === 'accent' ? tone : 'second',
    }),
  ];
}

/** What a limit is, over a plot: centred on a value, but inside the edges. */
export function limitLabel(frame: PlotFrame, value: number, text: string, tone: Tone): Lettering {
  const { pen, left, right, high } = frame;
  const size = pen.sheet.letters.note;
  const half = onPaper(pen, widthOf(text, size) / 2);
  const x = Math.max(left + half, Math.min(right - half, across(frame, value)));
  return lettering([x, high + onPaper(pen, rows.limit)], text, size, { tone, anchor: 'middle', weight: 500 });
}

/** A line under a plot, with a sample of what it names. */
export function legendRow(frame: PlotFrame, row: number, role: 'heavy' | 'thin', text: string): Item[] {
  const { pen, left, low } = frame;
  const { letters } = pen.sheet;
  const z = low - onPaper(pen, rows.legend + row * rows.legendRow);
  const middle = z + onPaper(pen, letters.note * 0.32);
  return [
    line(role, [left, middle], [left + onPaper(pen, 5), middle]),
    lettering([left + onPaper(pen, 6.4), z], text, letters.note, { tone: 'second' }),
  ];
}

/** A word under one end of a plot. */
export function footWord(frame: PlotFrame, row: number, anchor: 'start' | 'end', text: string): Item {
  const { pen, left, right, low } = frame;
  const z = low - onPaper(pen, rows.legend + row * rows.legendRow);
  return lettering([anchor === 'start' ? left : right, z], text, pen.sheet.letters.note, { tone: 'second', anchor });
}

/** A curve in runs of neighbouring points; it breaks where a value is missing. */
export function curve(
  frame: PlotFrame,
  role: 'heavy' | 'thin',
  points: readonly (readonly [number | null, number])[],
): Item[] {
  const runs: Point[][] = [[]];
  for (const [value, height] of points) {
    if (value === null) runs.push([]);
    else runs.at(-1)?.push([across(frame, value), height]);
  }
  return runs.filter((one) => one.length > 1).map((one) => run(role, one));
}

/** A hatched area: the side that is ruled out. */
export function ruledOut(frame: PlotFrame, from: number, to: number, low: number, high: number): Item[] {
  const [a, b] = [across(frame, from), across(frame, to)];
  return b - a < onPaper(frame.pen, 0.3) ? [] : [hatch('thin', rectangle([a, low], [b, high]))];
}

/** A ring on a curve at one height, as heavy as its curve. */
export function ring(frame: PlotFrame, role: 'heavy' | 'thin', value: number, height: number): Item {
  const radius = onPaper(frame.pen, role === 'heavy' ? 1.25 : 1);
  return { ...circle(role, [across(frame, value), height], radius), fill: 'sheet' };
}
