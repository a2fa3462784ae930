import type { Category } from './category.ts';
import { highestOf, lowestOf, type Figure } from './figure.ts';
import { implementFigures } from './implementSide.ts';
import { tractorFigures } from './tractorSide.ts';

/** Dimensions a category stamp may stand in for while nobody has measured them. */
export const classFields = [
  'implement.lowerPinDiameter',
  'implement.shoulderSpan',
  'implement.shoulderToHole',
  'implement.standOut',
  'implement.mastHeight',
  'implement.mastSetback',
  'implement.upperPinDiameter',
  'implement.clevisGap',
  'implement.clevisOuterWidth',
  'tractor.lowerBallBore',
  'tractor.lowerBallWidth',
  'tractor.upperBallBore',
  'tractor.upperBallWidth',
  'tractor.ballSpanNarrowest',
  'tractor.ballSpanWidest',
  'tractor.lowerLinkPivotSpan',
] as const;

/** One dimension that a class range can stand in for. */
export type ClassField = (typeof classFields)[number];

/** A wide range [mm] within which a dimension of a category is expected. Uncertain, never adjustable. */
export interface ClassRange {
  readonly low: number;
  readonly high: number;
  /** the rows it was widened from */
  readonly basis: readonly Figure[];
  /** how it was widened and that this is our own rule */
  readonly note: string;
}

interface Widening {
  readonly rows: (category: Category) => readonly Figure[];
  /** [mm] added beyond the lowest and the highest row; negative would narrow */
  readonly below: number;
  readonly above: number;
  readonly reason: string;
}

const worn = 'worn pins measure less, paint and rust add a little';
const bore = 'bores wear larger';
const ball = 'balls wear thinner, or are changed for others';

/** The one place where class ranges are widened. Every amount is our own or common practice, none has a source. */
const widenings: Readonly<Record<ClassField, Widening>> = {
  'implement.lowerPinDiameter': onImplement('lowerPinDiameter', 0.7, 0.3, worn),
  'implement.upperPinDiameter': onImplement('upperPinDiameter', 0.7, 0.3, worn),
  'implement.shoulderSpan': onImplement('shoulderSpan', 30, 55, 'owners find pins set 1–2 in too wide, some too close'),
  'implement.shoulderToHole': onImplement('shoulderToHole', 14, 26, 'pins too short for a retaining pin do occur'),
  'implement.standOut': onImplement('shoulderToHole', 2, 62, 'distance to the hole, the hole, and the end beyond it'),
  'implement.mastHeight': onImplement('mastHeight', 30, 70, 'both families of mast, and makers who follow neither'),
  'implement.mastSetback': onImplement('mastSetback', 40, 45, 'some masts lean forward of the lower pins'),
  'implement.clevisGap': onImplement('clevisGap', 4, 20, 'clevises too narrow or too wide for the ball do occur'),
  'implement.clevisOuterWidth': onImplement('clevisOuterWidth', 25, 15, 'the row is an upper limit; ears get bent out'),
  'tractor.lowerBallBore': onTractor('lowerBallBore', 0.1, 0.6, bore),
  'tractor.upperBallBore': onTractor('upperBallBore', 0.1, 0.6, bore),
  'tractor.lowerBallWidth': onTractor('lowerBallWidth', 1.5, 1, ball),
  'tractor.upperBallWidth': onTractor('upperBallWidth', 8, 1, `the row is an upper limit; ${ball}`),
  'tractor.ballSpanNarrowest': onTractor('ballSpan', 220, 0, 'how far links close depends on stabilisers and tyres'),
  'tractor.ballSpanWidest': onTractor('ballSpan', 60, 100, 'limited hitches open less, others well past nominal'),
  'tractor.lowerLinkPivotSpan': onTractor('linkFrontSpacing', 40, 40, 'pivot brackets vary by maker'),
};

function onImplement(
  field: Parameters<typeof implementFigures>[1],
  below: number,
  above: number,
  reason: string,
): Widening {
  return { rows: (category) => implementFigures(category, field), below, above, reason };
}

function onTractor(
  field: Parameters<typeof tractorFigures>[1],
  below: number,
  above: number,
  reason: string,
): Widening {
  return { rows: (category) => tractorFigures(category, field), below, above, reason };
}

/**
 * The range [mm] that stands in for an unknown dimension when only the category is known: from the lowest row less a
 * margin to the highest row plus one, rows rounded to a size name left out. Wide on purpose: a category stamp is a
 * label, not a fit. Worth measuring wherever the answer depends on it.
 *
 * @param category size class [name]
 * @param field the dimension [name]
 * @returns null where no row, read or remembered, gives the dimension: then it must be asked [range, mm]
 * @example classRange('1', 'implement.mastHeight'); // low 427.2, high 530
 * @source own widening of the rows in `basis`; common practice, no source
 */
export function classRange(category: Category, field: ClassField): ClassRange | null {
  const { rows, below, above, reason } = widenings[field];
  const basis = rows(category).filter((figure) => !figure.rounded);
  if (basis.length === 0) return null;
  return {
    low: Math.min(...basis.map(lowestOf)) - below,
    high: Math.max(...basis.map(highestOf)) + above,
    basis,
    note: `own widening of −${below}/+${above} mm, common practice, no source: ${reason}`,
  };
}
