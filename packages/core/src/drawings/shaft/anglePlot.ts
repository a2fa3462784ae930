import type { ShaftStation, ShaftSweep } from '../../engine/shaft/index.ts';
import { widthOf } from '../lettering.ts';
import { onPaper } from '../pen.ts';
import type { Item } from '../scene.ts';
import { line } from '../strokes.ts';
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
} from '../side/plotFrame.ts';
import { stationNearest, type Driven } from './driven.ts';
import { faultsAt, raisedLimit, type End } from './faults.ts';
import { footNote, turnsBar } from './plotKeys.ts';
import { angleText, limitsText } from './shaftWords.ts';

/** How both joints bend at every height, against what they may while the drive turns and at all. */
export function anglePlot(driven: Driven, place: PlotPlace): Plot {
  const { shaft } = driven;
  const frame = frameOf(shaft, place);
  const points = (of: (station: ShaftStation) => number) =>
    shaft.stations.map((station) => [of(station), station.ballHeight] as const);
  return {
    still: [
      ...limits(driven, frame),
      ...frameItems(frame, isWide(frame) ? 'Angles of the joints' : 'Joint angles', (tick) => `${tick}°`),
      limitLabel(
        frame,
        Math.max(...both(shaft.limits.turning)),
        `${limitsText(shaft.limits.turning)} turning`,
        'accent',
      ),
      ...legendRow(frame, 0, 'heavy', 'tractor'),
      ...legendRow(frame, 1, 'thin', 'implement'),
      ...curve(
        frame,
        'thin',
        points(({ implementAngle }) => implementAngle),
      ),
      ...curve(
        frame,
        'heavy',
        points(({ tractorAngle }) => tractorAngle),
      ),
      ...turnsBar(shaft, frame),
      footNote(frame, `Hatched: ${ruledWords(driven)}`),
    ],
    moving: ({ ballHeight }) => readOff(driven, frame, ballHeight),
  };
}

/** What the hatching at every height means; what is hatched where the drive turns is named over each plot. */
function ruledWords({ answer, shaft }: Driven): string {
  const raised = { tractor: raisedLimit(answer, shaft, 'tractor'), implement: raisedLimit(answer, shaft, 'implement') };
  const bent = `over ${limitsText(raised)}`;
  if (shaft.closedLength === null) return bent;
  return shaft.closedOverlap === null ? `near bottoming; ${bent}` : `apart or near bottoming; ${bent}`;
}

const both = ({ tractor, implement }: Readonly<Record<End, number>>): number[] => [tractor, implement];

function frameOf({ stations, limits: { turning, stop } }: ShaftSweep, place: PlotPlace): PlotFrame {
  const bent = Math.max(...stations.flatMap(({ tractorAngle, implementAngle }) => [tractorAngle, implementAngle]));
  const most = Math.max(bent, ...both(turning), Math.min(...both(stop))) * 1.08;
  const { sheet, perPaper } = place.pen;
  const room = (place.right - place.left) / perPaper;
  return {
    ...place,
    least: 0,
    most,
    ticks: roundTicks(0, most, room, (tick) => widthOf(`${tick}°`, sheet.letters.note)),
  };
}

/** Beyond the turning limit is ruled out where the drive turns, beyond what holds a raised joint at every height. */
function limits({ answer, shaft }: Driven, frame: PlotFrame): Item[] {
  const { low, high, most, pen } = frame;
  const middle = (shaft.turnsFrom + shaft.turnsTo) / 2;
  const half = Math.max((shaft.turnsTo - shaft.turnsFrom) / 2, onPaper(pen, 1.6));
  const [from, to] = [Math.max(low, middle - half), Math.min(high, middle + half)];
  const turning = [...new Set(both(shaft.limits.turning))];
  const raised = [...new Set((['tractor', 'implement'] as const).map((end) => raisedLimit(answer, shaft, end)))];
  const at = (angle: number, bottom: number, top: number): Item[] =>
    angle > most ? [] : [line('misfit', [across(frame, angle), bottom], [across(frame, angle), top])];
  const stop = Math.max(...raised);
  return [
    ...ruledOut(frame, Math.min(Math.max(...turning), most), Math.min(stop, most), from, to),
    ...ruledOut(frame, Math.min(stop, most), most, low, high),
    ...turning.flatMap((angle) => at(angle, from, to)),
    ...raised.flatMap((angle) => at(angle, low, high)),
  ];
}

function readOff(driven: Driven, frame: PlotFrame, ballHeight: number): Item[] {
  const here = stationNearest(driven.shaft, ballHeight);
  if (here === undefined) return [];
  const { over } = faultsAt(driven, here);
  const isOver = over.tractor !== null || over.implement !== null;
  const ends = (['tractor', 'implement'] as const).filter((end) => over[end] !== null);
  const word = isOver ? `${Math.min(...ends.map((end) => over[end] ?? Infinity))}° allowed` : 'both joints';
  return [
    ...figureRows(
      frame,
      `${angleText(here.tractorAngle)}, ${angleText(here.implementAngle)}`,
      word,
      isOver ? 'accent' : 'ink',
    ),
    ring(frame, 'thin', here.implementAngle, ballHeight),
    ring(frame, 'heavy', here.tractorAngle, ballHeight),
  ];
}
