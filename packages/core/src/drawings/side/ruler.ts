import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point } from '../scene.ts';
import { body, line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import type { HeightMark } from './heights.ts';
import { shortText } from './readings.ts';

/** A ruler of ball heights: from where to where it runs [mm], and where its line stands [scene mm]. */
export interface Ruler {
  readonly pen: Pen;
  readonly at: number;
  readonly low: number;
  readonly high: number;
  readonly marks: readonly HeightMark[];
}

/** Room that a ruler takes left of its line, for numbers and the pointer, and right of it, for the names of heights [paper mm]. */
export const rulerRoom = { left: 17, right: 17.5 } as const;

const inch = 25.4;

/** Distance of lines of lettering on a ruler [paper mm]. */
const rowGap = 4.3;

interface Steps {
  readonly minor: number;
  readonly major: number;
  readonly unit: number;
}

/** Ticks in the person's unit, so far apart on paper that they can be told apart. */
function stepsOf({ system, perPaper }: Pen): Steps {
  const unit = system === 'us' ? inch : 1;
  const choices: readonly (readonly [number, number])[] =
    system === 'us'
      ? [
          [1, 6],
          [2, 6],
          [6, 12],
          [6, 24],
        ]
      : [
          [20, 100],
          [50, 200],
          [100, 400],
        ];
  const fits = choices.find(([minor, major]) => (minor * unit) / perPaper >= 1.1 && (major * unit) / perPaper >= 5.5);
  const [minor, major] = fits ?? (choices.at(-1) as readonly [number, number]);
  return { minor: minor * unit, major: major * unit, unit };
}

/** What of a ruler stands still: its line with ticks, and the heights that are asked of the lift beside it. */
export function rulerItems(ruler: Ruler): Item[] {
  const { pen, at, low, high } = ruler;
  const { minor, major } = stepsOf(pen);
  return [
    line('thin', [at, low], [at, high]),
    ...multiples(minor, low, high).map((height) => {
      const isMajor = Math.abs(height / major - Math.round(height / major)) < 1e-6;
      return line('thin', [at - onPaper(pen, isMajor ? 2.4 : 1.2), height], [at, height]);
    }),
    ...markItems(ruler),
  ];
}

function multiples(step: number, low: number, high: number): number[] {
  const first = Math.ceil(low / step - 1e-6);
  const count = Math.floor(high / step + 1e-6) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step);
}

/** Names of heights stand beside their ticks, moved apart where they would run into each other. */
function markItems({ pen, at, marks }: Ruler): Item[] {
  const { letters } = pen.sheet;
  const bar = at + onPaper(pen, 1.6);
  const text = at + onPaper(pen, 4.4);
  const levels = apart(
    marks.map(({ height }) => height),
    onPaper(pen, rowGap),
  );
  const heights = marks.map(({ height }) => height);
  return [
    line('thin', [bar, Math.min(...heights)], [bar, Math.max(...heights)]),
    ...marks.flatMap(({ name, height }, i) => {
      const z = levels[i] as number;
      return [
        line('thin', [bar, height], [text - onPaper(pen, 0.6), z]),
        lettering([text, z - onPaper(pen, letters.note * 0.32)], name, letters.note, { tone: 'second' }),
      ];
    }),
  ];
}

/** Levels in rising order, moved as little as may be so that none is nearer to the next than a gap. */
function apart(wanted: readonly number[], gap: number): number[] {
  const groups: { sum: number; count: number }[] = [];
  const middle = (group: { sum: number; count: number }): number => group.sum / group.count;
  for (const level of wanted) {
    groups.push({ sum: level, count: 1 });
    for (;;) {
      const [a, b] = groups.slice(-2);
      if (a === undefined || b === undefined) break;
      if (middle(b) - middle(a) >= ((a.count + b.count) / 2) * gap) break;
      groups.splice(-2, 2, { sum: a.sum + b.sum, count: a.count + b.count });
    }
  }
  return groups.flatMap((group) =>
    Array.from({ length: group.count }, (_, i) => middle(group) + (i - (group.count - 1) / 2) * gap),
  );
}

/** Half the height of the pointer [paper mm]. */
const tagHalf = 3.3;

/** What moves on a ruler: a tag with the height of the balls, its tip at the line, and the numbers that it leaves free. */
export function rulerReading(ruler: Ruler, height: number): Item[] {
  const { pen, at, low, high } = ruler;
  const { major, unit } = stepsOf(pen);
  const { letters } = pen.sheet;
  const clear = onPaper(pen, tagHalf + letters.note * 0.4);
  return [
    ...multiples(major, low, high)
      .filter((number) => Math.abs(number - height) > clear)
      .map((number) =>
        lettering(
          [at - onPaper(pen, 3.4), number - onPaper(pen, letters.note * 0.34)],
          String(Math.round(number / unit)),
          letters.note,
          { tone: 'second', anchor: 'end' },
        ),
      ),
    ...pointer(ruler, height),
  ];
}

function pointer({ pen, at }: Ruler, height: number): Item[] {
  const { letters } = pen.sheet;
  const half = onPaper(pen, tagHalf);
  const left = at - onPaper(pen, rulerRoom.left - 0.6);
  const neck = at - onPaper(pen, 2.6);
  const tag: Point[] = [
    [left, height - half],
    [neck, height - half],
    [at, height],
    [neck, height + half],
    [left, height + half],
  ];
  const figure = shortText(height, pen.system).text.replace(/ (in|mm)$/, '');
  return [
    body('heavy', tag),
    lettering([(left + neck) / 2, height - onPaper(pen, letters.dimension * 0.36)], figure, letters.dimension, {
      weight: 600,
      anchor: 'middle',
    }),
  ];
}
