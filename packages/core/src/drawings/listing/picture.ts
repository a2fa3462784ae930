import { middle } from '../../engine/geometry/index.ts';
import { givenRange, type Value } from '../../records/index.ts';
import { figureText } from '../figureText.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { TwoViews } from '../pinPlan/twoViews.ts';
import type { Item, Point } from '../scene.ts';
import type { Shown } from '../shown.ts';
import { lettering } from '../view/part.ts';
import { figureLettering, heightDimension, spanDimension } from '../view/spans.ts';

/** One machine as it is drawn by itself, and the figures on the drawing in words. */
export interface MachinePicture {
  readonly views: TwoViews;
  readonly figures: readonly { readonly words: string; readonly figure: Shown }[];
  readonly note: string;
}

/** A figure that was given, of what can be set its whole range; null where nothing or no more than a default was. */
export function given(record: object | undefined, key: string): Shown | null {
  const range = givenRange((record as Readonly<Record<string, Value | undefined>> | undefined)?.[key]);
  return range === null ? null : { path: key, ...range, value: middle(range), standing: 'measured' };
}

/** What is made from a figure; nothing where it was not given. */
export function from<Made>(figure: Shown | null, make: (figure: Shown) => Made): Made[] {
  return figure === null ? [] : [make(figure)];
}

/** A figure, or what is drawn for place only where it was not given [mm]. */
export function valueOr(figure: Shown | null, forPlace: number): number {
  return figure?.value ?? forPlace;
}

/** Figures with their words, those that were given. */
export function told(figures: readonly (readonly [words: string, figure: Shown | null])[]): MachinePicture['figures'] {
  return figures.flatMap(([words, figure]) => (figure === null ? [] : [{ words, figure }]));
}

/** A row for a setback that can be seen at a height [mm]. */
export function backRows(figure: Shown | null, height: number | null): Placed[] {
  return figure === null || height === null || Math.abs(figure.value) < 1 ? [] : [backRow(figure, height)];
}

type Placed = (pen: Pen, at: number) => Item[];

/** A span across both sides, dimensioned under a view. */
export function spanRow(figure: Shown, name: string): Placed {
  return (pen, z) => {
    const text = figureText(figure, pen.system);
    const label = figureLettering(pen, [0, z], text, name, { tone: 'ink', room: figure.value / pen.perPaper - 7 });
    return [spanDimension(figure.value / 2, 0, z, label)];
  };
}

/** A short length at the right of a view, its words at the left of it. */
export function shortRow(figure: Shown, [from, to]: readonly [number, number], name: string): Placed {
  return (pen, z) => {
    const { text, second } = figureText(figure, pen.system);
    const { dimension: size, second: small } = pen.sheet.letters;
    const at: Point = [Math.min(from, to) - onPaper(pen, 6.6), z - onPaper(pen, size * 0.34)];
    const writing = { anchor: 'end', ...(second === null ? {} : { second: { text: second, size: small } }) } as const;
    const label = lettering(at, `${name} ${text}`, size, writing);
    return [
      {
        kind: 'dimension',
        role: 'dimension',
        from: [from, 0],
        to: [to, 0],
        along: [1, 0],
        at: -z,
        label,
        sides: 1,
        mmPerUnit: 1,
      },
    ];
  };
}

/** A height above the lower pins or hooks, dimensioned beside a view. */
export function heightColumn(figure: Shown, back: number): Placed {
  return (pen, x) => {
    const label = figureLettering(pen, [x, figure.value / 2], figureText(figure, pen.system), '', {
      tone: 'ink',
      upward: true,
      room: figure.value / pen.perPaper - 7,
    });
    return [heightDimension([0, 0], [back, figure.value], x, label)];
  };
}

/** How far something stands behind the lower pins or hooks, dimensioned over a view. */
function backRow(figure: Shown, height: number): Placed {
  return (pen, z) => {
    const { text } = figureText(figure, pen.system);
    const { dimension: size } = pen.sheet.letters;
    const label = lettering(
      [Math.max(0, figure.value) + onPaper(pen, 6.6), z - onPaper(pen, size * 0.34)],
      `back ${text}`,
      size,
    );
    const ends = { from: [0, height], to: [figure.value, height], along: [1, 0], at: -z } as const;
    return [{ kind: 'dimension', role: 'dimension', ...ends, label, sides: 1, mmPerUnit: 1 }];
  };
}
