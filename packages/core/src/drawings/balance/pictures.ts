import type { Answer } from '../../engine/assess/index.ts';
import type { Setup } from '../../records/index.ts';
import type { Scene } from '../scene.ts';
import { restingStation } from '../side/heights.ts';
import type { StationOptions } from '../side/options.ts';
import { sideStageOf } from '../side/sideStage.ts';
import { openAxlePlots } from './axlePlots.ts';
import { openSeeSaw } from './seeSaw.ts';

/**
 * Draws the axle loads at one height of the lift as a see-saw: a beam on the rear axle, on it all that stands on the tractor,
 * under it what hangs behind, and a column that carries the front axle, with what is wanted there. Distances along the beam
 * are to scale; every mass is the block of cast iron that weighs as much. Where the front wheels leave the ground the beam
 * tips, to be seen and not to measure.
 *
 * Scene coordinates: x rearward from the rear axle, to the right in the picture; z up from the ground under the beam.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format and station [names, from 0]
 * @returns the drawing, or null where the tractor or the implement is not weighed [mm]
 * @example const scene = axleBalance(setup, answer, { system: 'us', station: 30 }); scene && sceneToSvg(scene)
 */
export function axleBalance(setup: Setup, answer: Answer, options: StationOptions): Scene | null {
  const { balance, sweep } = answer;
  if (balance === null) return null;
  const { system, format = 'desk' } = options;
  const resting = sweep === null ? 0 : restingStation(sweep);
  return openSeeSaw({ setup, answer, system, format }, balance)(options.station ?? resting);
}

/**
 * Draws two plots against ball height, with the ruler of ball heights at their left: what the front axle carries, against
 * what the chosen rule wants there, and what the rear axle carries, against what it may. What is ruled out is hatched.
 *
 * @param setup the setup that was judged [record]
 * @param answer its full answer [record]
 * @param options units, format and station [names, from 0]
 * @returns the drawing, its heights true ones, or null where the lift is not known or not all is weighed [mm]
 * @example const scene = axlePlots(setup, answer, { system: 'us', station: 30 }); scene && sceneToSvg(scene)
 */
export function axlePlots(setup: Setup, answer: Answer, options: StationOptions): Scene | null {
  const stage = sideStageOf(setup, answer);
  const { balance } = answer;
  if (stage === null || balance === null) return null;
  const { system, format = 'desk' } = options;
  const scene = openAxlePlots(stage, balance, { system, format, isBeside: false }, null);
  return scene(options.station ?? restingStation(stage.sweep));
}
