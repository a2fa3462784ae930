import { codeOfPractice, ptoEncyclopedia, ptoOverspeed, ptoShield } from './citations.ts';
import type { Figure } from './figure.ts';

/** The four PTO types. @source iso-500-1 */
export const ptoTypeNumbers = [1, 2, 3, 4] as const;

/** One PTO type by its number. */
export type PtoTypeNumber = (typeof ptoTypeNumbers)[number];

/** One PTO type: its shaft end and the speed it stands for. */
export interface PtoType {
  readonly type: PtoTypeNumber;
  /** nominal diameter over the splines [mm] */
  readonly diameter: Figure;
  /** [count] */
  readonly splines: Figure;
  readonly splineForm: 'straight' | 'involute';
  /** rated speed [rpm] */
  readonly speed: Figure;
  /** how far the master shield must reach over the shaft end and any adaptor on it [mm] */
  readonly masterShieldOverlap: Figure;
}

const overlap = { plus: 5, minus: 5 } as const;
const misprint = { note: 'the encyclopaedia page prints 57.5 cm' } as const;

const types: Readonly<Record<PtoTypeNumber, PtoType>> = {
  1: {
    type: 1,
    diameter: ptoShield(35, '35', 'mm', { note: '1-3/8 in' }),
    splines: ptoShield(6, '6', 'splines'),
    splineForm: 'straight',
    speed: ptoEncyclopedia(540, '540', 'rpm'),
    masterShieldOverlap: ptoShield(85, '85 ±5', 'mm', overlap),
  },
  2: {
    type: 2,
    diameter: ptoShield(35, '35', 'mm', { note: '1-3/8 in' }),
    splines: ptoShield(21, '21', 'splines'),
    splineForm: 'involute',
    speed: ptoEncyclopedia(1000, '1000', 'rpm'),
    masterShieldOverlap: ptoShield(85, '85 ±5', 'mm', overlap),
  },
  3: {
    type: 3,
    diameter: ptoShield(45, '45', 'mm', { note: '1-3/4 in' }),
    splines: ptoShield(20, '20', 'splines'),
    splineForm: 'involute',
    speed: ptoEncyclopedia(1000, '1000', 'rpm'),
    masterShieldOverlap: ptoShield(100, '100 ±5', 'mm', overlap),
  },
  4: {
    type: 4,
    diameter: ptoShield(57.5, '57.5', 'mm', misprint),
    splines: ptoShield(22, '22', 'splines'),
    splineForm: 'involute',
    speed: ptoEncyclopedia(1300, '1300', 'rpm'),
    masterShieldOverlap: ptoShield(100, '100 ±5', 'mm', overlap),
  },
};

/**
 * Shaft end, speed and master shield of one PTO type. [mm], [rpm]. Seen from behind, all turn clockwise.
 * One spline count belongs to one type here, but one diameter does not: 35 mm is type 1 or 2.
 *
 * @param type type number [1–4]
 * @returns the type [mm, rpm]
 * @example ptoType(1).splines.value; // 6
 * @source manual-pto-shield, encyclopedia-pto, iso-500-1
 */
export function ptoType(type: PtoTypeNumber): PtoType {
  return types[type];
}

const bands: Readonly<Record<540 | 1000, readonly Figure[]>> = {
  540: [codeOfPractice(540, '540 ±10', 'rpm', { plus: 10, minus: 10 })],
  1000: [codeOfPractice(1000, '1000 ±25', 'rpm', { plus: 25, minus: 25 })],
};

const caps: Readonly<Record<540 | 1000, readonly Figure[]>> = {
  540: [codeOfPractice(630, '630', 'rpm', { bound: 'most' }), ptoOverspeed(630, '630', 'rpm', { bound: 'most' })],
  1000: [
    codeOfPractice(1150, '1150', 'rpm', { bound: 'most', disputed: true }),
    ptoOverspeed(1170, '1170', 'rpm', { bound: 'most', disputed: true }),
  ],
};

/**
 * Speed under load, with its band. [rpm] @source tractor-code-of-practice
 *
 * @param speed nominal speed [rpm]
 * @returns rows [rpm]
 */
export function ptoSpeedBand(speed: 540 | 1000): readonly Figure[] {
  return bands[speed];
}

/**
 * Speed that must not be exceeded by accident, both sources where they differ. [rpm] @source tractor-code-of-practice, manual-pto-overspeed
 *
 * @param speed nominal speed [rpm]
 * @returns rows [rpm]
 */
export function ptoSpeedCap(speed: 540 | 1000): readonly Figure[] {
  return caps[speed];
}
