import type { UnitSystem } from '../../units/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, Scene } from '../scene.ts';
import type { Sheet } from '../sheet.ts';
import { heading, headingHeight, scaleBar } from '../view/heading.ts';
import { lettering } from '../view/part.ts';
import { shaftAlways } from '../shaft/shaftWords.ts';
import { drivenOf } from '../shaft/driven.ts';
import { shaftLabelRoom, type ShaftLettering } from '../shaft/sideShaft.ts';
import { extentOf } from './extent.ts';
import { heightMarks, stationOf, strokeOf, type HeightMark } from './heights.ts';
import { openPicture } from './picture.ts';
import { sideSheet, type ViewPlan } from './plan.ts';
import { plotRoom } from './plotRoom.ts';
import { rulerItems, rulerReading, rulerRoom, type Ruler } from './ruler.ts';
import { belowGround, sideLayout, type SideLayout } from './sideLayout.ts';
import { stationAt, type SideStage } from './sideStage.ts';
import { stationWords } from './stationWords.ts';
import { toldAt } from './told.ts';
import {
  bindingSentence,
  endSentences,
  heightSentence,
  machinesOf,
  marksSentence,
  noteOf,
  scaleSaid,
  stationSentences,
} from './words.ts';
import { wrappedFigures } from './wrapping.ts';

/** A side view ready to be drawn at any station, with the layout that plots beside it share. */
interface OpenView {
  readonly layout: SideLayout;
  readonly scene: (station: number) => Scene;
}

/** Room that the label of the pitch takes behind the implement [paper mm]. */
const labelRoom = 19;

/** Opens the side view: everything that stays the same through the lift is made once. */
export function openView(stage: SideStage, plan: ViewPlan): OpenView {
  const { system } = plan;
  const whole = sideSheet(plan.format);
  const sheet = plan.isBeside ? { ...whole, width: whole.width - plotRoom.beside } : whole;
  const extent = extentOf(stage);
  const marks = heightMarks(stage.sweep);
  const note = wrappedFigures(noteOf(stage, system), sheet.letters.note, sheet.width - 2 * sheet.margin);
  const rows = readingRows(stage, sheet, system);
  const hasRuler = !plan.isBeside && !whole.narrow;
  const layout = sideLayout(sheet, extent, {
    right: labelRoom + (hasRuler ? rulerRoom.left + rulerRoom.right + sheet.margin : 1),
    above:
      headingHeight(sheet, note.length) + rows * readingRow(sheet) + 3 + (stage.shaft === null ? 0 : shaftLabelRoom),
    below: belowGround(sheet),
  });
  const room = plan.isBeside ? withPlotRoom(layout, stage) : layout;
  const pen: Pen = { sheet, system, perPaper: room.scale };
  const ruler = hasRuler ? rulerOf(stage, pen, room, marks) : null;
  const picture = openPicture(stage, {
    pen,
    box: room.box,
    extent,
    marks,
    levelTo: levelOf(room, ruler, plan),
    isLettered: true,
    ...shaftLettersOf(stage, room),
  });
  const bar = scaleBar(pen, room.bounds, 1);
  const still = [
    ...heading(pen, room.bounds, 'Side view through the lift', note),
    ...bar.items,
    ...(ruler === null ? [] : rulerItems(ruler)),
    ...picture.still,
  ];
  const title = `Side view: ${machinesOf(stage)}`;
  const always = alwaysSaid(stage, pen, marks, bar.label);
  const scene = (asked: number): Scene => {
    const index = stationOf(stage.sweep, asked);
    return {
      title,
      subtitle: heightSentence(stage, index, system),
      bounds: room.bounds,
      scale: room.scale,
      items: [
        ...still,
        ...picture.moving(index),
        ...reading(stage, pen, room.bounds, note.length, index),
        ...(ruler === null ? [] : rulerReading(ruler, stationAt(stage, index).ballHeight)),
      ],
      description: [`${title}.`, ...stationSentences(stage, index, system), ...always].join(' '),
    };
  };
  return { layout: room, scene };
}

/** What is said at every height. */
function alwaysSaid(stage: SideStage, pen: Pen, marks: readonly HeightMark[], barLabel: string): string[] {
  const { system } = pen;
  const driven = drivenOf(stage.answer);
  return [
    marksSentence(marks, system),
    bindingSentence(stage, system),
    ...(driven === null ? [] : shaftAlways(stage.setup, driven, system)),
    ...scaleSaid(pen, barLabel),
    endSentences(stage, system),
  ];
}

/** What is told of the shaft stands over the picture. */
function shaftLettersOf({ shaft }: SideStage, { box, scale }: SideLayout): { shaftLetters?: ShaftLettering } {
  if (shaft === null) return {};
  return { shaftLetters: { top: box.top + 2.2 * scale, left: box.left, right: box.right } };
}

/** Plots beside a view stand at its level and need room of their own above and below. */
function withPlotRoom(layout: SideLayout, { sweep }: SideStage): SideLayout {
  const { low, high } = strokeOf(sweep);
  const { bounds, scale } = layout;
  return {
    ...layout,
    bounds: {
      ...bounds,
      top: Math.max(bounds.top, high + plotRoom.above * scale),
      bottom: Math.min(bounds.bottom, low - plotRoom.below * scale),
    },
  };
}

function levelOf({ bounds }: SideLayout, ruler: Ruler | null, { isBeside }: ViewPlan): number | null {
  if (ruler !== null) return ruler.at;
  return isBeside ? bounds.right : null;
}

function rulerOf(stage: SideStage, pen: Pen, { bounds }: SideLayout, marks: readonly HeightMark[]): Ruler {
  const highest = Math.max(strokeOf(stage.sweep).high, ...marks.map(({ height }) => height));
  return {
    pen,
    marks,
    at: bounds.right - onPaper(pen, rulerRoom.right + pen.sheet.margin / 2),
    low: 0,
    high: highest,
  };
}

function readingRow({ letters }: Sheet): number {
  return letters.dimension * 1.25;
}

function readingLines(stage: SideStage, sheet: Sheet, system: UnitSystem, station: number): string[] {
  const words = stationWords(stage.answer, station, system);
  return wrappedFigures(words, sheet.letters.dimension, sheet.width - 2 * sheet.margin);
}

/** Lines that the reading takes at the most, so that nothing moves when it grows. */
function readingRows(stage: SideStage, sheet: Sheet, system: UnitSystem): number {
  return Math.max(...stage.sweep.stations.map((_, i) => readingLines(stage, sheet, system, i).length));
}

/** What is to be said of this height, under the heading; in the accent where it is in the way. */
function reading(stage: SideStage, pen: Pen, bounds: Bounds, notes: number, index: number): Item[] {
  const { sheet, system } = pen;
  const { isBad } = toldAt(stage.answer, index, system);
  const top = bounds.top - onPaper(pen, headingHeight(sheet, notes));
  return readingLines(stage, sheet, system, index).map((text, i) =>
    lettering(
      [bounds.left + onPaper(pen, sheet.margin), top - onPaper(pen, i * readingRow(sheet) + sheet.letters.dimension)],
      text,
      sheet.letters.dimension,
      { weight: 600, tone: isBad ? 'accent' : 'ink' },
    ),
  );
}
