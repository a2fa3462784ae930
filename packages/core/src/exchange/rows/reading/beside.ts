import { readingGrades, type FieldRule, type ReadingGrade } from '../../../records/index.ts';
import { unitOf } from '../headings/headingUnit.ts';
import { pointNamed } from '../headings/points.ts';
import { takeFigure } from '../cells/figure.ts';
import { isMissing } from '../cells/missing.ts';
import { plainText } from '../cells/plainText.ts';
import type { QuantitySaid } from '../cells/quantityCell.ts';
import type { Companion } from '../mapping/target.ts';
import { cellAt, refuse, type RowDesk } from './desk.ts';
import type { Beside } from './leaf.ts';
import type { FieldPlan, Placed } from './plan.ts';

/** What stands beside a figure in other columns. */
export interface BesideRead {
  /** Reference points, where a column says them. */
  readonly from: string | null;
  readonly grade: ReadingGrade | null;
  readonly plusMinus: string | null;
  readonly rest: Omit<Beside, 'from'>;
}

const texts = ['method', 'tool', 'who', 'when', 'source', 'note', 'default'] as const;

/** Reads what stands beside a figure; null where it can’t be read and the figure would mean something else without it. */
export function readBeside(
  plan: FieldPlan,
  rule: FieldRule,
  found: { readonly said: QuantitySaid },
  desk: RowDesk,
): BesideRead | null {
  const from = besideCell('from', plan, desk);
  const point = from === null ? null : pointNamed(from.text, rule);
  if (from !== null && point === null) {
    const expected = `one of ${(rule.from ?? ['none here']).join(', ')}`;
    refuse(desk, from.column, plan.field, {
      code: 'not-a-choice',
      expected,
      got: from.text.slice(0, 60),
      hint: 'Say where it was measured.',
    });
    return null;
  }
  const tolerance = toleranceOf(plan, rule, found.said, desk);
  if (tolerance === undefined) return null;
  const rest = texts.flatMap((role) => {
    const cell = besideCell(role, plan, desk);
    return cell === null ? [] : [[role, cell.text] as const];
  });
  return { from: point, grade: gradeOf(plan, desk), plusMinus: tolerance, rest: Object.fromEntries(rest) };
}

interface BesideCell {
  readonly column: Placed;
  readonly text: string;
}

/** The cell of a field’s own column, or else of the column for the whole row; null where it says nothing. */
function besideCell(role: Companion, { beside }: FieldPlan, desk: RowDesk): BesideCell | null {
  for (const column of [...(beside.get(role) ?? []), ...(desk.plan.beside.get(role) ?? [])]) {
    const { text } = cellAt(desk.cells, column);
    if (!isMissing(plainText(text.slice(0, 400)))) return { column, text };
  }
  return null;
}

/** The unit that the row says for the figures of a field, where it is one of what the field measures. */
export function rowUnit(plan: FieldPlan, desk: RowDesk): string | null {
  const cell = besideCell('unit', plan, desk);
  const unit = cell === null ? null : unitOf(cell.text);
  return plan.spec.form === 'quantity' && unit?.dimension === plan.spec.rule.dimension ? unit.unit : null;
}

function gradeOf(plan: FieldPlan, desk: RowDesk): ReadingGrade | null {
  const cell = besideCell('grade', plan, desk);
  if (cell === null) return null;
  const grade = readingGrades.find((each) => each === cell.text.toLowerCase());
  if (grade === undefined) {
    const expected = `one of ${readingGrades.join(', ')}`;
    refuse(desk, cell.column, plan.field, {
      code: 'not-a-choice',
      expected,
      got: cell.text.slice(0, 60),
      hint: 'Choose one of those.',
    });
  }
  return grade ?? null;
}

/** A tolerance from its own column; without a unit it is in that of its figure. Undefined where it can’t be read. */
function toleranceOf(plan: FieldPlan, rule: FieldRule, said: QuantitySaid, desk: RowDesk): string | null | undefined {
  const cell = besideCell('plusMinus', plan, desk);
  const figure = said.amounts[0]?.figures;
  if (cell === null || figure === undefined) return null;
  const text = plainText(cell.text.slice(0, 60)).replace(/^(?:±|\+ ?\/? ?-) ?/, '');
  const taken = takeFigure(text, rule.dimension);
  const isOne = taken !== null && taken.rest.trim() === '' && figure.length === 1 && said.amounts.length === 1;
  if (!isOne) {
    const hint = 'Write one figure, as in 1/16 in or 2 mm.';
    refuse(desk, cell.column, plan.field, {
      code: 'not-a-quantity',
      expected: 'a tolerance',
      got: cell.text.slice(0, 60),
      hint,
    });
    return undefined;
  }
  const { digits, unit } = taken.figure;
  if (unit === '') return digits;
  return `${digits} ${unit === null ? (figure[0]?.unit ?? '') : unit}`;
}
