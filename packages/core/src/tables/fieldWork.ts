import { kilometresPerMile, kilowattsPerHorsepower, mmPerInch } from '../units/index.ts';
import { memory, type Cite } from './citations.ts';
import type { Figure, FigureExtra } from './figure.ts';
import { capacityPage, cutterForum, cutterPage, d497, powerRules } from './powerCitations.ts';

/** Kinds of work that a typical speed and field efficiency are known for. */
export const fieldWorks = [
  'fertiliserSpreader',
  'manureSpreader',
  'plough',
  'subsoiler',
  'chisel',
  'rotaryTiller',
  'rotaryMower',
  'discHarrow',
  'drill',
] as const;

/** One kind of work by its name. */
export type FieldWork = (typeof fieldWorks)[number];

/** How fast a kind of work usually goes, and which share of the time and width does the work. */
export interface FieldPace {
  /** [km/h] */
  readonly speed: Figure;
  /** share of width times speed that comes out as worked ground [0–1] */
  readonly efficiency: Figure;
}

const share = (source: Cite, low: number, high = low): Figure =>
  source(low / 100, low === high ? `${low}` : `${low}–${high}`, '%', low === high ? {} : { high: high / 100 });
const miles = (low: number, high = low): Figure =>
  capacityPage(
    low * kilometresPerMile,
    low === high ? `${low}` : `${low}–${high}`,
    'mph',
    low === high ? {} : { high: high * kilometresPerMile },
  );
const recalled = (speed: number, efficiency: number): FieldPace => ({
  speed: d497(speed, String(speed), 'km/h'),
  efficiency: share(d497, efficiency),
});
const tillage = (speed: number): FieldPace => ({ speed: miles(speed), efficiency: share(capacityPage, 83, 85) });

const paces: Readonly<Record<FieldWork, FieldPace>> = {
  fertiliserSpreader: { speed: miles(6), efficiency: share(capacityPage, 68, 70) },
  manureSpreader: { speed: miles(5, 6), efficiency: share(capacityPage, 60, 63) },
  plough: tillage(5),
  subsoiler: tillage(5),
  chisel: tillage(5.5),
  rotaryTiller: recalled(5, 85),
  rotaryMower: recalled(11, 80),
  discHarrow: recalled(10, 80),
  drill: recalled(8, 70),
};

/**
 * How fast a kind of work usually goes and how much of it is work.
 *
 * @param work which work [one of fieldWorks]
 * @returns typical speed and field efficiency [km/h, share]
 * @source extension-field-capacity; tiller, mower, harrow and drill from memory
 */
export function fieldPace(work: FieldWork): FieldPace {
  return paces[work];
}

/** Driven machines whose power goes by their width. */
export const drivenMachines = [
  'brushCutter',
  'finishMower',
  'rotaryTiller',
  'flailMower',
  'discMower',
  'cutterBarMower',
  'sideRake',
  'rotaryRake',
  'tedder',
] as const;

/** One driven machine by its name. */
export type DrivenMachine = (typeof drivenMachines)[number];

const metresPerFoot = (12 * mmPerInch) / 1000;
const perFoot = (source: Cite, low: number, high: number, extra: FigureExtra = {}): Figure =>
  source((low * kilowattsPerHorsepower) / metresPerFoot, `${low}–${high}`, 'PTO hp/ft', {
    high: (high * kilowattsPerHorsepower) / metresPerFoot,
    ...extra,
  });
const perMetre = (power: number): Figure => d497(power, String(power), 'kW/m');

const demands: Readonly<Record<DrivenMachine, Figure>> = {
  brushCutter: perFoot(cutterForum, 4, 7, { note: '5 is the common rule' }),
  finishMower: perFoot(cutterForum, 3, 5),
  rotaryTiller: perFoot(memory('low'), 5, 7, { note: 'rises with depth and forward speed' }),
  flailMower: perMetre(10),
  discMower: perMetre(5),
  cutterBarMower: perMetre(1.2),
  sideRake: perMetre(0.4),
  rotaryRake: perMetre(2),
  tedder: perMetre(1.5),
};

/**
 * PTO power that a driven machine wants for each metre of its width: rules of thumb and remembered figures, for want of
 * what the machine's own manual prints.
 *
 * @param machine which machine [one of drivenMachines]
 * @returns the row, a range where one is told [kW/m]
 * @source forum-cutter-power; the tiller and what ASABE D497 lists from memory
 */
export function ptoDemand(machine: DrivenMachine): Figure {
  return demands[machine];
}

/** The power that one page tells for a width of brush cutter. */
export interface CutterPower {
  /** [mm] */
  readonly width: number;
  /** [kW] at the PTO */
  readonly power: Figure;
}

const cutter = (feet: number, low: number, high: number): CutterPower => ({
  width: feet * 12 * mmPerInch,
  power: cutterPage(low * kilowattsPerHorsepower, `${low}–${high}`, 'hp', { high: high * kilowattsPerHorsepower }),
});

/** Brush cutters of 4, 5 and 6 ft. @source parts-page-cutter-power */
export const cutterPowers: readonly CutterPower[] = [cutter(4, 16, 25), cutter(5, 20, 30), cutter(6, 25, 40)];

/** The ground under the tyres, firmest first. */
export const surfaces = ['concrete', 'firm', 'tilled', 'soft'] as const;

/** One kind of ground. */
export type Surface = (typeof surfaces)[number];

/** How a tractor drives. */
export const driveTypes = ['rearWheel', 'frontAssist', 'fourWheel', 'tracks'] as const;

/** One way to drive. */
export type DriveType = (typeof driveTypes)[number];

const drawbarPercent: Readonly<Record<DriveType, readonly number[]>> = {
  rearWheel: [0.87, 0.72, 0.67, 0.55],
  frontAssist: [0.87, 0.77, 0.73, 0.65],
  fourWheel: [0.88, 0.78, 0.75, 0.7],
  tracks: [0.88, 0.79, 0.8, 0.78],
};

/**
 * Which share of the PTO power is left at the drawbar.
 *
 * @param surface the ground [one of surfaces]
 * @param drive how the tractor drives [one of driveTypes]
 * @returns the row [share]
 * @source extension-power-rules
 */
export function drawbarShare(surface: Surface, drive: DriveType): Figure {
  const value = drawbarPercent[drive][surfaces.indexOf(surface)] ?? NaN;
  return powerRules(value, String(value), 'of PTO power');
}

/** Which share of the flywheel power reaches the PTO [share]. @source extension-power-rules */
export const ptoShare: Figure = powerRules(0.9, '0.9', 'of flywheel power', { note: 'printed as approximate' });
