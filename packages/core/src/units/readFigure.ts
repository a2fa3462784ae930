import { readDecimal, type FigureStyle } from './decimal.ts';
import type { Figure } from './figure.ts';
import { readFraction } from './fraction.ts';

/** A figure's text and the unit's text after it; either may be empty. */
export interface FigureAndUnit {
  readonly figure: string;
  readonly unit: string;
}

/** Splits tidied text where the unit starts: `26 7/8 in` → `26 7/8` and `in`. */
export function splitFigure(text: string): FigureAndUnit {
  const perMinute = /^([\d., ]+) (1\/min)$/i.exec(text);
  const [, figure = '', unit = ''] = perMinute ?? /^([\d.,/ -]*)(.*)$/s.exec(text) ?? [];
  return { figure: figure.trim(), unit: unit.trim() };
}

/** Every way to read a figure, decimal or fraction; none where it isn't one. */
export function readFigure(text: string, style: FigureStyle): readonly Figure[] {
  return text.includes('/') ? readFraction(text) : readDecimal(text, style);
}
