import { writeFileSync } from 'node:fs';
import type { Answer } from '@hitchwright/core/assess';
import {
  axleBalance,
  liftPlots,
  liftStrip,
  rearView,
  sceneToSvg,
  shaftDrawing,
  shaftPlots,
  slopeSketch,
  topView,
  type Format,
  type Scene,
} from '@hitchwright/core/drawings';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { UsageError } from './exit.ts';

/** A drawing by the option that asks for it. */
export type DrawingName = 'svg' | 'side' | 'plots' | 'top' | 'drive-plots' | 'shaft' | 'balance' | 'slope';

/** What is drawn, and for which sheet; for a wide screen unless that is given. */
export interface Drawn {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly system: UnitSystem;
  readonly format?: Format;
}

interface How {
  readonly system: UnitSystem;
  readonly format?: Format;
}

const draw: Readonly<Record<DrawingName, (drawn: Drawn, how: How) => Scene | null>> = {
  svg: ({ setup, answer }, how) => rearView(setup, answer, how),
  side: ({ setup, answer }, how) => liftStrip(setup, answer, how),
  plots: ({ setup, answer }, how) => liftPlots(setup, answer, how),
  top: ({ setup, answer }, how) => topView(setup, answer, how),
  'drive-plots': ({ setup, answer }, how) => shaftPlots(setup, answer, how),
  shaft: ({ setup, answer }, how) => shaftDrawing(setup, answer, { ...how, cut: cutOf(answer) }),
  balance: ({ setup, answer }, how) => axleBalance(setup, answer, { ...how, station: worstStation(answer) }),
  slope: ({ answer }, { system, ...format }) => slopeSketch(answer, system, format),
};

/** The station of the lift where the front axle has least to spare. */
function worstStation({ balance }: Answer): number {
  const away = (height: number): number => Math.abs(height - (balance?.worst.ballHeight ?? 0));
  const heights = (balance?.stations ?? []).map(({ ballHeight }) => ballHeight);
  return heights.reduce((best, height, at) => (away(height) < away(heights[best] ?? Infinity) ? at : best), 0);
}

/** What the cure that cuts the shaft takes off each of its four tubes; nothing where there is none [mm]. */
function cutOf({ cures }: Answer): number {
  return cures.find(({ kind }) => kind === 'cutShaft')?.amount ?? 0;
}

const [lift, drive] = [
  'the lift is drawn once the lower links and the top link are placed on the tractor.',
  'the drive is drawn where a shaft drives the implement, once the links, the PTO stub and the input shaft are placed.',
];

/** What has to be known before a drawing can be made; the rear view is drawn from anything. */
const undrawn: Readonly<Record<Exclude<DrawingName, 'svg'>, string>> = {
  side: lift,
  plots: lift,
  top: drive,
  'drive-plots': drive,
  shaft: drive,
  balance:
    'the axle loads are drawn once the wheelbase, the mass of the tractor, what its front axle carries and the mass of the implement are known.',
  slope:
    'the slopes are drawn once the axle loads are known, and the height of the centre of gravity, the front axle’s pivot and the rear track of the tractor.',
};

/** A drawing; what is not known yet can’t be drawn, and is said with the name of its file. */
export function sceneOf(name: DrawingName, file: string, drawn: Drawn): Scene {
  const { system, format } = drawn;
  const scene = draw[name](drawn, { system, ...(format === undefined ? {} : { format }) });
  if (scene === null) throw new UsageError(`Can’t draw ${file}: ${name === 'svg' ? '' : undrawn[name]}`);
  return scene;
}

/** Writes a drawing to its file as SVG. */
export function writeDrawing(name: DrawingName, file: string, drawn: Drawn): void {
  writeOut(file, sceneToSvg(sceneOf(name, file, drawn)));
}

/** Writes a file that was asked for by its name. */
export function writeOut(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content);
  } catch (problem) {
    throw new UsageError(`Can’t write ${file}: ${problem instanceof Error ? problem.message : String(problem)}`);
  }
}
