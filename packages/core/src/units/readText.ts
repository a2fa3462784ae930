import { refuseAmbiguous, type Attempt, type ReadOptions, type Refused } from './attempt.ts';
import type { FigureStyle } from './decimal.ts';
import { unitNameIn } from './dimensions.ts';
import { readFeet } from './feet.ts';
import { figureValue, type Figure } from './figure.ts';
import { findUnit, unitNamed } from './findUnit.ts';
import type { Unit } from './known.ts';
import { readFigure, splitFigure } from './readFigure.ts';
import { refuseFigure, refuseUnit } from './refusal.ts';

/** Reads tidied text without a sign into its possible readings. */
export function readText(text: string, options: ReadOptions): Attempt {
  const feet = options.dimension === 'length' ? readFeet(text) : undefined;
  return feet ?? readFigureAndUnit(text, options);
}

function readFigureAndUnit(text: string, options: ReadOptions): Attempt {
  const { figure, unit: written } = splitFigure(text);
  if (written === '') return readBareFigure(figure, options);
  const unit = findUnit(written);
  if (unit?.dimension !== options.dimension) return refuseOddUnit(figure, written, unit, options);
  const figures = readFigure(figure, styleOf(unit, options));
  if (figures.length === 0) return refuseFigure(figure, options.dimension);
  return figures.map((each) => ({ figure: each, unit, unitRead: unit.name, written: true }));
}

function refuseOddUnit(figure: string, written: string, unit: Unit | undefined, { dimension }: ReadOptions): Refused {
  const isFigure = readFigure(figure, { comma: 'either', point: 'either' }).length > 0;
  const isWord = unit !== undefined || !/\d/.test(written);
  return isFigure && isWord ? refuseUnit(written.slice(0, 30), unit, dimension) : refuseFigure(figure, dimension);
}

/**
 * In pounds, horsepower and the like a comma groups and a point divides. Inches are written all over the world, so there a comma may be either. A metric
 * point with three digits may group.
 */
function styleOf(unit: Unit, options: ReadOptions): FigureStyle {
  if (unit.customary) return { comma: unit.dimension === 'length' ? 'either' : 'groups', point: 'decimal' };
  return { comma: 'either', point: options.assume === 'us' ? 'decimal' : 'either' };
}

/** Without a unit and without an assumed system, a point is a decimal point as in a plain number. */
function readBareFigure(text: string, options: ReadOptions): Attempt {
  const figures = readFigure(text, { comma: 'either', point: options.assume === 'metric' ? 'either' : 'decimal' });
  const [only] = figures;
  if (only === undefined) return refuseFigure(text, options.dimension);
  const unit = unitNamed(unitNameIn(options.assume ?? 'metric', options.dimension));
  if (unit.name === 'mm' && text.includes('/')) return refuseBareFraction(only);
  return figures.map((figure) => ({ figure, unit, unitRead: unit.name, written: false }));
}

/** Millimetres aren't written as fractions: such a figure is most likely in inches. */
function refuseBareFraction(figure: Figure): Refused {
  const decimal = Number(figureValue(figure).toPrecision(7));
  return refuseAmbiguous([`${figure.label} in`, `${decimal} mm`], 'Write the unit.');
}
