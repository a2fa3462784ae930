import type { Station } from '../../engine/lift/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, Point, Scene } from '../scene.ts';
import type { Sheet } from '../sheet.ts';
import { barHeight, heading, headingHeight, scaleBar } from '../view/heading.ts';
import { lettering } from '../view/part.ts';
import { extentOf, type Extent } from './extent.ts';
import { heightMarks, isReached, restingStation } from './heights.ts';
import { openPicture } from './picture.ts';
import { heightText } from './readings.ts';
import { groundDepth, scaleFor } from './sideLayout.ts';
import { stationAt, type SideStage } from './sideStage.ts';
import { sideSheet, type ViewPlan } from './plan.ts';
import { shiftedBy } from './shifted.ts';
import { toldAt } from './told.ts';
import {
  bindingSentence,
  endSentences,
  machinesOf,
  marksSentence,
  namesAt,
  noteOf,
  scaleSaid,
  stationSentences,
} from './words.ts';
import { wrappedFigures } from './wrapping.ts';

/** One position of a strip. */
interface Position {
  readonly name: string;
  readonly station: number;
}

/** Room between two pictures [paper mm]. */
const gutter = 6;

/** Room for the end of the implement's axis in a picture [paper mm]. */
const tailRoom = 3;

/** Distance of lines of a caption [part of their size]. */
const leading = 1.35;

/** The shape of a strip: where each of its pictures is moved to. */
interface StripLayout {
  readonly scale: number;
  readonly box: Bounds;
  readonly bounds: Bounds;
  readonly shifts: readonly Point[];
  readonly rows: readonly (readonly string[])[];
}

/**
 * Three positions for a sheet of paper: pick-up, work and carry, or the ends and the middle of the lift for those that are
 * not given or fall together. All at one scale, side by side; under each other on a narrow sheet.
 */
export function stripScene(stage: SideStage, plan: Omit<ViewPlan, 'isBeside'>): Scene {
  const { system, format } = plan;
  const sheet = sideSheet(format);
  const positions = positionsOf(stage);
  const extent = extentOf(
    stage,
    positions.map(({ station }) => stationAt(stage, station)),
  );
  const note = wrappedFigures(noteOf(stage, system), sheet.letters.note, sheet.width - 2 * sheet.margin);
  const captions = positions.map((position) => captionOf(stage, position, plan, cellWidth(sheet)));
  const layout = layoutOf(sheet, extent, headingHeight(sheet, note.length), captions);
  const pen: Pen = { sheet, system, perPaper: layout.scale };
  const setting = { pen, box: layout.box, extent, marks: [], levelTo: null, isLettered: false };
  const picture = openPicture(stage, setting);
  const bar = scaleBar(pen, layout.bounds, 1);
  const title = `Three heights of the lift: ${machinesOf(stage)}`;
  return {
    title,
    subtitle: positions.map(({ name }) => name).join('; '),
    bounds: layout.bounds,
    scale: layout.scale,
    items: [
      ...heading(pen, layout.bounds, 'Three heights of the lift', note),
      ...bar.items,
      ...positions.flatMap(({ station }, i) => {
        const shift = layout.shifts[i] as Point;
        const items = [...picture.still, ...picture.moving(station)].map((item) => shiftedBy(item, shift));
        return [...items, ...captionItems(stage, pen, layout, i, station)];
      }),
    ],
    description: [
      `${title}.`,
      ...positions.flatMap(({ station }) => stationSentences(stage, station, system)),
      marksSentence(heightMarks(stage.sweep), system),
      bindingSentence(stage, system),
      ...scaleSaid(pen, bar.label),
      endSentences(stage, system),
    ].join(' '),
  };
}

/** Three different stations from low to high. */
function positionsOf(stage: SideStage): Position[] {
  const { sweep } = stage;
  const last = sweep.stations.length - 1;
  const marks = heightMarks(sweep).filter((mark) => mark.name !== 'full lift' && isReached(sweep, mark));
  const at = (name: string, otherwise: number): number =>
    marks.find((mark) => mark.name === name)?.station ?? otherwise;
  const middle = Math.floor(last / 2);
  const wanted = [at('pick-up', 0), at('work', restingStation(sweep)), at('carry', last), last, 0, middle];
  const stations = [...new Set(wanted)].slice(0, 3).sort((a, b) => a - b);
  return stations.map((station) => ({ name: nameOf(stage, station), station }));
}

function nameOf(stage: SideStage, station: number): string {
  const names = namesAt(stage, station);
  const text = names.length > 0 ? names.join(', ') : station === 0 ? 'lowest' : 'half-way up';
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function captionOf(
  stage: SideStage,
  { name, station }: Position,
  { system, format }: Omit<ViewPlan, 'isBeside'>,
  room: number,
): string[] {
  const here: Station = stationAt(stage, station);
  const { note: size } = sideSheet(format).letters;
  return [
    ...wrappedFigures(`${name}: ${heightText(here.ballHeight, system)}`, size, room),
    ...wrappedFigures(toldAt(stage.answer, station, system).words, size, room),
  ];
}

function cellWidth(sheet: Sheet): number {
  const width = sheet.width - 2 * sheet.margin;
  return sheet.narrow ? width : (width - 2 * gutter) / 3;
}

function layoutOf(sheet: Sheet, extent: Extent, above: number, rows: readonly (readonly string[])[]): StripLayout {
  const width = cellWidth(sheet);
  const room = width - tailRoom;
  const scale = scaleFor(sheet, extent, room);
  const spare = room * scale - (extent.right - extent.near);
  const left = Math.max(extent.far, extent.near - spare);
  const box = { left, right: left + width * scale, top: extent.top, bottom: extent.bottom };
  const lines = Math.max(...rows.map((row) => row.length));
  const caption = groundDepth + 2 + lines * sheet.letters.note * leading;
  const [across, down] = sheet.narrow ? [0, (extent.top - extent.bottom) / scale + caption + 3] : [width + gutter, 0];
  return {
    scale,
    box,
    rows,
    shifts: [0, 1, 2].map((i): Point => [i * across * scale, -i * down * scale]),
    bounds: {
      left: left - sheet.margin * scale,
      right: left + (sheet.width - sheet.margin) * scale,
      top: extent.top + above * scale,
      bottom: extent.bottom - (caption + 2 * down + barHeight(sheet)) * scale,
    },
  };
}

function captionItems(
  stage: SideStage,
  pen: Pen,
  { box, shifts, rows }: StripLayout,
  i: number,
  station: number,
): Item[] {
  const [dx, dz] = shifts[i] as Point;
  const { note } = pen.sheet.letters;
  const { isBad } = toldAt(stage.answer, station, pen.system);
  const top = box.bottom + dz - onPaper(pen, groundDepth + 1);
  return (rows[i] as readonly string[]).map((text, row) =>
    lettering([box.left + dx, top - onPaper(pen, (row + 0.8) * note * leading)], text, note, {
      weight: row === 0 ? 600 : 400,
      tone: row > 0 && isBad ? 'accent' : 'ink',
    }),
  );
}
