import type { Answer } from '../../engine/assess/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point, Scene } from '../scene.ts';
import type { Sheet, SheetFormat } from '../sheet.ts';
import { sideSheet } from '../side/plan.ts';
import { shiftedBy } from '../side/shifted.ts';
import { scaleSaid } from '../side/words.ts';
import { wrappedFigures } from '../side/wrapping.ts';
import { barHeight, heading, headingHeight, scaleBar } from '../view/heading.ts';
import { lettering } from '../view/part.ts';
import { atLimit } from './slopeModel.ts';
import { angleRoom, openSketch, sketchItems, type SlopeSketch } from './slopeSketches.ts';
import { captionOf, slopeNote, slopeSentences, type SlopeCaption } from './slopeWords.ts';

/** How the slopes are drawn. */
export interface SlopeOptions {
  /** `desk` (820 px) unless given; `phone` is 390 px wide, `print` the width between the margins of Letter or A4. */
  readonly format?: SheetFormat;
  /** A station of the lift, counted from 0; where each limit is least unless given. */
  readonly station?: number;
}

/** A sketch with the lines under it. */
interface Panel {
  readonly sketch: SlopeSketch;
  readonly caption: SlopeCaption;
}

/** Room between two panels, and over a caption [paper mm]. */
const gap = { across: 8, down: 4 } as const;

const title = 'Ideal tipping limits at rest';

/**
 * Draws the tractor with all that it carries on the two slopes at which, standing still, it would just tip: across the slope
 * from behind, and facing uphill from the side. The line of gravity goes through the tipping edge. For information: ideal
 * limits, never slopes to work on.
 *
 * @param answer the full answer to a setup [record]
 * @param system the system printed first [us | metric]
 * @param options format and station [name, from 0]
 * @returns the drawing, or null where a height or width that it takes is not known [mm]
 * @example const scene = slopeSketch(answer, 'us', { format: 'phone' }); scene && sceneToSvg(scene)
 */
export function slopeSketch(answer: Answer, system: UnitSystem, options: SlopeOptions = {}): Scene | null {
  const { format = 'desk', station } = options;
  const panels = (['sideways', 'uphill'] as const).flatMap((which): Panel[] => {
    const limit = atLimit(answer, which, station);
    if (limit === null) return [];
    return [{ sketch: openSketch(limit), caption: captionOf(limit, station === undefined, system) }];
  });
  if (panels.length === 0) return null;
  const sheet = sideSheet(format);
  const width = panelWidth(sheet);
  const pen: Pen = { sheet, system, perPaper: scaleOf(sheet, panels) };
  const note = wrappedFigures(slopeNote, sheet.letters.note, sheet.width - 2 * sheet.margin);
  const above = headingHeight(sheet, note.length) + 2;
  const { items, height } = laidOut(pen, panels, width);
  const bounds = {
    left: 0,
    right: onPaper(pen, sheet.width),
    top: onPaper(pen, above),
    bottom: -onPaper(pen, height + barHeight(sheet) + 2),
  };
  const bar = scaleBar(pen, bounds, 1);
  return {
    title,
    subtitle: panels.map(({ caption }) => caption.limit).join('; '),
    bounds,
    scale: pen.perPaper,
    items: [...heading(pen, bounds, title, note), ...bar.items, ...items],
    description: [
      `${title}.`,
      ...panels.flatMap(({ caption }) => slopeSentences(caption)),
      slopeNote,
      'Bodies for place only.',
      ...scaleSaid(pen, bar.label),
    ].join(' '),
  };
}

function panelWidth(sheet: Sheet): number {
  const width = sheet.width - 2 * sheet.margin;
  return sheet.narrow ? width : (width - gap.across) / 2;
}

/** One scale for both, so large that each fits its panel. */
function scaleOf(sheet: Sheet, panels: readonly Panel[]): number {
  const width = panelWidth(sheet);
  const least = Math.max(
    ...panels.map(({ sketch: { box } }) =>
      Math.max((box.right - box.left) / (width - 2), (box.top - box.bottom) / sheet.slopeHeight),
    ),
  );
  return sheet.scales?.find((scale) => scale >= least) ?? least;
}

/** The panels side by side, or one under the other; z = 0 is their top [items in scene mm, height in paper mm]. */
function laidOut(pen: Pen, panels: readonly Panel[], width: number): { items: Item[]; height: number } {
  const { sheet } = pen;
  const tallest = Math.max(...panels.map(({ sketch: { box } }) => box.top - box.bottom));
  let [x, top] = [sheet.margin, 0];
  let height = 0;
  const items = panels.flatMap((panel) => {
    const { box } = panel.sketch;
    const tall = (sheet.narrow ? box.top - box.bottom : tallest) / pen.perPaper;
    const foot = top - tall;
    const shift: Point = [onPaper(pen, x + width / 2) - (box.left + box.right) / 2, onPaper(pen, foot) - box.bottom];
    const words = captionLines(pen, panel.caption, width, [x, foot - angleRoom - gap.down]);
    height = Math.max(height, -words.bottom);
    if (sheet.narrow) top = words.bottom - gap.down - 2;
    else x += width + gap.across;
    return [...sketchItems(pen, panel.sketch).map((item) => shiftedBy(item, shift)), ...words.items];
  });
  return { items, height };
}

/** The lines under a sketch, from a point down [paper mm]. */
function captionLines(
  pen: Pen,
  { name, limit, warning, rest }: SlopeCaption,
  width: number,
  [x, top]: Point,
): { items: Item[]; bottom: number } {
  const { letters } = pen.sheet;
  const rows = [
    ...wrappedFigures(name, letters.note, width).map((text) => ({ text, size: letters.note, writing: secondInk })),
    ...wrappedFigures(limit, letters.word, width).map((text) => ({ text, size: letters.word, writing: bold })),
    ...wrappedFigures(warning, letters.word, width).map((text) => ({ text, size: letters.word, writing: warned })),
    ...wrappedFigures(rest, letters.note, width).map((text) => ({ text, size: letters.note, writing: secondInk })),
  ];
  let z = top;
  const items = rows.map(({ text, size, writing }) => {
    z -= size * 1.3;
    return lettering([onPaper(pen, x), onPaper(pen, z)], text, size, writing);
  });
  return { items, bottom: z };
}

const secondInk = { tone: 'second' } as const;
const bold = { weight: 600 } as const;
const warned = { weight: 600, tone: 'accent' } as const;
