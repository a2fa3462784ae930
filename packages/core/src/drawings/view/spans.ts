import { widthOf } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Dimension, Lettering, Point, Tone } from '../scene.ts';
import type { FigureText } from '../figureText.ts';
import { lettering } from './part.ts';

const sideways: Point = [1, 0];
const upwards: Point = [0, 1];

/** A span across both sides, dimensioned below: its line at height `z`. */
export function spanDimension(half: number, from: number, z: number, label: Lettering): Dimension {
  return { ...ordinary([-half, from], [half, from], sideways, -z), label };
}

/** A height above the lower pins, dimensioned at the left: its line at `y`. */
export function heightDimension(bottom: Point, top: Point, y: number, label: Lettering): Dimension {
  return { ...ordinary(bottom, top, upwards, y), label };
}

function ordinary(from: Point, to: Point, along: Point, at: number): Omit<Dimension, 'label'> {
  return { kind: 'dimension', role: 'dimension', from, to, along, at, sides: 1, mmPerUnit: 1 };
}

/** The lettering of a figure with the other unit behind it, centred on its own dimension line and clear of it. */
export function figureLettering(
  pen: Pen,
  at: Point,
  figure: FigureText,
  name: string,
  how: { tone: Tone; upward?: boolean; room: number },
): Lettering {
  const text = figure.second === null ? `${name} ${figure.text}`.trim() : `${figure.text} ${name}`.trim();
  const lift = onPaper(pen, 1);
  const place: Point = how.upward === true ? [at[0] - lift, at[1]] : [at[0], at[1] + lift];
  const { size, second } = fitted(pen, text, figure.second, how.room);
  return lettering(place, text, size, {
    tone: how.tone,
    weight: how.tone === 'accent' ? 600 : 400,
    anchor: 'middle',
    ...second,
    ...(how.upward === true ? { upward: true } : {}),
  });
}

/** Lettering that has to go into a room [paper mm]: without the other unit, then smaller, where it must be. */
export interface Fitted {
  readonly size: number;
  readonly second: { readonly second?: NonNullable<Lettering['second']> };
}

/** Fits a figure with its name into a room [paper mm]. */
export function fitted(pen: Pen, words: string, second: string | null, room: number): Fitted {
  const { letters } = pen.sheet;
  const both = second !== null && figureWidth(pen, words, second) <= room;
  return {
    size: Math.max(
      pen.sheet.least,
      Math.min(letters.dimension, (letters.dimension * room) / figureWidth(pen, words, null)),
    ),
    second: both ? { second: { text: second, size: letters.second } } : {},
  };
}

/** Whether words go into a room, however small they may be written [paper mm]. */
export function goesInto({ sheet }: Pen, words: string, room: number): boolean {
  return widthOf(words, sheet.least) <= room;
}

/** Width of such lettering on paper [paper mm]. */
function figureWidth(pen: Pen, text: string, second: string | null): number {
  const { letters } = pen.sheet;
  return (
    widthOf(text, letters.dimension) + (second === null ? 0 : widthOf(second, letters.second) + letters.second / 2)
  );
}
