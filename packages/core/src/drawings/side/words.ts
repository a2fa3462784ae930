import type { Station } from '../../engine/lift/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import type { Pen } from '../pen.ts';
import { shaftSentencesAt } from '../shaft/shaftWords.ts';
import { drivenOf } from '../shaft/driven.ts';
import { named } from '../view/words.ts';
import { wheelBallastWords } from '../balance/balanceWords.ts';
import { heightMarks, stationNear, type HeightMark } from './heights.ts';
import { hasOutlines } from './parts/implement.ts';
import { heightText, leanWord, massText, pitchText } from './readings.ts';
import type { SideStage } from './sideStage.ts';
import { spareAt, worstAt } from './worst.ts';

/** The machines of a picture: `Wickset tiller on Pellin U-28, Ostrey 35`. */
export function machinesOf({ setup }: Pick<SideStage, 'setup'>): string {
  const tractor = named(setup.tractor.name, 'the tractor');
  const implement = named(setup.implement.name, 'the implement');
  if (setup.coupler === undefined) return `${implement} on the links of ${tractor}`;
  return `${implement} on ${named(setup.coupler.name, 'the coupler')}, ${tractor} ahead of it`;
}

/** What the picture shows and in what state, for the sheet. */
export function noteOf(stage: SideStage, system: UnitSystem): string {
  const topLink = `Top link ${heightText(stage.sweep.topLink, system)}, as set for work.`;
  return [
    'Tractor from its left.',
    topLink,
    placeOnly(stage),
    ...wheelBallastWords(stage.setup, stage.answer, system),
  ].join(' ');
}

/** What stands at the end of every description. */
export function endSentences(stage: SideStage, system: UnitSystem): string {
  return `${noteOf(stage, system)} Dashed parts were not measured, or are below the ground.`;
}

function placeOnly(stage: SideStage): string {
  const tractor = stage.tyre.standing === 'measured' ? 'Bodies' : 'Bodies and wheel';
  return hasOutlines(stage) ? 'Tractor for place only.' : `${tractor} for place only.`;
}

/** The names of the heights that a station stands for. */
export function namesAt({ sweep }: SideStage, index: number): string[] {
  return heightMarks(sweep)
    .filter(({ station, height }) => station === index && stationNear(sweep, height) === index)
    .map(({ name }) => name);
}

/** Where the balls are, for a subtitle. */
export function heightSentence(stage: SideStage, index: number, system: UnitSystem): string {
  const { ballHeight } = stage.sweep.stations[index] as Station;
  const names = namesAt(stage, index);
  return `Balls at ${heightText(ballHeight, system)}${names.length === 0 ? '' : `: ${names.join(', ')}`}.`;
}

/** One height in full: heights, pitch, what the lift can do against the load, and whether anything binds. */
export function stationSentences(stage: SideStage, index: number, system: UnitSystem): string[] {
  const station = stage.sweep.stations[index] as Station;
  return [
    heightSentence(stage, index, system),
    station.closes ? 'The linkage closes at this height.' : 'The linkage binds at this height.',
    pitchSentence(station),
    ...liftSentences(stage, station, system),
    ...(station.clearance === null ? [] : [clearanceSentence(station.clearance, system)]),
    ...worstSentence(stage, station, system),
    ...shaftSentences(stage, index, system),
  ];
}

function shaftSentences(stage: SideStage, index: number, system: UnitSystem): string[] {
  const driven = drivenOf(stage.answer);
  const here = driven?.shaft.stations[index];
  return driven === null || here === undefined ? [] : shaftSentencesAt(driven, here, system);
}

function pitchSentence({ pitch }: Station): string {
  const lean = leanWord(pitch);
  return lean === 'level' ? 'The implement stands level.' : `The implement stands ${pitchText(pitch)} ${lean}.`;
}

function liftSentences(stage: SideStage, station: Station, system: UnitSystem): string[] {
  const { load } = stage.sweep;
  if (load === null) return ['What the load comes to is not known: it needs the mass of the implement.'];
  const what = stage.setup.implement.carriedMass === undefined ? 'the implement' : 'what the implement carries';
  const carried = [`Load, ${what}: ${massText(load, system, 'up')}.`, ...centreSentence(stage, station, system)];
  if (station.proven === null) return [...carried, 'What the lift can do is not known: it needs a rating.'];
  const estimated = station.estimated === null ? '' : `, estimated for ${massText(station.estimated, system, 'down')}`;
  const proven = massText(station.proven, system, 'down');
  return [...carried, `In the load’s place the lift is proven for ${proven}${estimated}, the allowance off.`];
}

function centreSentence({ isCentreKnown }: SideStage, { centre, ball }: Station, system: UnitSystem): string[] {
  if (!isCentreKnown) return ['Where its centre is was not measured.'];
  const behind = centre[0] - ball[0];
  const side = behind < 0 ? 'ahead of' : 'behind';
  const place = `${heightText(Math.abs(behind), system)} ${side} the balls and ${heightText(centre[1], system)} above the ground`;
  return [`Centre of all that is lifted: ${place}.`];
}

function clearanceSentence(clearance: number, system: UnitSystem): string {
  const side = clearance < 0 ? 'below' : 'above';
  return `Lowest part ${heightText(Math.abs(clearance), system)} ${side} the ground line.`;
}

function worstSentence({ answer, sweep }: SideStage, station: Station, system: UnitSystem): string[] {
  if (!station.closes || spareAt(sweep, station) === null) return [];
  const { words } = worstAt(answer, sweep, station, system);
  return [`${words.charAt(0).toUpperCase()}${words.slice(1)}.`];
}

/** The heights that are asked of the lift, in words. */
export function marksSentence(marks: readonly HeightMark[], system: UnitSystem): string {
  return `Ball heights: ${marks.map(({ name, height }) => `${name} ${heightText(height, system)}`).join(', ')}.`;
}

/** Where along the lift the linkage can't close, or that it closes all through. */
export function bindingSentence({ sweep: { unreachable } }: SideStage, system: UnitSystem): string {
  if (unreachable === null) return 'The linkage closes all through the lift.';
  const { low, high } = unreachable;
  return `The linkage binds between ${heightText(low, system)} and ${heightText(high, system)}.`;
}

/** The scale in words: of the bar, and on paper where the sheet is printed at its own width. */
export function scaleSaid({ sheet, perPaper }: Pen, label: string): string[] {
  const bar = `Drawn to scale; the scale bar is ${label} long.`;
  return sheet.scales === null ? [bar] : [bar, `Printed ${sheet.width} mm wide the scale is 1:${perPaper}.`];
}
