import type { Station, Sweep } from '../../engine/lift/index.ts';
import { kgPerPound, type UnitSystem } from '../../units/index.ts';
import { widthOf, wrapped } from '../lettering.ts';
import { onPaper } from '../pen.ts';
import type { Item, Point } from '../scene.ts';
import { line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import {
  across,
  curve,
  figureRows,
  frameItems,
  isWide,
  legendRow,
  limitLabel,
  ring,
  roundTicks,
  ruledOut,
  type Plot,
  type PlotFrame,
  type PlotPlace,
} from './plotFrame.ts';
import { shortText, spareText } from './readings.ts';
import type { SideStage } from './sideStage.ts';
import { spareAt } from './worst.ts';

/** What the lift can do at the load's centre at every height, against the load; less than the load is ruled out. */
export function liftPlot(stage: SideStage, place: PlotPlace): Plot {
  const { sweep } = stage;
  const { load } = sweep;
  const { system } = place.pen;
  const highest = load === null ? null : highestShown(sweep, load);
  if (load === null || highest === null) return unknownLift(stage, place);
  const frame = frameOf(place, inUnit(highest, system));
  const limit = across(frame, inUnit(load, system));
  const isEstimated = sweep.stations.some(({ proven, estimated }) => estimated !== null && estimated !== proven);
  return {
    still: [
      ...ruledOut(frame, 0, inUnit(load, system), frame.low, frame.high),
      line('misfit', [limit, frame.low], [limit, frame.high]),
      ...frameItems(frame, titleFor(frame), grouped),
      limitLabel(frame, inUnit(load, system), `load ${loadText(load, system)}`, 'accent'),
      ...legendRow(frame, 0, 'heavy', 'proven'),
      ...(isEstimated ? legendRow(frame, 1, 'thin', 'estimated') : []),
      ...(isEstimated ? curve(frame, 'thin', pointsOf(sweep, frame, 'estimated')) : []),
      ...curve(frame, 'heavy', pointsOf(sweep, frame, 'proven')),
      ...crossings(sweep).flatMap((crossing) => crossingItems(frame, limit, crossing)),
    ],
    moving: (station) => readOff(sweep, frame, station, isEstimated),
  };
}

/** Near a dead point of the linkage the lift grows without end: a plot shows it up to so many times what is usual. */
const mostShown = 2;

/** The most that a plot has to show; null where nothing is known of the lift [kg]. */
function highestShown({ stations }: Sweep, load: number): number | null {
  const known = stations.flatMap(({ proven }) => (proven === null ? [] : [proven])).sort((a, b) => a - b);
  const usual = known[Math.floor(known.length / 2)];
  if (usual === undefined) return null;
  const all = stations.flatMap(({ proven, estimated }) => [proven ?? 0, estimated ?? 0]);
  return Math.min(Math.max(load, ...all), mostShown * Math.max(load, usual));
}

function pointsOf({ stations }: Sweep, frame: PlotFrame, which: 'proven' | 'estimated') {
  return stations.map((one) => [one.closes ? shownValue(frame, one[which]) : null, one.ballHeight] as const);
}

/** A lift in the unit shown; null where it is not known or beyond the plot. */
function shownValue({ pen, most }: PlotFrame, kg: number | null): number | null {
  const value = kg === null ? null : inUnit(kg, pen.system);
  return value === null || value > most || value < 0 ? null : value;
}

/** A mass in the unit shown. */
export function inUnit(kg: number, system: UnitSystem): number {
  return system === 'us' ? kg / kgPerPound : kg;
}

/** A whole number, its thousands set apart. */
export function grouped(value: number): string {
  return String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ',');
}

function loadText(kg: number, system: UnitSystem): string {
  return `${grouped(Math.ceil(inUnit(kg, system) - 1e-6))} ${system === 'us' ? 'lb' : 'kg'}`;
}

function titleFor(place: PlotPlace): string {
  return isWide(place) ? 'Lift at the load’s centre' : 'Lift at load';
}

function frameOf(place: PlotPlace, highest: number): PlotFrame {
  const most = highest * 1.06;
  const room = (place.right - place.left) / place.pen.perPaper;
  const size = place.pen.sheet.letters.note;
  return { ...place, least: 0, most, ticks: roundTicks(0, most, room, (tick) => widthOf(grouped(tick), size)) };
}

interface Crossing {
  readonly height: number;
  /** True where the lift is proven below and no more above. */
  readonly isUpTo: boolean;
}

/** Where the proven lift and the load are the same, on the straight line between two stations. */
export function crossings(sweep: Sweep): Crossing[] {
  const { stations } = sweep;
  return stations.slice(1).flatMap((station, i) => {
    const before = stations[i] as Station;
    const [a, b] = [spareAt(sweep, before)?.proven, spareAt(sweep, station)?.proven];
    if (a === undefined || b === undefined || a >= 0 === b >= 0 || !before.closes || !station.closes) return [];
    const share = a / (a - b);
    const height = before.ballHeight + share * (station.ballHeight - before.ballHeight);
    return [{ height, isUpTo: b < 0 }];
  });
}

/** A dot where proven lift and load cross, with its height on the side that the curve leaves free. */
function crossingItems(frame: PlotFrame, limit: number, { height, isUpTo }: Crossing): Item[] {
  const { pen, left, right, low, high } = frame;
  const size = pen.sheet.letters.note;
  const text = `${isUpTo ? 'to' : 'from'} ${shortText(height, pen.system).text.replace(/ (in|mm)$/, '')}`;
  const room = onPaper(pen, widthOf(text, size) + 3);
  const isLeft = limit - left >= room || right - limit < room;
  const isAbove = isLeft !== isUpTo;
  const tall = size * 0.7;
  const free = height + onPaper(pen, isAbove ? 1.6 : -1.6 - tall);
  const z = Math.max(low + onPaper(pen, 0.8), Math.min(high - onPaper(pen, tall + 0.6), free));
  const from = Math.max(limit - onPaper(pen, 2), left + room - onPaper(pen, 2));
  const at: Point = isLeft ? [from, z] : [limit + onPaper(pen, 2), z];
  return [
    { kind: 'circle', role: 'misfit', centre: [limit, height], radius: onPaper(pen, 1.2), fill: 'line' },
    lettering(at, text, size, { tone: 'accent', weight: 600, anchor: isLeft ? 'end' : 'start' }),
  ];
}

function readOff(sweep: Sweep, frame: PlotFrame, station: Station, isEstimated: boolean): Item[] {
  const spare = spareAt(sweep, station);
  if (!station.closes || spare === null || station.proven === null) return figureRows(frame, '–', 'binds', 'accent');
  const { system } = frame.pen;
  const { proven, estimated } = spare;
  const isShort = (estimated ?? proven) < 0;
  const shown = isShort ? (estimated ?? proven) : proven;
  const words = isShort ? 'short' : proven < 0 ? 'not proven' : 'to spare';
  const rings = [
    ...(isEstimated ? ringAt(frame, 'thin', station, station.estimated) : []),
    ...ringAt(frame, 'heavy', station, station.proven),
  ];
  return [...figureRows(frame, spareText(shown, system), words, proven < 0 ? 'accent' : 'ink'), ...rings];
}

function ringAt(frame: PlotFrame, role: 'heavy' | 'thin', { ballHeight }: Station, kg: number | null): Item[] {
  const value = shownValue(frame, kg);
  return value === null ? [] : [ring(frame, role, value, ballHeight)];
}

/** Nothing to plot: what it would take. */
function unknownLift({ sweep }: SideStage, place: PlotPlace): Plot {
  const frame = { ...place, least: 0, most: 1, ticks: [] };
  const { pen, left, right, low, high } = place;
  const size = pen.sheet.letters.note;
  const needs = sweep.load === null ? 'Not known: needs the mass of the implement.' : 'Not known: needs a lift rating.';
  const lines = wrapped(needs, size, (right - left) / pen.perPaper - 4);
  const middle = (low + high) / 2 + onPaper(pen, ((lines.length - 2) * size * 1.3) / 2);
  return {
    still: [
      ...frameItems(frame, titleFor(frame), String),
      ...lines.map((text, i) =>
        lettering([left + onPaper(pen, 3), middle - onPaper(pen, i * size * 1.3)], text, size, { tone: 'second' }),
      ),
    ],
    moving: () => [],
  };
}
