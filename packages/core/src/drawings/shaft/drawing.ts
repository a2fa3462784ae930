import type { UnitSystem } from '../../units/index.ts';
import type { Setup } from '../../records/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point, Scene } from '../scene.ts';
import { sheets, type SheetFormat, type Sheet } from '../sheet.ts';
import { shiftedBy } from '../side/shifted.ts';
import { wrappedFigures } from '../side/wrapping.ts';
import { barHeight, heading, headingHeight, scaleBar } from '../view/heading.ts';
import { lettering } from '../view/part.ts';
import { named } from '../view/words.ts';
import { scaleSaid } from '../side/words.ts';
import type { Driven } from './driven.ts';
import { closedRow, halfLength, halfRow, measureRow, type Row } from './drawingRows.ts';
import { measuredShaft, placesOf, shortestStation, type MeasuredShaft, type Places } from './measured.ts';
import { sizes } from './parts.ts';
import { cutText, lengthText, shaftAlways } from './shaftWords.ts';

/** How a drive shaft is drawn by itself: in what units, for what sheet, and how much is cut off each of its four tubes [mm]. */
export interface ShaftPlan {
  readonly system: UnitSystem;
  readonly format: SheetFormat;
  readonly cut: number;
}

/** A row on its sheet: one picture, or two side by side, under a caption. */
interface Band {
  readonly caption: string;
  readonly cells: readonly { readonly row: Row; readonly at: number; readonly isFlipped?: boolean }[];
}

/** The shaft by itself: pushed together, its halves, and where to measure on tractor and implement. */
export function drawShaft(setup: Setup, driven: Driven, plan: ShaftPlan): Scene {
  const { system, format, cut } = plan;
  const sheet = sheets[format];
  const shaft = measuredShaft(driven.shaft);
  const station = shortestStation(driven.shaft);
  const places = placesOf(setup, station);
  const note = wrappedFigures(noteOf(shaft, plan), sheet.letters.note, sheet.width - 2 * sheet.margin);
  const pen: Pen = { sheet, system, perPaper: scaleOf(sheet, shaft, stationLength(driven)) };
  const bands = [...(shaft === null ? [] : shaftBands(pen, shaft, cut)), measureBand(pen, driven, places, sheet)];
  const bounds = {
    left: 0,
    right: sheet.width * pen.perPaper,
    top: 0,
    bottom: -heightOf(pen, bands, headingHeight(sheet, note.length)),
  };
  const bar = scaleBar(pen, bounds, 1);
  const title = `Drive shaft: ${named(setup.shaft?.name, 'the shaft')} for ${named(setup.implement.name, 'the implement')} on ${named(setup.tractor.name, 'the tractor')}`;
  return {
    title,
    subtitle: cut > 0 ? `${cutText(cut, system)} off each of four tubes` : 'As it is',
    bounds,
    scale: pen.perPaper,
    items: [
      ...heading(pen, bounds, 'Drive shaft by itself', note),
      ...bar.items,
      ...stacked(pen, bands, headingHeight(sheet, note.length)),
    ],
    description: [
      `${title}.`,
      ...shaftSaid(shaft, plan),
      ...measureSaid(driven, places, system),
      ...shaftAlways(setup, driven, system),
      ...scaleSaid(pen, bar.label),
      'Yokes are drawn for place only; what is dashed is hidden, or was not measured.',
    ].join(' '),
  };
}

/** Room between two halves side by side [paper mm]. */
const between = 14;

function stationLength({ shaft }: Driven): number {
  const { tractorCross, implementCross } = shortestStation(shaft);
  return Math.abs(implementCross[0] - tractorCross[0]) + 2 * sizes.stub;
}

function scaleOf(sheet: Sheet, shaft: MeasuredShaft | null, measured: number): number {
  const room = sheet.width - 2 * sheet.margin;
  const half = shaft === null || shaft.closedOverlap === null ? 0 : halfLength(shaft);
  const least = Math.max(
    measured / room,
    shaft === null ? 0 : (shaft.closedLength + 2 * sizes.hubTo) / room,
    sheet.narrow ? half / room : (2 * half) / (room - between),
  );
  return sheet.scales?.find((scale) => scale >= least) ?? least;
}

function shaftBands(pen: Pen, shaft: MeasuredShaft, cut: number): Band[] {
  const middle = (pen.sheet.width * pen.perPaper) / 2;
  const closed = {
    caption: 'Pushed right together',
    cells: [{ row: closedRow(pen, shaft), at: middle - shaft.closedLength / 2 }],
  };
  if (shaft.closedOverlap === null) return [closed];
  return [closed, ...halfBands(pen, shaft, cut)];
}

function halfBands(pen: Pen, shaft: MeasuredShaft, cut: number): Band[] {
  const left = onPaper(pen, pen.sheet.margin) + sizes.hubTo;
  const middle = (pen.sheet.width * pen.perPaper) / 2;
  const off = halfLength(shaft) - sizes.hubTo + onPaper(pen, between / 2);
  const captions = ['Tractor half', 'Implement half'] as const;
  const [front, rear] = [halfRow(pen, shaft, 'tractor', cut), halfRow(pen, shaft, 'implement', cut)];
  const words = cut > 0 ? ': the same off all four' : '';
  if (pen.sheet.narrow)
    return [
      { caption: captions[0] + words, cells: [{ row: front, at: left }] },
      { caption: captions[1], cells: [{ row: rear, at: left }] },
    ];
  return [
    {
      caption: `${captions[0]}, and ${captions[1].toLowerCase()}${words}`,
      cells: [
        { row: front, at: middle - off },
        { row: rear, at: middle + off, isFlipped: true },
      ],
    },
  ];
}

function measureBand(pen: Pen, driven: Driven, places: Places | null, sheet: Sheet): Band {
  const station = shortestStation(driven.shaft);
  const length = station.implementCross[0] - station.tractorCross[0];
  const height = lengthText(driven.shaft.shortestAt, pen.system);
  const caption = sheet.narrow
    ? `Measure at ${height}: shortest`
    : `Measure with the balls at ${height}, where it is shortest`;
  return { caption, cells: [{ row: measureRow(pen, station, places), at: (sheet.width * pen.perPaper - length) / 2 }] };
}

/** Room of a caption over its row, and between rows [paper mm]. */
const captionRoom = 8;
const rowRoom = 5;

function bandHeight(pen: Pen, { cells }: Band): { up: number; down: number } {
  return {
    up: Math.max(...cells.map(({ row }) => row.up)) + onPaper(pen, captionRoom),
    down: Math.max(...cells.map(({ row }) => row.down)) + onPaper(pen, rowRoom),
  };
}

function heightOf(pen: Pen, bands: readonly Band[], above: number): number {
  const rows = bands.map((band) => bandHeight(pen, band)).reduce((sum, { up, down }) => sum + up + down, 0);
  return rows + onPaper(pen, above + barHeight(pen.sheet) + 2);
}

/** The rows under each other, each under its caption. */
function stacked(pen: Pen, bands: readonly Band[], above: number): Item[] {
  const left = onPaper(pen, pen.sheet.margin);
  const { word } = pen.sheet.letters;
  let top = -onPaper(pen, above);
  return bands.flatMap((band) => {
    const { up, down } = bandHeight(pen, band);
    const axis = top - up;
    const caption = lettering([left, top - onPaper(pen, word)], band.caption, pen.sheet.letters.dimension, {
      weight: 600,
    });
    top = axis - down;
    return [
      caption,
      ...band.cells.flatMap(({ row, at, isFlipped }) =>
        row.items.map((item) => shiftedBy(isFlipped === true ? flipped(item) : item, [at, axis])),
      ),
    ];
  });
}

/** An item seen from the other end: what ran to the right runs to the left; lettering stays upright. */
function flipped(item: Item): Item {
  const flip = ([x, z]: Point): Point => [-x, z];
  switch (item.kind) {
    case 'stroke':
      return { ...item, points: item.points.map(flip) };
    case 'hatch':
      return { ...item, outline: item.outline.map(flip) };
    case 'circle':
      return { ...item, centre: flip(item.centre) };
    case 'dimension': {
      const { label } = item;
      const anchors = { start: 'end', middle: 'middle', end: 'start' } as const;
      return {
        ...item,
        from: flip(item.from),
        to: flip(item.to),
        label: label === null ? null : { ...label, at: flip(label.at), anchor: anchors[label.anchor] },
      };
    }
    default:
      return item;
  }
}

function noteOf(shaft: MeasuredShaft | null, { system, cut }: ShaftPlan): string {
  if (shaft === null) return 'Its closed length is not known: push it right together and measure from cross to cross.';
  if (cut <= 0) return 'Yokes for place only. Push it right together to measure it.';
  const after = shaft.closedOverlap === null ? '' : `, overlap ${lengthText(shaft.closedOverlap - cut, system)}`;
  return `Cut ${cutText(cut, system)} off both tubes and both guards: the same off all four. Then closed ${lengthText(shaft.closedLength - cut, system)}${after}.`;
}

function shaftSaid(shaft: MeasuredShaft | null, plan: ShaftPlan): string[] {
  const { system, cut } = plan;
  if (shaft === null) return [noteOf(shaft, plan)];
  const { closedLength, closedOverlap } = shaft;
  return [
    `Pushed right together it measures ${lengthText(closedLength, system)} from cross to cross.`,
    closedOverlap === null
      ? 'Its overlap is not known.'
      : `Its halves then overlap ${lengthText(closedOverlap, system)}.`,
    ...(cut > 0 ? [noteOf(shaft, plan)] : []),
  ];
}

function measureSaid({ shaft }: Driven, places: Places | null, system: UnitSystem): string[] {
  const { shortest } = shortestStation(shaft);
  const also = places === null ? '' : `, ${lengthText(places.distance, system)} from ${places.words}`;
  return [
    `With the balls at ${lengthText(shaft.shortestAt, system)} stub and input shaft come nearest: ${lengthText(shortest, system)} from cross to cross${also}.`,
  ];
}
