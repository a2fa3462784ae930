/** What kind of thing a figure measures. */
export type Dimension =
  'length' | 'mass' | 'force' | 'power' | 'torque' | 'speed' | 'rotation' | 'flow' | 'pressure' | 'angle';

/** The two ways in which people type and read figures. */
export type UnitSystem = 'us' | 'metric';

/** A number that carries a tag: a plain number may be put in, but a number with another tag may not. */
type Tagged<Tag extends string> = number & { readonly __dimension?: Tag };

/** A number in the canonical unit of its dimension (`canonicalUnit`). */
export type Quantity<D extends Dimension> = Tagged<D>;

/** [mm] */
export type Mm = Quantity<'length'>;
/** [kg] */
export type Kg = Quantity<'mass'>;
/** [N] */
export type Newton = Quantity<'force'>;
/** [kW] */
export type Kilowatt = Quantity<'power'>;
/** [N·m] */
export type NewtonMetre = Quantity<'torque'>;
/** [km/h] */
export type KilometrePerHour = Quantity<'speed'>;
/** [rpm] */
export type Rpm = Quantity<'rotation'>;
/** [L/min] */
export type LitrePerMinute = Quantity<'flow'>;
/** [bar] */
export type Bar = Quantity<'pressure'>;
/** [deg] */
export type Degree = Quantity<'angle'>;
/** An angle inside the engine [rad]; never shown to people. */
export type Rad = Tagged<'angle in radians'>;

/** The unit in which each dimension is stored. */
export const canonicalUnit: Readonly<Record<Dimension, string>> = {
  length: 'mm',
  mass: 'kg',
  force: 'N',
  power: 'kW',
  torque: 'N·m',
  speed: 'km/h',
  rotation: 'rpm',
  flow: 'L/min',
  pressure: 'bar',
  angle: 'deg',
};

/** The unit that a US reader expects for each dimension. */
export const customaryUnit: Readonly<Record<Dimension, string>> = {
  length: 'in',
  mass: 'lb',
  force: 'lbf',
  power: 'hp',
  torque: 'lb·ft',
  speed: 'mph',
  rotation: 'rpm',
  flow: 'gpm',
  pressure: 'psi',
  angle: 'deg',
};

/**
 * Name of the unit of a dimension in one system, e.g. `in` or `mm` for a length.
 *
 * @param system unit system to write in [us | metric]
 * @param dimension what is measured [name]
 * @returns the unit’s name [text]
 */
export function unitNameIn(system: UnitSystem, dimension: Dimension): string {
  return system === 'us' ? customaryUnit[dimension] : canonicalUnit[dimension];
}
