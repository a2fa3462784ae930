import type { Answer } from '../../engine/assess/index.ts';
import type { Setup } from '../../records/index.ts';
import type { Scene } from '../scene.ts';
import { restingStation } from '../side/heights.ts';
import type { LiftOptions, StationOptions } from '../side/options.ts';
import { sideStageOf, type SideStage } from '../side/sideStage.ts';
import { openView } from '../side/view.ts';
import { drivenOf, type Driven } from './driven.ts';
import { drawShaft } from './drawing.ts';
import { openShaftPlots } from './shaftPlots.ts';
import { openTop } from './topView.ts';

/** Stage and drive of an answer; null where there is nothing to draw. */
function stageOf(setup: Setup, answer: Answer): { stage: SideStage; driven: Driven } | null {
  const stage = sideStageOf(setup, answer);
  const driven = drivenOf(answer);
  return stage === null || driven === null ? null : { stage, driven };
}

/**
 * Draws tractor, links, coupler and drive shaft from above at one height of the lift, at the scale of the side view and as
 * wide, so that it can stand under it.
 *
 * Scene coordinates: x rearward from the rear axle, to the right in the picture; y to the tractor's right, up in the picture.
 * Both joints stand where the sweep puts them; the shaft is drawn with the implement neither shifted nor swayed, and hatched
 * from its leftmost to its rightmost.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format and station [names, from 0]
 * @returns the drawing, or null where nothing is driven or its ends are not placed [mm]
 * @example const scene = topView(setup, answer, { system: 'us', station: 30 }); scene && sceneToSvg(scene)
 */
export function topView(setup: Setup, answer: Answer, options: StationOptions): Scene | null {
  const found = stageOf(setup, answer);
  if (found === null) return null;
  const { system, format = 'desk' } = options;
  const plan = { system, format, isBeside: false };
  const { layout } = openView(found.stage, plan);
  return openTop(found.stage, found.driven, plan, layout)(options.station ?? restingStation(found.stage.sweep));
}

/**
 * Draws two plots against ball height, with the ruler of ball heights at their left: what the halves of the shaft overlap,
 * against what is wanted while the drive turns, coming apart and bottoming; and how both joints bend, against their limits.
 * A bar marks the heights at which the drive turns, dots where the shaft is shortest and longest. What is ruled out is
 * hatched. Where no overlap is known the distance between the joints takes its place.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format and station [names, from 0]
 * @returns the drawing, its heights true ones, or null where nothing is driven or its ends are not placed [mm]
 * @example const scene = shaftPlots(setup, answer, { system: 'us', station: 30 }); scene && sceneToSvg(scene)
 */
export function shaftPlots(setup: Setup, answer: Answer, options: StationOptions): Scene | null {
  const found = stageOf(setup, answer);
  if (found === null) return null;
  const { system, format = 'desk' } = options;
  const scene = openShaftPlots(found.stage, found.driven, { system, format, isBeside: false }, null);
  return scene(options.station ?? restingStation(found.stage.sweep));
}

/** How a drive shaft is drawn by itself. */
export interface ShaftOptions extends LiftOptions {
  /** What is cut off both tubes and both guards, the same off all four [mm]; nothing unless given. */
  readonly cut?: number;
}

/**
 * Draws the drive shaft by itself, to scale: pushed right together with its closed length and its overlap; its two halves,
 * with what is to be cut off hatched and dimensioned; and stub and input shaft at the height at which they come nearest, with
 * what is to be measured between them. The halves are taken to be alike. Where the closed length is not known only the last
 * is drawn.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format, and how much to cut off each of the four [names, mm]
 * @returns the drawing, or null where nothing is driven or its ends are not placed [mm]
 * @example const scene = shaftDrawing(setup, answer, { system: 'us', cut: 32 }); scene && sceneToSvg(scene)
 */
export function shaftDrawing(setup: Setup, answer: Answer, options: ShaftOptions): Scene | null {
  const driven = drivenOf(answer);
  if (driven === null || driven.shaft.stations.length === 0) return null;
  const { system, format = 'desk', cut = 0 } = options;
  return drawShaft(setup, driven, { system, format, cut: Number.isFinite(cut) ? Math.max(0, cut) : 0 });
}
