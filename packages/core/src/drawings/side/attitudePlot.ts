import { widthOf } from '../lettering.ts';
import { onPaper } from '../pen.ts';
import type { Item } from '../scene.ts';
import { line } from '../strokes.ts';
import {
  across,
  curve,
  figureRows,
  footWord,
  frameItems,
  isWide,
  limitLabel,
  ring,
  roundTicks,
  ruledOut,
  type Plot,
  type PlotFrame,
  type PlotPlace,
} from './plotFrame.ts';
import { leanWord, pitchText } from './readings.ts';
import type { SideStage } from './sideStage.ts';

/** Half the height of the gate that the curve has to pass at work [paper mm]. */
const gate = 2.6;

/** How the implement stands at every height, with the gate that it has to pass at work. */
export function attitudePlot(stage: SideStage, place: PlotPlace): Plot {
  const { stations } = stage.sweep;
  const wanted = wantedAtWork(stage);
  const frame = frameOf(stage, place, wanted);
  const points = stations.map((one) => [one.closes ? one.pitch : null, one.ballHeight] as const);
  return {
    still: [
      ...gateItems(stage, frame, wanted),
      line('centre', [across(frame, 0), frame.low], [across(frame, 0), frame.high]),
      ...frameItems(frame, 'Attitude', (tick) => `${String(tick).replace('-', '−')}°`),
      footWord(frame, 0, 'start', 'nose up'),
      footWord(frame, 1, 'end', 'nose down'),
      ...curve(frame, 'heavy', points),
    ],
    moving: ({ pitch, ballHeight, closes }) =>
      closes
        ? [...figureRows(frame, pitchText(pitch), leanWord(pitch), 'ink'), ring(frame, 'heavy', pitch, ballHeight)]
        : figureRows(frame, '–', 'binds', 'accent'),
  };
}

/** How far from level the implement may stand at work, as in the check of its attitude [deg]. */
function wantedAtWork({ answer }: SideStage): { readonly low: number; readonly high: number } {
  const band = answer.findings.find(({ id }) => id === 'work.attitude')?.band;
  return { low: band?.low ?? 0, high: band?.high ?? 0 };
}

type Band = ReturnType<typeof wantedAtWork>;

function frameOf({ sweep }: SideStage, place: PlotPlace, wanted: Band): PlotFrame {
  const pitches = sweep.stations.filter(({ closes }) => closes).map(({ pitch }) => pitch);
  const least = Math.min(wanted.low - 2.5, Math.floor(Math.min(...pitches) - 1));
  const most = Math.max(wanted.high + 2.5, Math.ceil(Math.max(...pitches) + 1));
  const room = (place.right - place.left) / place.pen.perPaper;
  const size = place.pen.sheet.letters.note;
  return { ...place, least, most, ticks: roundTicks(least, most, room, (tick) => widthOf(`${tick}°`, size)) };
}

/** The height at which the top link is set: the working height, else where the links lie level. */
function setHeight({ sweep }: SideStage): number {
  return sweep.work ?? sweep.lowerPivot[1];
}

/** At work, what is not within the gate is ruled out. */
function gateItems(stage: SideStage, frame: PlotFrame, wanted: Band): Item[] {
  const height = setHeight(stage);
  const { pen, least, most, low, high } = frame;
  const half = onPaper(pen, gate);
  const [bottom, top] = [Math.max(low, height - half), Math.min(high, height + half)];
  if (bottom >= top) return [];
  const posts = [wanted.low, wanted.high].map((value) =>
    line('thin', [across(frame, value), bottom], [across(frame, value), top]),
  );
  const word = stage.sweep.work === null && isWide(frame) ? 'at work, links level' : 'at work';
  return [
    ...ruledOut(frame, least, wanted.low, bottom, top),
    ...ruledOut(frame, wanted.high, most, bottom, top),
    ...posts,
    limitLabel(frame, 0, `±${wanted.high}° ${word}`, 'second'),
  ];
}
