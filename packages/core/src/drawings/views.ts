import type { Answer } from '../engine/assess/index.ts';
import type { Setup } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { axleBalance } from './balance/pictures.ts';
import { slopeSketch } from './balance/slope.ts';
import { rearView } from './rearView.ts';
import type { Scene } from './scene.ts';
import { shaftDrawing, shaftPlots, topView } from './shaft/pictures.ts';
import type { Format } from './sheet.ts';
import { liftPlots, liftStrip, sideView } from './side/pictures.ts';

/** How a view is drawn; for a wide screen unless that is given. */
export interface DrawnHow {
  readonly system: UnitSystem;
  readonly format?: Format;
}

type Draw = (setup: Setup, answer: Answer, how: DrawnHow) => Scene | null;

const draw = {
  rear: rearView,
  side: (setup, answer, how) => sideView(setup, answer, how),
  lift: liftStrip,
  top: topView,
  shaft: (setup, answer, how) => shaftDrawing(setup, answer, { ...how, cut: cutOf(answer) }),
  plots: (setup, answer, how) => liftPlots(setup, answer, how),
  drivePlots: shaftPlots,
  balance: (setup, answer, how) => axleBalance(setup, answer, { ...how, station: worstStation(answer) }),
  slope: (_, answer, { system, ...format }) => slopeSketch(answer, system, format),
} as const satisfies Readonly<Record<string, Draw>>;

/** One of `viewNames`: the name of a view [text]. */
export type ViewName = keyof typeof draw;

/** Every view by its name. */
export const viewNames = Object.keys(draw) as readonly ViewName[];

/** Views whose lengths are true ones, as who builds from a drawing wants them. */
export const trueViews: readonly ViewName[] = ['rear', 'side', 'lift', 'top', 'shaft'];

/**
 * Draws a view of a setup with its answer.
 *
 * @param name which view [name]
 * @param judged the setup as it was read, and its full answer [record]
 * @param how units, and the sheet it is drawn for [record]
 * @returns the drawing [mm]; null where something is not known that it wants, which `undrawnWords` says
 */
export function viewOf(
  name: ViewName,
  { setup, answer }: { readonly setup: Setup; readonly answer: Answer },
  how: DrawnHow,
): Scene | null {
  return draw[name](setup, answer, how);
}

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

/** What has to be known before a view can be drawn; the rear view is drawn from anything. */
export const undrawnWords: Readonly<Record<ViewName, string>> = {
  rear: '',
  side: lift,
  lift,
  top: drive,
  shaft: drive,
  plots: lift,
  drivePlots: drive,
  balance:
    'the axle loads are drawn once the wheelbase, the mass of the tractor, what its front axle carries and the mass of the implement are known.',
  slope:
    'the slopes are drawn once the axle loads are known, and the height of the centre of gravity, the front axle’s pivot and the rear track of the tractor.',
};
