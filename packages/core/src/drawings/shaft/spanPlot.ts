import type { ShaftStation, ShaftSweep } from '../../engine/shaft/index.ts';
import type { Station } from '../../engine/lift/index.ts';
import { printQuantity, type UnitSystem } from '../../units/index.ts';
import { widthOf } from '../lettering.ts';
import { onPaper } from '../pen.ts';
import type { Item } from '../scene.ts';
import { line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import {
  across,
  curve,
  figureRows,
  frameItems,
  isWide,
  limitLabel,
  ring,
  roundTicks,
  ruledOut,
  type Plot,
  type PlotFrame,
  type PlotPlace,
} from '../side/plotFrame.ts';
import { stationNearest, type Driven } from './driven.ts';
import { faultsAt } from './faults.ts';
import { keyRow, turnsBar } from './plotKeys.ts';

/** What a plot of a shaft’s length shows: the overlap, or the distance between the joints where no overlap is known. */
interface Shown {
  readonly title: string;
  readonly word: string;
  /** At the longest and at the shortest over shift and sway [mm]. */
  readonly atLongest: (station: ShaftStation) => number;
  readonly atShortest: (station: ShaftStation) => number;
  /** Below it the halves overlap too little while they turn, beyond it always; null where nobody knows [mm]. */
  readonly wanted: number | null;
  readonly apart: number | null;
  /** Where the shaft comes too near to bottoming, and whether that is to the right [mm]. */
  readonly tight: number | null;
  readonly bottomsRight: boolean;
}

function shownOf({ closedLength, closedOverlap, limits }: ShaftSweep): Shown {
  const distance = {
    title: 'Between the joints',
    word: 'joint to joint',
    atLongest: ({ longest }: ShaftStation) => longest,
    atShortest: ({ shortest }: ShaftStation) => shortest,
    wanted: null,
    apart: null,
    tight: closedLength === null ? null : closedLength + limits.clearance,
    bottomsRight: false,
  };
  if (closedLength === null || closedOverlap === null) return distance;
  const total = closedLength + closedOverlap;
  return {
    title: 'Overlap of the halves',
    word: 'overlap',
    atLongest: ({ longest }) => total - longest,
    atShortest: ({ shortest }) => total - shortest,
    wanted: limits.overlap,
    apart: 0,
    tight: closedOverlap - limits.clearance,
    bottomsRight: true,
  };
}

/** Below this the shaft is as long wherever the implement stands aside [mm]. */
const sameLength = 1;

/** The overlap at every height, against what is wanted while the drive turns, coming apart, and bottoming. */
export function spanPlot(driven: Driven, place: PlotPlace): Plot {
  const { shaft } = driven;
  const { system } = place.pen;
  const shown = shownOf(shaft);
  const frame = frameOf(shaft, shown, place);
  const isSpread = shaft.stations.some(({ longest, shortest }) => longest - shortest > sameLength);
  const points = (of: (station: ShaftStation) => number) =>
    shaft.stations.map((station) => [inUnit(of(station), system), station.ballHeight] as const);
  return {
    still: [
      ...limits(shaft, shown, frame),
      ...frameItems(frame, isWide(frame) ? shown.title : titleWord(shown), String),
      ...(isSpread ? curve(frame, 'thin', points(shown.atShortest)) : []),
      ...curve(frame, 'heavy', points(shown.atLongest)),
      ...places(shaft, shown, frame),
      ...turnsBar(shaft, frame),
      ...keyRow(frame, 0, 'dot', isWide(frame) ? 'measure here' : 'measure'),
      ...keyRow(frame, 1, 'bar', 'drive turns'),
    ],
    moving: (station) => readOff(driven, shown, frame, { station, isSpread }),
  };
}

function titleWord({ word }: Shown): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

const inch = 25.4;

function inUnit(mm: number, system: UnitSystem): number {
  return system === 'us' ? mm / inch : mm;
}

function frameOf(shaft: ShaftSweep, shown: Shown, place: PlotPlace): PlotFrame {
  const { system, sheet, perPaper } = place.pen;
  const marks = [shown.wanted, shown.apart, shown.tight].flatMap((mark) => (mark === null ? [] : [mark]));
  const values = [
    ...marks,
    ...shaft.stations.flatMap((station) => [shown.atLongest(station), shown.atShortest(station)]),
  ];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const spare = Math.max(12, (high - low) * 0.08);
  const [least, most] = [inUnit(low - spare, system), inUnit(high + spare, system)];
  const room = (place.right - place.left) / perPaper;
  return {
    ...place,
    least,
    most,
    ticks: roundTicks(least, most, room, (tick) => widthOf(String(tick), sheet.letters.note)),
  };
}

/** What is ruled out: apart at any height, too little overlap where the drive turns, too near to bottoming at any height. */
function limits({ turnsFrom, turnsTo }: ShaftSweep, shown: Shown, frame: PlotFrame): Item[] {
  const { pen, low, high, least, most } = frame;
  const value = (mm: number): number => inUnit(mm, pen.system);
  const { wanted, apart, tight, bottomsRight } = shown;
  const [from, to] = spread(frame, turnsFrom, turnsTo);
  const at = (mm: number, bottom: number, top: number): Item =>
    line('misfit', [across(frame, value(mm)), bottom], [across(frame, value(mm)), top]);
  return [
    ...(apart === null ? [] : [...ruledOut(frame, least, value(apart), low, high), at(apart, low, high)]),
    ...(wanted === null ? [] : [...ruledOut(frame, value(apart ?? 0), value(wanted), from, to), at(wanted, from, to)]),
    ...(tight === null
      ? []
      : [
          ...(bottomsRight
            ? ruledOut(frame, value(tight), most, low, high)
            : ruledOut(frame, least, value(tight), low, high)),
          at(tight, low, high),
        ]),
    ...(wanted === null ? [] : [limitLabel(frame, value(wanted), `${short(wanted, pen.system)} wanted`, 'accent')]),
    ...(wanted === null && tight !== null
      ? [limitLabel(frame, value(tight), `${short(tight, pen.system)} at least`, 'accent')]
      : []),
  ];
}

/** Half the height of a range of one height [paper mm]. */
const leastRange = 1.6;

/** The heights at which the drive turns, high enough to be seen. */
function spread({ pen, low, high }: PlotFrame, from: number, to: number): [number, number] {
  const half = onPaper(pen, leastRange);
  return [Math.max(low, Math.min(from, (from + to) / 2 - half)), Math.min(high, Math.max(to, (from + to) / 2 + half))];
}

function short(mm: number, system: UnitSystem): string {
  return printQuantity(mm, 'length', { system, ...(system === 'us' ? { step: 8 } : {}) }).replace(/ (in|mm)$/, '');
}

/** Dots on the curves where the shaft is shortest and longest: there it is measured. */
function places(shaft: ShaftSweep, shown: Shown, frame: PlotFrame): Item[] {
  return [
    ...dotAt(frame, shaft, shown.atShortest, [shaft.shortestAt, 'shortest']),
    ...dotAt(frame, shaft, shown.atLongest, [shaft.longestAt, 'longest']),
  ];
}

function dotAt(
  frame: PlotFrame,
  { stations }: ShaftSweep,
  of: (station: ShaftStation) => number,
  [height, word]: readonly [number, string],
): Item[] {
  const { pen, left, right, low, high } = frame;
  const station = stations.find(({ ballHeight }) => ballHeight === height);
  if (station === undefined) return [];
  const x = across(frame, inUnit(of(station), pen.system));
  const size = pen.sheet.letters.note;
  const room = onPaper(pen, widthOf(word, size) + 2.6);
  const isLeft = x + room > right && x - left > right - x;
  const tall = size * 0.7;
  const z = Math.max(
    low + onPaper(pen, 0.8),
    Math.min(high - onPaper(pen, tall + 0.6), height - onPaper(pen, tall / 2)),
  );
  return [
    { kind: 'circle', role: 'heavy', centre: [x, height], radius: onPaper(pen, 1.2), fill: 'line' },
    lettering([x + onPaper(pen, isLeft ? -2 : 2), z], word, size, { anchor: isLeft ? 'end' : 'start' }),
  ];
}

function readOff(
  driven: Driven,
  shown: Shown,
  frame: PlotFrame,
  { station: { ballHeight }, isSpread }: { readonly station: Station; readonly isSpread: boolean },
): Item[] {
  const { system } = frame.pen;
  const here = stationNearest(driven.shaft, ballHeight);
  if (here === undefined) return [];
  const faults = faultsAt(driven, here);
  const [value, word, isBad] = told(shown, here, faults);
  const ringAt = (role: 'heavy' | 'thin', mm: number): Item => ring(frame, role, inUnit(mm, system), ballHeight);
  return [
    ...figureRows(
      frame,
      printQuantity(Math.abs(value), 'length', {
        system,
        round: value < 0 ? 'up' : 'down',
        ...(system === 'us' ? { step: 8 } : {}),
      }),
      word,
      isBad ? 'accent' : 'ink',
    ),
    ...(isSpread ? [ringAt('thin', shown.atShortest(here))] : []),
    ringAt('heavy', shown.atLongest(here)),
  ];
}

/** The figure that matters at a height, a word for it, and whether it is in the way. */
function told(
  shown: Shown,
  here: ShaftStation,
  faults: ReturnType<typeof faultsAt>,
): readonly [number, string, boolean] {
  if (faults.apart) return [here.overlap ?? 0, 'apart', true];
  if (faults.bottoms) return [here.toBottom ?? 0, 'too long', true];
  if (faults.tight) return [here.toBottom ?? 0, 'to bottoming', true];
  return [shown.atLongest(here), shown.word, faults.short];
}
