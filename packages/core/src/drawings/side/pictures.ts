import type { Answer } from '../../engine/assess/index.ts';
import type { Setup } from '../../records/index.ts';
import { openAxlePlots } from '../balance/axlePlots.ts';
import { openSeeSaw } from '../balance/seeSaw.ts';
import type { Scene } from '../scene.ts';
import { drivenOf } from '../shaft/driven.ts';
import { openShaftPlots } from '../shaft/shaftPlots.ts';
import { openTop } from '../shaft/topView.ts';
import { restingStation, strokeOf } from './heights.ts';
import type { LiftOptions, StationOptions } from './options.ts';
import type { ViewPlan } from './plan.ts';
import { openPlots } from './plots.ts';
import type { SideLayout } from './sideLayout.ts';
import { stripScene } from './strip.ts';
import { sideStageOf, type SideStage } from './sideStage.ts';
import { openView } from './view.ts';

/** The pictures of one lift, ready to be drawn at any of its stations. */
export interface LiftPictures {
  /** How many stations there are; they are counted from 0. */
  readonly stations: number;
  /** The station to start with: nearest to the working height, else half-way up. */
  readonly resting: number;
  /** Ball height at each station [mm]. */
  readonly ballHeights: readonly number[];
  /** Whether view and plots share one sheet, side by side: one scale, one height, one level of the balls. */
  readonly areBeside: boolean;
  readonly view: (station: number) => Scene;
  readonly plots: (station: number) => Scene;
  /** The drive shaft from above, to stand under the view; left out where nothing is driven or its ends are not placed. */
  readonly top?: (station: number) => Scene;
  /** Overlap and joint angles of the drive shaft, in the place of the plots of the lift; left out likewise. */
  readonly shaftPlots?: (station: number) => Scene;
  /** The axle loads as a see-saw, on a sheet of its own as wide as both; left out where the tractor or the implement is not weighed. */
  readonly balance?: (station: number) => Scene;
  /** The loads of both axles, in the place of the plots of the lift; left out likewise. */
  readonly balancePlot?: (station: number) => Scene;
}

/**
 * Draws tractor, coupler and implement from the side at one height of the lift, to scale.
 *
 * Scene coordinates are those of the sweep: x rearward from the rear axle, to the right in the picture, z up from the
 * ground. Every joint stands exactly where the sweep puts it; bodies are for place only unless their outlines were given.
 * Scale and extent hold for the whole lift, so that pictures of different stations lie over each other.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format and station [names, from 0]
 * @returns the drawing, or null where the lift is not known [mm]
 * @example const scene = sideView(setup, answer, { system: 'us' }); scene && sceneToSvg(scene)
 */
export function sideView(setup: Setup, answer: Answer, options: StationOptions): Scene | null {
  const stage = sideStageOf(setup, answer);
  if (stage === null) return null;
  const { system, format = 'desk' } = options;
  const open = openView(stage, { system, format, isBeside: false });
  return open.scene(options.station ?? restingStation(stage.sweep));
}

/**
 * Draws two plots against ball height, with the ruler of ball heights at their left: how the implement stands, with the gate
 * it has to pass at work, and what the lift can do at the load's centre against the load. What is ruled out is hatched.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format and station [names, from 0]
 * @returns the drawing, its heights true ones, or null where the lift is not known [mm]
 * @example const scene = liftPlots(setup, answer, { system: 'us', station: 30 }); scene && sceneToSvg(scene)
 */
export function liftPlots(setup: Setup, answer: Answer, options: StationOptions): Scene | null {
  const stage = sideStageOf(setup, answer);
  if (stage === null) return null;
  const { system, format = 'desk' } = options;
  const scene = openPlots(stage, { system, format, isBeside: false }, null);
  return scene(options.station ?? restingStation(stage.sweep));
}

/**
 * Draws three heights of the lift for a printed sheet, side by side at one scale: pick-up or lowest, work, carry or highest.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units and format [names]
 * @returns the drawing, or null where the lift is not known [mm]
 * @example const scene = liftStrip(setup, answer, { system: 'us', format: 'print' }); scene && sceneToSvg(scene)
 */
export function liftStrip(setup: Setup, answer: Answer, options: LiftOptions): Scene | null {
  const stage = sideStageOf(setup, answer);
  return stage === null ? null : stripScene(stage, { system: options.system, format: options.format ?? 'desk' });
}

/** Least height of the stroke on paper for plots that share the scale of the view [paper mm]. */
const leastStroke = 22;

function isTallEnough({ sweep }: SideStage, scale: number): boolean {
  const { low, high } = strokeOf(sweep);
  return (high - low) / scale >= leastStroke;
}

/**
 * Opens the pictures of a lift for a slider: whatever does not depend on the height is made once, ranges and extents stay the
 * same for all stations. On `desk` and `print` view and plots are made for one sheet, to stand side by side without a gap at
 * widths in the ratio of their bounds: the level of the balls then runs from the view into the plots. On `phone`, and where
 * the implement is so long that the plots would be too low to read, each has the width of the sheet (`areBeside` tells).
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units and format [names]
 * @returns the pictures by station, or null where the lift is not known [mm]
 * @example openLiftPictures(setup, answer, { system: 'us' })?.view(30)
 */
export function openLiftPictures(setup: Setup, answer: Answer, options: LiftOptions): LiftPictures | null {
  const stage = sideStageOf(setup, answer);
  if (stage === null) return null;
  const { system, format = 'desk' } = options;
  const together = { system, format, isBeside: format !== 'phone' };
  const first = openView(stage, together);
  const isBeside = together.isBeside && isTallEnough(stage, first.layout.scale);
  const plan = { ...together, isBeside };
  const view = isBeside === together.isBeside ? first : openView(stage, plan);
  return {
    stations: stage.sweep.stations.length,
    resting: restingStation(stage.sweep),
    ballHeights: stage.sweep.stations.map(({ ballHeight }) => ballHeight),
    areBeside: plan.isBeside,
    view: view.scene,
    plots: openPlots(stage, plan, plan.isBeside ? view.layout : null),
    ...shaftPictures(stage, plan, view.layout),
    ...balancePictures(stage, plan, view.layout),
  };
}

function shaftPictures(stage: SideStage, plan: ViewPlan, layout: SideLayout): Pick<LiftPictures, 'top' | 'shaftPlots'> {
  const driven = drivenOf(stage.answer);
  if (driven === null) return {};
  return {
    top: openTop(stage, driven, plan, layout),
    shaftPlots: openShaftPlots(stage, driven, plan, plan.isBeside ? layout : null),
  };
}

function balancePictures(
  stage: SideStage,
  plan: ViewPlan,
  layout: SideLayout,
): Pick<LiftPictures, 'balance' | 'balancePlot'> {
  const { setup, answer } = stage;
  const { balance } = answer;
  if (balance === null) return {};
  const { system, format } = plan;
  return {
    balance: openSeeSaw({ setup, answer, system, format }, balance),
    balancePlot: openAxlePlots(stage, balance, plan, plan.isBeside ? layout : null),
  };
}
