import type { Unit } from './known.ts';

/** A figure as written, before its unit: `text / denominator`, where `text` is a plain decimal such as `26.875`. */
export interface Figure {
  readonly text: string;
  readonly denominator: number;
  /** How this reading of the figure is shown to a person, e.g. `26 7/8`. */
  readonly label: string;
}

/** The figure's value times 10^tens; the shift is made in the text, so 68.3 cm, 683 mm and 0.683 m agree to the last bit. */
export function figureValue(figure: Figure, tens = 0): number {
  return Number(`${figure.text}e${tens}`) / figure.denominator;
}

/** The figure taken in a unit [canonical unit of the unit's dimension]. */
export function figureIn(figure: Figure, unit: Unit): number {
  return figureValue(figure, unit.tens) * unit.count * unit.factor;
}

/** A figure from decimal text, which may have a bare point at either end. */
export function decimalFigure(text: string): Figure {
  const plain = text.replace(/^\./, '0.').replace(/\.$/, '');
  return { text: plain, denominator: 1, label: plain };
}

/** whole + numerator / denominator as one division of whole numbers, which rounds once. */
export function fractionFigure(whole: number, numerator: number, denominator: number): Figure {
  const part = `${numerator}/${denominator}`;
  return {
    text: String(whole * denominator + numerator),
    denominator,
    label: whole === 0 ? part : `${whole} ${part}`,
  };
}

/** Feet and an inch figure as one figure in inches. */
export function feetAndInches(feet: number, inches: Figure): Figure {
  const [units = '0', decimals] = inches.text.split('.');
  const shifted = String(Number(units) + feet * 12 * inches.denominator);
  return {
    text: decimals === undefined ? shifted : `${shifted}.${decimals}`,
    denominator: inches.denominator,
    label: `${feet} ft ${inches.label}`,
  };
}
