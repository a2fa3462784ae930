import { widthOf, wrapped } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, Point, ScaleBar } from '../scene.ts';
import type { Sheet } from '../sheet.ts';
import { lettering } from './part.ts';

/** Distance of lines of notes [part of their size]. */
const leading = 1.3;

/** Height that a heading takes with its notes [paper mm]. */
export function headingHeight({ letters, margin }: Sheet, lines: number): number {
  return margin + letters.title + lines * letters.note * leading + 3;
}

/** Lines that a note takes on a width [paper mm]. */
export function noteLines({ letters, margin }: Sheet, note: string, width: number): string[] {
  return wrapped(note, letters.note, width - 2 * margin);
}

/** The name of a view and a note under it, at the top left of its panel. */
export function heading(pen: Pen, panel: Bounds, title: string, note: readonly string[]): Item[] {
  const { letters, margin } = pen.sheet;
  const left = panel.left + onPaper(pen, margin);
  const top = panel.top - onPaper(pen, margin + letters.title * 0.8);
  return [
    lettering([left, top], title, letters.title, { weight: 600 }),
    ...note.map((text, i) =>
      lettering(
        [left, top - onPaper(pen, letters.title * 0.4 + (i + 1) * letters.note * leading)],
        text,
        letters.note,
        { tone: 'second' },
      ),
    ),
  ];
}

interface BarSize {
  readonly division: number;
  readonly divisions: number;
  readonly label: string;
}

const inch = 25.4;

/** A round length near the wanted one, in the chosen unit. */
function barSize(pen: Pen, wanted: number, enlargement: number): BarSize {
  const us = pen.system === 'us';
  const unit = us ? inch : 1;
  const lengths = us
    ? [0.25, 0.5, 1, 2, 3, 4, 6, 8, 12, 24, 36, 72]
    : [5, 10, 20, 40, 50, 100, 200, 400, 500, 1000, 2000];
  const fits = lengths.filter((length) => length * unit * enlargement <= wanted);
  const length = fits.at(-1) ?? (lengths[0] as number);
  return {
    division: (length * unit * enlargement) / 4,
    divisions: 4,
    label: `${lengthText(length)} ${us ? 'in' : 'mm'}`,
  };
}

function lengthText(length: number): string {
  if (length === 0.25) return '1/4';
  return length === 0.5 ? '1/2' : String(length);
}

/** A scale bar at the bottom left of a panel; its length is true for a view enlarged so many times. */
export function scaleBar(pen: Pen, panel: Bounds, enlargement: number): { items: Item[]; label: string } {
  const { letters, margin } = pen.sheet;
  const size = barSize(pen, (panel.right - panel.left) * 0.42, enlargement);
  const at = [panel.left + onPaper(pen, margin), panel.bottom + onPaper(pen, margin)] as const;
  const bar: ScaleBar = { kind: 'scaleBar', at, ...size };
  const z = at[1] + onPaper(pen, 2.2);
  return {
    label: size.label,
    items: [
      bar,
      ...trueScale(pen, enlargement, [at[0] + size.division * size.divisions + onPaper(pen, 4), at[1]]),
      lettering([at[0], z], '0', letters.note, { tone: 'second' }),
      endLabel(pen, [at[0] + size.division * size.divisions, z], size),
    ],
  };
}

/** The length of a bar over its end; behind it, where the bar is too short for both ends. */
function endLabel(pen: Pen, [y, z]: Point, { label, division, divisions }: BarSize): Item {
  const { letters } = pen.sheet;
  const isShort = (division * divisions) / pen.perPaper < widthOf(`0 ${label}`, letters.note);
  const place: Point = isShort ? [y + onPaper(pen, 1.5), z - onPaper(pen, 2.2)] : [y, z];
  return lettering(place, label, letters.note, { tone: 'second', anchor: isShort ? 'start' : 'end' });
}

/** The scale on paper, where the sheet is printed at its own width. */
function trueScale(pen: Pen, enlargement: number, at: Point): Item[] {
  const { letters, scales } = pen.sheet;
  if (scales === null || enlargement !== 1) return [];
  return [lettering(at, `Scale 1:${pen.perPaper}`, letters.note)];
}

/** Room that a scale bar takes at the bottom [paper mm]. */
export function barHeight({ letters, margin }: Sheet): number {
  return margin + letters.note + 4;
}
