/*
 * Conversion factors, each as the printed unit's size in the canonical unit. The first five are exact by definition; the rest follow from them.
 * Source: NIST SP 811 (2008), "Guide for the Use of the International System of Units", appendix B, which prints the derived ones to
 * seven figures; they are carried here to full double precision.
 */

/** Inch [mm], exact. */
export const mmPerInch = 25.4;
/** Avoirdupois pound [kg], exact. */
export const kgPerPound = 0.45359237;
/** Standard gravity [m/s²], exact; also one kilogram-force [N]. */
export const standardGravity = 9.80665;
/** US gallon per minute [L/min], exact. */
export const litresPerGallon = 3.785411784;
/** Statute mile [km], exact. */
export const kilometresPerMile = 1.609344;
/** Pound-force [N]: pound × standard gravity. */
export const newtonsPerPoundForce = 4.4482216152605;
/** Mechanical horsepower [kW]: 550 ft·lbf/s = 745.6998715822702 W. */
export const kilowattsPerHorsepower = 0.7456998715822702;
/** Metric horsepower [kW]: 75 m·kgf/s = 735.49875 W. */
export const kilowattsPerMetricHorsepower = 0.73549875;
/** Pound-force foot [N·m]: pound-force × 0.3048 m. */
export const newtonMetresPerPoundFoot = 1.3558179483314004;
/** Pound-force per square inch [bar]: 6.894757293168361 kPa. */
export const barsPerPsi = 0.06894757293168361;
/** Radian [deg]. */
export const degreesPerRadian = 180 / Math.PI;
