import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, Scene } from '../scene.ts';
import { line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { attitudePlot } from './attitudePlot.ts';
import { heightMarks, stationOf, strokeOf } from './heights.ts';
import { crossings, liftPlot } from './liftPlot.ts';
import { ruledOut, type Plot, type PlotPlace } from './plotFrame.ts';
import { plotRoom } from './plotRoom.ts';
import { heightText } from './readings.ts';
import { rulerItems, rulerReading, rulerRoom, type Ruler } from './ruler.ts';
import type { SideLayout } from './sideLayout.ts';
import { stationAt, type SideStage } from './sideStage.ts';
import { sideSheet, type ViewPlan } from './plan.ts';
import { bindingSentence, heightSentence, machinesOf, marksSentence, stationSentences } from './words.ts';

/** Room between the two plots, and left of them behind the ruler [paper mm]. */
const gap = 6;

interface PlotLayout {
  readonly bounds: Bounds;
  readonly scale: number;
  readonly ruler: number;
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
}

/** Two plots that stand side by side, and what is said of them at every height. */
export interface PlotPair {
  readonly title: string;
  readonly left: (place: PlotPlace) => Plot;
  readonly right: (place: PlotPlace) => Plot;
  /** What is said of one station beside what is said of the lift there. */
  readonly here?: (station: number) => readonly string[];
  readonly always: readonly string[];
}

/** Opens the two plots of the lift: how the implement stands, and what the lift can do. */
export function openPlots(stage: SideStage, plan: ViewPlan, beside: SideLayout | null): (station: number) => Scene {
  const pair: PlotPair = {
    title: `Through the lift: ${machinesOf(stage)}`,
    left: (place) => attitudePlot(stage, place),
    right: (place) => liftPlot(stage, place),
    always: alwaysSaid(stage, plan),
  };
  return openPair(stage, plan, beside, pair);
}

/** Opens two plots: beside a view they share its scale and its level, else they have a sheet of their own. */
export function openPair(
  stage: SideStage,
  plan: ViewPlan,
  beside: SideLayout | null,
  pair: PlotPair,
): (station: number) => Scene {
  const { system, format } = plan;
  const sheet = sideSheet(format);
  const marks = heightMarks(stage.sweep);
  const stroke = strokeOf(stage.sweep);
  const range = {
    low: Math.min(stroke.low, ...marks.map(({ height }) => height)),
    high: Math.max(stroke.high, ...marks.map(({ height }) => height)),
  };
  const layout = beside === null ? alone(plan, range) : next(beside);
  const pen: Pen = { sheet, system, perPaper: layout.scale };
  const ruler: Ruler = { pen, at: layout.ruler, marks, low: beside === null ? range.low : 0, high: range.high };
  const place = ([left, right]: readonly [number, number]): PlotPlace => ({ pen, left, right, ...range });
  const [left, right] = [pair.left(place(layout.left)), pair.right(place(layout.right))];
  const still = [
    ...unreachable(stage, place(layout.left)),
    ...unreachable(stage, place(layout.right)),
    ...left.still,
    ...right.still,
    ...rulerItems(ruler),
    rulerTitle(pen, layout, range.high),
  ];
  const { title } = pair;
  return (asked) => {
    const index = stationOf(stage.sweep, asked);
    const station = stationAt(stage, index);
    const z = station.ballHeight;
    return {
      title,
      subtitle: heightSentence(stage, index, system),
      bounds: layout.bounds,
      scale: layout.scale,
      items: [
        line('centre', [beside === null ? ruler.at : layout.bounds.left, z], [layout.right[1], z]),
        ...still,
        ...left.moving(station),
        ...right.moving(station),
        ...rulerReading(ruler, z),
      ],
      description: [
        `${title}.`,
        ...stationSentences(stage, index, system),
        ...(pair.here?.(index) ?? []),
        ...pair.always,
      ].join(' '),
    };
  };
}

function next({ bounds, scale }: SideLayout): PlotLayout {
  const left = bounds.right;
  const right = left + plotRoom.beside * scale;
  return { ...columns(left, right - 3 * scale, scale), bounds: { ...bounds, left, right }, scale };
}

function alone({ format }: ViewPlan, { low, high }: { low: number; high: number }): PlotLayout {
  const { width, margin, strokeHeight } = sideSheet(format);
  const scale = Math.max(1, high - low) / strokeHeight;
  const bounds = {
    left: 0,
    right: width * scale,
    top: high + (plotRoom.above - 4) * scale,
    bottom: low - plotRoom.below * scale,
  };
  return { ...columns((margin - 2) * scale, (width - margin) * scale, scale), bounds, scale };
}

function columns(left: number, right: number, scale: number): Omit<PlotLayout, 'bounds' | 'scale'> {
  const ruler = left + rulerRoom.left * scale;
  const from = ruler + (rulerRoom.right + 3) * scale;
  const width = right - from - gap * scale;
  const middle = from + width * 0.46;
  return { ruler, left: [from, middle], right: [middle + gap * scale, right] };
}

function rulerTitle(pen: Pen, { ruler }: PlotLayout, high: number): Item {
  const unit = pen.system === 'us' ? 'in' : 'mm';
  const left = ruler - onPaper(pen, rulerRoom.left - 0.6);
  return lettering([left, high + onPaper(pen, 17.6)], `Ball height, ${unit}`, pen.sheet.letters.note, {
    tone: 'second',
  });
}

/** Heights at which the linkage can't close are ruled out in both plots. */
function unreachable({ sweep }: SideStage, place: PlotPlace): Item[] {
  if (sweep.unreachable === null) return [];
  const { stations } = sweep;
  const half = Math.abs((stations[1]?.ballHeight ?? 0) - (stations[0]?.ballHeight ?? 0)) / 2;
  const frame = { ...place, least: 0, most: 1, ticks: [] };
  return ruledOut(
    frame,
    0,
    1,
    Math.max(place.low, sweep.unreachable.low - half),
    Math.min(place.high, sweep.unreachable.high + half),
  );
}

function alwaysSaid(stage: SideStage, { system }: ViewPlan): string[] {
  return [
    marksSentence(heightMarks(stage.sweep), system),
    bindingSentence(stage, system),
    ...crossings(stage.sweep).map(
      ({ height, isUpTo }) =>
        `The lift is proven for the load ${isUpTo ? 'up to' : 'from'} ${heightText(height, system)}${isUpTo ? '' : ' up'}.`,
    ),
    'Hatched: the side that is ruled out.',
  ];
}
