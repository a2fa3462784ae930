import type { Dimension } from './dimensions.ts';
import {
  barsPerPsi,
  degreesPerRadian,
  kgPerPound,
  kilometresPerMile,
  kilowattsPerHorsepower,
  kilowattsPerMetricHorsepower,
  litresPerGallon,
  mmPerInch,
  newtonMetresPerPoundFoot,
  newtonsPerPoundForce,
  standardGravity,
} from './factors.ts';

/**
 * A unit that can be read. Its size in the canonical unit is `10^tens × count × factor`, kept apart so that powers of ten are shifted in the text and
 * counts (12 in to the foot) are multiplied before the factor: texts that mean the same then give the same number to the last bit.
 */
export interface Unit {
  readonly name: string;
  readonly dimension: Dimension;
  readonly tens: number;
  readonly count: number;
  readonly factor: number;
  /** Spellings in lower case, with any of space, dot, hyphen or middle dot between parts written as `·`. */
  readonly spellings: readonly string[];
  /** Whether only people who write figures the US way use it. */
  readonly customary: boolean;
}

type Size = Partial<Pick<Unit, 'tens' | 'count' | 'factor'>>;

function unit(dimension: Dimension, name: string, size: Size, spellings: string): Unit {
  return { name, dimension, tens: 0, count: 1, factor: 1, ...size, customary: false, spellings: spellings.split(' ') };
}

const poundFoot = newtonMetresPerPoundFoot;

const metricUnits: readonly Unit[] = [
  unit('length', 'mm', {}, 'mm millimetre millimetres millimeter millimeters'),
  unit('length', 'cm', { tens: 1 }, 'cm centimetre centimetres centimeter centimeters'),
  unit('length', 'm', { tens: 3 }, 'm metre metres meter meters'),
  unit('mass', 'kg', {}, 'kg kgs kilo kilos kilogram kilograms'),
  unit('mass', 'g', { tens: -3 }, 'g gram grams'),
  unit('mass', 't', { tens: 3 }, 't tonne tonnes metric·ton metric·tons'),
  unit('force', 'N', {}, 'n newton newtons'),
  unit('force', 'kN', { tens: 3 }, 'kn kilonewton kilonewtons'),
  unit('force', 'kgf', { factor: standardGravity }, 'kgf kp'),
  unit('power', 'kW', {}, 'kw kilowatt kilowatts'),
  unit('power', 'W', { tens: -3 }, 'w watt watts'),
  unit('power', 'PS', { factor: kilowattsPerMetricHorsepower }, 'ps cv ch metric·hp hp·metric hp·(metric) hp(m)'),
  unit('torque', 'N·m', {}, 'n·m nm newton·metre newton·metres newton·meter newton·meters'),
  unit('torque', 'kN·m', { tens: 3 }, 'kn·m knm'),
  unit('speed', 'km/h', {}, 'km/h kph kmh km/hr'),
  unit('speed', 'm/s', { factor: 3.6 }, 'm/s'),
  unit('rotation', 'rpm', {}, 'rpm rev/min r/min 1/min min·1 min⁻¹'),
  unit('flow', 'L/min', {}, 'l/min lpm litre/min litres/min liter/min liters/min'),
  unit('pressure', 'bar', {}, 'bar bars'),
  unit('pressure', 'Pa', { tens: -5 }, 'pa'),
  unit('pressure', 'kPa', { tens: -2 }, 'kpa'),
  unit('pressure', 'MPa', { tens: 1 }, 'mpa'),
  unit('angle', 'deg', {}, '° º deg degs degree degrees'),
  unit('angle', 'rad', { factor: degreesPerRadian }, 'rad rads radian radians'),
];

const usUnits: readonly Unit[] = [
  unit('length', 'in', { factor: mmPerInch }, '" in inch inches'),
  unit('length', 'ft', { count: 12, factor: mmPerInch }, "' ft foot feet"),
  unit('mass', 'lb', { factor: kgPerPound }, 'lb lbs lbm pound pounds'),
  unit('mass', 'oz', { factor: kgPerPound / 16 }, 'oz ounce ounces'),
  unit('force', 'lbf', { factor: newtonsPerPoundForce }, 'lbf'),
  unit('power', 'hp', { factor: kilowattsPerHorsepower }, 'hp bhp horsepower'),
  unit('torque', 'lb·ft', { factor: poundFoot }, 'lb·ft lbs·ft lbf·ft ft·lb ft·lbs ft·lbf foot·pounds pound·feet'),
  unit('torque', 'lb·in', { factor: poundFoot / 12 }, 'lb·in lbs·in lbf·in in·lb in·lbs in·lbf'),
  unit('speed', 'mph', { factor: kilometresPerMile }, 'mph mi/h'),
  unit('flow', 'gpm', { factor: litresPerGallon }, 'gpm us·gpm gal/min us·gal/min'),
  unit('pressure', 'psi', { factor: barsPerPsi }, 'psi'),
];

export const knownUnits: readonly Unit[] = [...metricUnits, ...usUnits.map((known) => ({ ...known, customary: true }))];
