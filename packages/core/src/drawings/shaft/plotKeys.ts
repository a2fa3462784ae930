import type { ShaftSweep } from '../../engine/shaft/index.ts';
import { onPaper } from '../pen.ts';
import type { Item } from '../scene.ts';
import { body, rectangle } from '../strokes.ts';
import type { PlotFrame } from '../side/plotFrame.ts';
import { lettering } from '../view/part.ts';

/** Width of the bar beside a plot, and how far left of it that stands [paper mm]. */
const bar = { width: 1, off: 2.2, least: 1.6 } as const;

/** A filled bar beside a plot over the heights at which the drive turns. */
export function turnsBar({ turnsFrom, turnsTo }: ShaftSweep, { pen, left, low, high }: PlotFrame): Item[] {
  const middle = (turnsFrom + turnsTo) / 2;
  const half = Math.max((turnsTo - turnsFrom) / 2, onPaper(pen, bar.least));
  const from = Math.max(low, middle - half);
  const to = Math.min(high, middle + half);
  if (to <= from) return [];
  const right = left - onPaper(pen, bar.off - bar.width);
  return [filled(right - onPaper(pen, bar.width), from, right, to)];
}

function filled(left: number, bottom: number, right: number, top: number): Item {
  return { ...body('thin', rectangle([left, bottom], [right, top])), fill: 'line' };
}

/** A line under a plot with a sample of what it names: a dot, or the bar beside the plot. */
export function keyRow({ pen, left, low }: PlotFrame, row: number, sample: 'dot' | 'bar', text: string): Item[] {
  const { note } = pen.sheet.letters;
  const z = low - onPaper(pen, 9.8 + row * 4.7);
  const middle = z + onPaper(pen, note * 0.32);
  const at = left + onPaper(pen, 2);
  const item: Item =
    sample === 'dot'
      ? { kind: 'circle', role: 'heavy', centre: [at, middle], radius: onPaper(pen, 1.2), fill: 'line' }
      : filled(
          at - onPaper(pen, bar.width / 2),
          middle - onPaper(pen, 1.6),
          at + onPaper(pen, bar.width / 2),
          middle + onPaper(pen, 1.6),
        );
  return [item, lettering([left + onPaper(pen, 4.6), z], text, note, { tone: 'second' })];
}

/** A line at the foot of both plots, that ends at the right edge of the right one. */
export function footNote({ pen, right, low }: PlotFrame, text: string): Item {
  return lettering([right, low - onPaper(pen, 19.2)], text, pen.sheet.letters.note, { tone: 'second', anchor: 'end' });
}
