import { readingOf } from '../../engine/advice/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { ground } from '../side/parts/ground.ts';
import { shiftedBy } from '../side/shifted.ts';
import type { Bounds, Item, Scene } from '../scene.ts';
import type { Format } from '../sheet.ts';
import { clipped, windowOf } from './clip.ts';
import { inkMap } from './inkMap.ts';
import { crosses, labelItems } from './labels.ts';
import { lensItems, placeLens, type Lens } from './lens.ts';
import { dimensionOf, marksOf } from './marks/marks.ts';
import { plates, type Drawn, type Plate } from './plate.ts';
import { readingLetters, readingPlace } from './reading.ts';
import type { TapeRow } from './row.ts';
import { rowOf } from './rows.ts';
import { itemsOf } from './sketch.ts';
import { describe, titleOf, wordsOf, type TapeWords } from './words.ts';

/** How a drawing of where the tape goes is drawn. */
export interface TapeOptions {
  /** The tape’s marks are inches or centimetres. */
  readonly system: UnitSystem;
  readonly format: Format;
  /** What has been typed so far; it stands on the dimension. */
  readonly reading?: string | null;
  /** The reference point that the figure is read between, one of those that the field’s rule names; the first of them unless given. */
  readonly from?: string;
}

/**
 * Draws where the tape, caliper, plumb line, protractor or scale goes for one figure: a schematic machine in thin ink, not to
 * scale, and in the accent the tool between the two edges it is held to. Every place where people measure by mistake is
 * crossed out and named. The sheet keeps its size from figure to figure, and nothing moves while a reading is typed.
 *
 * @param path field path, a key of the field rules [text]
 * @param options units of the tape’s marks, sheet, and the reading so far [names and text]
 * @returns the drawing [mm of the sketch], or null for what nobody measures: it stands on a plate or in papers, or is weighed with nothing to go wrong
 * @example tapeDrawing('implement.shoulderSpan', { system: 'us', format: 'phone', reading: '26 5/8' })
 */
export function tapeDrawing(path: string, options: TapeOptions): Scene | null {
  const row = rowOf(path, options.from);
  return row === null ? null : drawRow(path, row, options);
}

/**
 * Where the tape goes, in a few words: `from` the step on one pin `to` the step on the other, `not` the tips.
 *
 * @param path field path, a key of the field rules [text]
 * @param from reference point that the figure is read between, where it isn’t the usual one [name]
 * @returns both ends, a sentence of both, and the usual mistakes [texts], or null where nothing is drawn
 */
export function tapeWords(path: string, from?: string): TapeWords | null {
  const row = rowOf(path, from);
  return row === null ? null : wordsOf(row);
}

function drawRow(path: string, row: TapeRow, { system, format, reading = null }: TapeOptions): Scene {
  const plate = plates[format];
  const drawn: Drawn = { plate, system, perPaper: scaleOf(plate, row) };
  const bounds = boundsOf(drawn, row);
  const tool = row.tool ?? readingOf(path, 0).tool;
  const machine = sketched(row, drawn, bounds);
  const marks = marksOf(drawn, row, tool);
  const place = readingPlace(drawn, row, bounds);
  const letters = readingLetters(drawn, place, row, reading);
  const { measured } = row;
  const dimension = measured.kind === 'length' ? [dimensionOf(drawn, measured, letters)] : [];
  const others = measured.kind === 'length' || letters === null ? [] : [letters];
  const still = [...machine, ...marks, ...dimension];
  const lens = lensFor(row, drawn, bounds, { items: still, taken: [place.box] });
  const shown = lens === null ? still : [...still, ...lensItems(lens, [...machine, ...marks])];
  const crossed = crosses(drawn, row.not, lens);
  const labels = labelItems(drawn, row, {
    bounds,
    lens,
    ink: inkMap([...still, ...crossed], bounds, drawn.perPaper),
    taken: [place.box, ...(lens === null ? [] : [lensBox(lens, drawn, bounds)])],
  });
  return {
    title: titleOf(path),
    subtitle: `${row.sketch.view}, not to scale`,
    bounds,
    scale: drawn.perPaper,
    items: [...shown, ...crossed, ...others, ...labels],
    description: describe(path, row, tool, reading),
  };
}

/** Room under the sketch for what is crossed out [lines of lettering]. */
const roomBelow = 1.5;

function below({ margin, letters }: Plate, { not, hint }: TapeRow): number {
  return margin + (not.length > 0 || hint !== undefined ? letters.note * roomBelow : 0);
}

function scaleOf(plate: Plate, row: TapeRow): number {
  const { left, right, bottom, top } = row.show ?? row.sketch.show;
  const [width, height] = [plate.width - 2 * plate.margin, plate.height - plate.margin - below(plate, row)];
  return Math.max((right - left) / width, (top - bottom) / height);
}

/** The sheet around what is shown, in the sketch’s millimetres. */
function boundsOf({ plate, perPaper }: Drawn, row: TapeRow): Bounds {
  const { left, right, bottom, top } = row.show ?? row.sketch.show;
  const middle = (left + right) / 2;
  const under = below(plate, row);
  const spare = (plate.height - plate.margin - under) * perPaper - (top - bottom);
  const foot = bottom - under * perPaper - spare / 2;
  return {
    left: middle - (plate.width / 2) * perPaper,
    right: middle + (plate.width / 2) * perPaper,
    bottom: foot,
    top: foot + plate.height * perPaper,
  };
}

/** Lines are cut this far outside the sheet, where a cut doesn’t show [paper mm]. */
const bleed = 0.45;
/** Depth of the strokes under the ground [paper mm]. */
const groundDepth = 2;

function sketched(row: TapeRow, { perPaper }: Drawn, bounds: Bounds): Item[] {
  const off = bleed * perPaper;
  const wide = {
    left: bounds.left - off,
    right: bounds.right + off,
    bottom: bounds.bottom - off,
    top: bounds.top + off,
  };
  const { ground: level } = row.sketch;
  const soil = level === null ? [] : ground(wide, groundDepth * perPaper).map((item) => shiftedBy(item, [0, level]));
  const window = windowOf(wide);
  return [...soil, ...itemsOf(row.sketch, row.parts)].flatMap((item) => clipped(item, window));
}

function lensFor(row: TapeRow, drawn: Drawn, bounds: Bounds, room: { items: Item[]; taken: Bounds[] }): Lens | null {
  if (row.enlarged === undefined) return null;
  const ink = inkMap(room.items, bounds, drawn.perPaper);
  return placeLens(row.enlarged, drawn, bounds, { ink, taken: room.taken });
}

function lensBox({ centre: [x, z], radius }: Lens, { perPaper }: Drawn, { left, bottom }: Bounds): Bounds {
  const r = radius / perPaper;
  const [cx, cz] = [(x - left) / perPaper, (z - bottom) / perPaper];
  return { left: cx - r, right: cx + r, bottom: cz - r, top: cz + r };
}
