import { wrappedFigures } from '../side/wrapping.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item } from '../scene.ts';
import { sheets, type SheetFormat, type Sheet } from '../sheet.ts';
import { shiftedBy } from '../side/shifted.ts';
import { barHeight, heading, headingHeight, scaleBar } from '../view/heading.ts';
import { columnWidth, rowHeight } from '../view/ordinary.ts';
import { lettering } from '../view/part.ts';
import type { UnitSystem } from '../../units/index.ts';

/** Pins or hooks from behind and from the left, each about the middle between the lower ones [mm]. */
export interface TwoViews {
  readonly rear: readonly Item[];
  readonly side: readonly Item[];
  /** How far the rear view reaches to either side. */
  readonly half: number;
  /** How far the side view reaches forward and back. */
  readonly extent: readonly [forward: number, back: number];
  readonly rise: number;
  readonly drop: number;
  /** Dimensions in rows under the rear view, each given its height. */
  readonly rows: readonly ((pen: Pen, z: number) => readonly Item[])[];
  /** Dimensions in columns beside the side view, each given its place. */
  readonly columns: readonly ((pen: Pen, x: number) => readonly Item[])[];
  /** Dimensions in rows over the side view. */
  readonly above: readonly ((pen: Pen, z: number) => readonly Item[])[];
}

/** Two views laid out on a sheet: everything of a scene but its words. */
export interface LaidOut {
  readonly pen: Pen;
  readonly bounds: Bounds;
  readonly items: readonly Item[];
  /** Length of the scale bar. */
  readonly bar: string;
}

/** Lays two views out beside each other, or one over the other on a narrow sheet, to one scale. */
export function laidOutViews(
  views: TwoViews,
  options: { readonly system: UnitSystem; readonly format: SheetFormat; readonly title: string; readonly note: string },
): LaidOut {
  const sheet = sheets[options.format];
  const pen: Pen = { sheet, system: options.system, perPaper: scaleOf(sheet, views) };
  const note = wrappedFigures(options.note, sheet.letters.note, sheet.width - 2 * sheet.margin);
  const layout = layoutOf(pen, views, headingHeight(sheet, note.length));
  const bar = scaleBar(pen, layout.bounds, 1);
  return {
    pen,
    bounds: layout.bounds,
    bar: bar.label,
    items: [...heading(pen, layout.bounds, options.title, note), ...bar.items, ...placed(pen, views, layout)],
  };
}

/** Where the two views stand: origins of both, and their captions [scene mm]. */
interface Layout {
  readonly bounds: Bounds;
  readonly rear: Place;
  readonly side: Place;
}

interface Place {
  readonly left: number;
  readonly origin: readonly [number, number];
  readonly caption: number;
}

/** Room between the views, and of a caption over each [paper mm]. */
const between = 8;
const captionRoom = 8;
/** Room that the caption of the side view takes where there are few columns [paper mm]. */
const leastBeside = 24;

function beside({ columns }: TwoViews): number {
  return Math.max(leastBeside, 6 + columns.length * columnWidth);
}

function scaleOf(sheet: Sheet, views: TwoViews): number {
  const room = sheet.width - 2 * sheet.margin;
  const rear = 2 * views.half;
  const side = views.extent[0] + views.extent[1];
  const least = sheet.narrow
    ? Math.max(rear / room, side / (room - beside(views)))
    : (rear + side) / (room - between - beside(views));
  return sheet.scales?.find((scale) => scale >= least) ?? least;
}

/** How far a view reaches below the lower pins [scene mm]. */
function footOf(pen: Pen, { drop }: TwoViews): number {
  return drop + onPaper(pen, 3);
}

function layoutOf(pen: Pen, views: TwoViews, heading: number): Layout {
  const { sheet } = pen;
  const { half, extent, rise, rows, above } = views;
  const margin = onPaper(pen, sheet.margin);
  const foot = footOf(pen, views);
  const first = -onPaper(pen, heading);
  const over = onPaper(pen, captionRoom + above.length * rowHeight + 4) + rise;
  const rear: Place = { left: margin, origin: [margin + half, first - over], caption: first };
  const under = first - over - foot - onPaper(pen, rows.length * rowHeight + 4);
  const right = margin + 2 * half + onPaper(pen, between);
  const side: Place = sheet.narrow
    ? { left: margin, origin: [margin + extent[0], under - over], caption: under }
    : { left: right, origin: [right + extent[0], first - over], caption: first };
  const bottom = (sheet.narrow ? side.origin[1] - foot : under) - onPaper(pen, barHeight(sheet) + 2);
  return { bounds: { left: 0, right: onPaper(pen, sheet.width), top: 0, bottom }, rear, side };
}

function placed(pen: Pen, views: TwoViews, { rear, side }: Layout): Item[] {
  const foot = footOf(pen, views);
  const rows = views.rows.flatMap((row, i) => row(pen, -foot - onPaper(pen, (i + 0.7) * rowHeight)));
  const columns = views.columns.flatMap((column, i) =>
    column(pen, views.extent[1] + onPaper(pen, 6 + i * columnWidth)),
  );
  const above = views.above.flatMap((row, i) => row(pen, views.rise + onPaper(pen, 4 + i * rowHeight)));
  return [
    caption(pen, rear, 'From behind'),
    ...[...views.rear, ...rows].map((item) => shiftedBy(item, rear.origin)),
    caption(pen, side, 'From the left'),
    ...[...views.side, ...columns, ...above].map((item) => shiftedBy(item, side.origin)),
  ];
}

function caption(pen: Pen, { left, caption: top }: Place, words: string): Item {
  const { dimension: size } = pen.sheet.letters;
  return lettering([left, top - onPaper(pen, size)], words, size, { weight: 600 });
}
