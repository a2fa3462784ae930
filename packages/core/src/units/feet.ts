import { refuseAmbiguous, type Attempt, type Reading, type Refused } from './attempt.ts';
import type { FigureStyle } from './decimal.ts';
import { feetAndInches, figureValue, type Figure } from './figure.ts';
import { findUnit, unitNamed } from './findUnit.ts';
import { fractionText } from './grid.ts';
import type { Unit } from './known.ts';
import { readFigure, splitFigure } from './readFigure.ts';
import { refuseFigure } from './refusal.ts';

const style: FigureStyle = { comma: 'either', point: 'decimal' };
const feetThenRest = /^([\d.,/ -]*)(?:'|(?:feet|foot|ft)(?![a-z])\.?)[ -]*(.*)$/is;
const advice = 'Write feet and inches with both marks, or the whole length in inches.';

/** Reads `2'`, `2 ft` or `2' 2 7/8"`; undefined where the text has no feet in it. */
export function readFeet(text: string): Attempt | undefined {
  const match = feetThenRest.exec(text);
  if (match === null) return undefined;
  const [, feet = '', rest = ''] = match;
  if (rest === '') return readFeetAlone(feet.trim());
  const inches = splitFigure(rest);
  const unit = inches.unit === '' ? undefined : findUnit(inches.unit);
  if (inches.unit !== '' && unit?.name !== 'in') return undefined;
  return readFeetAndInches(feet.trim(), inches.figure, unit);
}

function readFeetAlone(text: string): Attempt {
  const figures = readFigure(text, style);
  if (figures.length === 0) return refuseFigure(text, 'length');
  const [only] = figures;
  const unclear = only !== undefined && figures.length === 1 ? refusePointForInches(only) : undefined;
  return unclear ?? figures.map((figure) => inFeet(figure));
}

function inFeet(figure: Figure): Reading {
  return { figure, unit: unitNamed('ft'), unitRead: 'ft', written: true };
}

/** 5.4 ft may be a decimal or 5 ft 4 in; digits that can't be inches (0, 12 and up) leave one reading. */
function refusePointForInches(figure: Figure): Refused | undefined {
  const [, feet, digits] = /^([1-9]\d*)\.(\d{1,2})$/.exec(figure.text) ?? [];
  const inches = Number(digits ?? 0);
  if (feet === undefined || inches === 0 || inches >= 12) return undefined;
  return refuseAmbiguous([`${feet} ft ${inches} in`, `${figure.text} ft = ${feetAndInchesText(figure)}`], advice);
}

function feetAndInchesText(feet: Figure): string {
  const sixteenths = Math.round(figureValue(feet) * 12 * 16);
  return `${Math.floor(sixteenths / 192)} ft ${fractionText(sixteenths % 192, 16)} in`;
}

function readFeetAndInches(feetText: string, inchText: string, unit: Unit | undefined): Attempt {
  const feet = /^\d{1,6}$/.test(feetText) ? Number(feetText) : undefined;
  if (feet === undefined) return refuseFigure(feetText, 'length');
  const figures = readFigure(inchText, style);
  const inches = figures.filter((figure) => figureValue(figure) < 12);
  if (inches.length === 0) return figures.length === 0 ? refuseFigure(inchText, 'length') : inchesTooMany;
  return refuseMissingMark(feet, inchText, unit) ?? inches.map((figure) => inFeetAndInches(feet, figure));
}

const inchesTooMany: Refused = { code: 'not-a-quantity', hint: 'The inches after the feet should be fewer than 12.' };

/** 5' 4 may be 5 ft 4 in or 5.4 ft; a fraction or a decimal after the feet can only be inches. */
function refuseMissingMark(feet: number, inchText: string, unit: Unit | undefined): Refused | undefined {
  if (unit !== undefined || !/^\d+$/.test(inchText) || Number(inchText) === 0) return undefined;
  return refuseAmbiguous([`${feet} ft ${Number(inchText)} in`, `${feet}.${inchText} ft`], advice);
}

function inFeetAndInches(feet: number, inches: Figure): Reading {
  return { figure: feetAndInches(feet, inches), unit: unitNamed('in'), unitRead: 'ft in', written: true };
}
