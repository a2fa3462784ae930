import type { Category } from './category.ts';
import { codeOfPractice } from './citations.ts';
import {
  drawbar2005,
  drawbar2006,
  drawbar2008,
  drawbarCompact,
  drawbarPress,
  rotaryMowerA,
  rotaryTillerGerman,
  snowBlower,
} from './driveCitations.ts';
import type { Figure } from './figure.ts';
import type { PtoTypeNumber } from './ptoTypes.ts';

/** Least gap between the drive shaft and the deck below it [mm]: closer than that, limit the lift. @source manual-rotary-mower-a */
export const passageClearance: Figure = rotaryMowerA(25, '1 (25 mm)', 'in', { bound: 'least' });

/** How far the shaft's guard must reach into the shield at either end [mm]. @source manual-rotary-tiller-german */
export const guardOverlap: Figure = rotaryTillerGerman(50, '5', 'cm', { bound: 'least', note: 'at both ends' });

/** Free room around the centre of the stub's end, in every direction [mm]. @source tractor-code-of-practice */
export const stubClearZone: Figure = codeOfPractice(80, '8', 'cm', {
  bound: 'least',
  note: 'from the centre of the shaft end to any fixed part of the tractor',
});

/** One maker's most power on a stub of six splines at 540 rpm [kW]; up to 86 kW it wants 21 splines at 1000. @source manual-drawbar-2008 */
export const sixSplinePowerCap: Figure = drawbar2008(56, '56', 'kW', { bound: 'most', note: '75 hp' });

const drawbars: Readonly<Record<PtoTypeNumber, readonly Figure[]>> = {
  1: [
    drawbar2005(350, '350', 'mm'),
    drawbar2006(356, '356', 'mm'),
    drawbar2008(356, '356', 'mm'),
    drawbarCompact(358, '358', 'mm', { note: '14 in' }),
    drawbarPress(355.6, '14', 'in'),
  ],
  2: [
    drawbar2005(400, '400', 'mm'),
    drawbar2006(407, '407', 'mm'),
    drawbar2008(406, '406', 'mm'),
    drawbarPress(406.4, '16', 'in'),
  ],
  3: [drawbar2005(508, '508', 'mm')],
  4: [],
};

/**
 * From the stub's end rearward to the drawbar's pin hole, as set for driven trailed machines. Where a drawbar stays on, a
 * mounted machine's shaft must pass above it.
 *
 * @param type PTO type [1–4]
 * @returns rows, none for type 4 [mm]
 * @source manual-drawbar-2005, manual-drawbar-2006, manual-drawbar-2008, manual-drawbar-compact, trade-press-drawbar
 */
export function drawbarPinDistance(type: PtoTypeNumber): readonly Figure[] {
  return drawbars[type];
}

const endsToCrosses: Readonly<Partial<Record<Category, Figure>>> = {
  '1': snowBlower(114.3, '4.5', 'in', { note: 'both ends together, category 1' }),
  '2': snowBlower(139.7, '5.5', 'in', { note: 'both ends together, category 2' }),
};

/**
 * What to take off the distance between the two shaft ends to get from cross centre to cross centre: the reach of both
 * yokes together, as one blower maker tells it. Yokes differ: measure them where the last 20 mm count.
 *
 * @param category category of the hitch [0–4]
 * @returns the reach of both yokes, null where the source prints none [mm]
 * @source manual-snow-blower
 */
export function endToCrossCentres(category: Category): Figure | null {
  return endsToCrosses[category] ?? null;
}
