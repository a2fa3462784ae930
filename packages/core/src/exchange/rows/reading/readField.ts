import { setByNature, type FieldRule, type ReadingGrade } from '../../../records/index.ts';
import type { UnitSaid } from '../cells/bareUnit.ts';
import type { Plain } from '../cells/plainCell.ts';
import { worthIn, type QuantitySaid } from '../cells/quantityCell.ts';
import { pointText } from '../headings/points.ts';
import { readBeside, rowUnit } from './beside.ts';
import { cellAt, refuse, tell, tellFormula, type RowDesk } from './desk.ts';
import { endsAsOne, leafOf, needsPoints, type Beside } from './leaf.ts';
import type { FieldPlan, Placed } from './plan.ts';
import type { ProposedReading } from './record.ts';

/** Reads a plain field from its columns: the first that says something holds, and the others have to say the same. */
export function readPlain(plan: FieldPlan, desk: RowDesk): Plain | undefined {
  const { field } = plan;
  let held: Plain | undefined;
  for (const column of plan.whole) {
    const cell = cellAt(desk.cells, column);
    const reading = desk.plan.plain(cell.text, cell.isDate, plan, column.unit);
    if (reading.kind === 'missing') desk.missing += 1;
    if (reading.kind === 'refused') refuse(desk, column, field, reading.error);
    if (reading.kind !== 'read') continue;
    tellFormula(desk, column, field, cell);
    tell(desk, column, field, reading.told, cell.text);
    if (held === undefined) held = reading.value;
    else if (JSON.stringify(held) !== JSON.stringify(reading.value)) {
      const hint = `Another column of this row says ${JSON.stringify(held)}: keep one of them.`;
      refuse(desk, column, field, {
        code: 'contradiction',
        expected: 'the same in both columns',
        got: cell.text.slice(0, 60),
        hint,
      });
    }
  }
  return held;
}

interface Said {
  readonly column: Placed;
  readonly said: QuantitySaid;
}

/** Reads a measured field from its columns: one cell, or one for each end, with what stands beside it. */
export function readQuantityField(plan: FieldPlan, desk: RowDesk): ProposedReading | undefined {
  if (plan.spec.form !== 'quantity') return undefined;
  const { rule } = plan.spec;
  const cells = plan.whole.flatMap((column) => readCell(column, plan, desk));
  const found = cells.length > 0 ? agreed(cells, plan, rule, desk) : fromEnds(plan, desk);
  if (found === null) return undefined;
  const isSettable = setByNature.includes(`${desk.kind}.${plan.field}`);
  if (!isWhole(found, plan, isSettable, desk)) return undefined;
  return readingOf(found, plan, rule, isSettable, desk);
}

function readCell(column: Placed, plan: FieldPlan, desk: RowDesk): Said[] {
  const cell = cellAt(desk.cells, column);
  const reading = desk.plan.quantity(cell.text, cell.isDate, plan, unitSaid(column, plan, desk));
  if (reading.kind === 'missing') {
    desk.missing += 1;
    return [];
  }
  if (reading.kind === 'refused') {
    refuse(desk, column, plan.field, reading.error);
    return [];
  }
  tellFormula(desk, column, plan.field, cell);
  tell(desk, column, plan.field, reading.told, cell.text);
  return [{ column, said: reading.said }];
}

/** A unit that the row says goes before the column’s. */
function unitSaid(column: Placed, plan: FieldPlan, desk: RowDesk): UnitSaid {
  const { system } = desk.plan.mapping;
  const ofRow = rowUnit(plan, desk);
  return ofRow === null
    ? { unit: column.unit, unitFrom: column.unitFrom, system, usual: desk.plan.usual.get(column.letter) ?? null }
    : { unit: ofRow, unitFrom: 'row', system, usual: null };
}

/** Several cells for one field have to say the same, as far as their digits go. */
function agreed(cells: readonly Said[], plan: FieldPlan, rule: FieldRule, desk: RowDesk): Said | null {
  const [first, ...others] = cells;
  if (first === undefined) return null;
  for (const other of others) {
    if (isSame(first.said, other.said, rule)) continue;
    const got = `${textOf(first.said)} and ${textOf(other.said)}`;
    refuse(desk, other.column, plan.field, {
      code: 'contradiction',
      expected: 'the same in both columns',
      got,
      hint: 'Keep the one that was measured.',
    });
    return null;
  }
  return first;
}

function isSame(a: QuantitySaid, b: QuantitySaid, rule: FieldRule): boolean {
  const [first, second] = [a.amounts[0], b.amounts[0]];
  if (first === undefined || second === undefined || a.shape !== b.shape) return false;
  if (a.amounts.length !== b.amounts.length || first.figures.length !== second.figures.length) return false;
  return first.figures.every((figure, i) => {
    const other = second.figures[i] ?? figure;
    const slack = (worthIn(figure, rule.dimension) + worthIn(other, rule.dimension)) / 2 + 1e-9;
    return Math.abs(figure.value - other.value) <= slack;
  });
}

function textOf({ amounts }: QuantitySaid): string {
  return amounts.map(({ figures }) => figures.map(({ text }) => text).join(' to ')).join('; ');
}

const bothEnds = 'the smallest and the largest figure';

function fromEnds(plan: FieldPlan, desk: RowDesk): Said | null {
  const [low, high] = [plan.low, plan.high].map(
    (columns) => columns.flatMap((column) => readCell(column, plan, desk))[0],
  );
  if (low !== undefined && high !== undefined) return asOne(low, high, plan, desk);
  const only = low ?? high;
  if (only === undefined) return null;
  const [expected, got, hint] = [bothEnds, `only ${textOf(only.said)}`, 'Fill in both ends, or neither.'];
  refuse(desk, only.column, plan.field, { code: 'missing', expected, got, hint });
  return null;
}

function asOne(low: Said, high: Said, plan: FieldPlan, desk: RowDesk): Said | null {
  const { column } = low;
  const both = endsAsOne(low.said, high.said);
  const [smaller, larger] = both?.amounts[0]?.figures ?? [];
  if (both === null || smaller === undefined || larger === undefined) {
    const got = `${textOf(low.said)} and ${textOf(high.said)}`;
    refuse(desk, column, plan.field, {
      code: 'ambiguous',
      expected: bothEnds,
      got,
      hint: 'Write each end as one figure.',
    });
    return null;
  }
  if (smaller.value <= larger.value) return { column, said: both };
  refuse(desk, column, plan.field, {
    code: 'wrong-order',
    expected: bothEnds,
    got: textOf(both),
    hint: 'Swap the two ends.',
  });
  return null;
}

/** What somebody sets is given by its ends, and where a figure was taken has to be said where that changes it. */
function isWhole({ column, said }: Said, plan: FieldPlan, isSettable: boolean, desk: RowDesk): boolean {
  const isOneFigure = said.shape === 'amount' && said.amounts[0]?.figures.length === 1;
  if (!isSettable || !isOneFigure) return true;
  const hint = 'Write the smallest and the largest that it can be set to, as in 640-760 mm, or give each a column.';
  refuse(desk, column, plan.field, {
    code: 'contradiction',
    expected: 'the range it can be set to',
    got: textOf(said),
    hint,
  });
  return false;
}

function readingOf(
  found: Said,
  plan: FieldPlan,
  rule: FieldRule,
  isSettable: boolean,
  desk: RowDesk,
): ProposedReading | undefined {
  const beside = readBeside(plan, rule, found, desk);
  if (beside === null) return undefined;
  const from = beside.from ?? pointsOf(found.column, rule);
  if (from === null) {
    const points = (rule.from ?? []).map(pointText).join(', ');
    const hint = `Say where it was measured: ${points}. Choose it for the column.`;
    refuse(desk, found.column, plan.field, {
      code: 'ambiguous',
      expected: 'where it was measured',
      got: textOf(found.said),
      hint,
    });
    return undefined;
  }
  tellRange(found, plan, isSettable, desk);
  const note = [found.said.note, beside.rest.note].filter((each) => each != null).join('; ');
  const { grade, rest, plusMinus } = beside;
  const said = plusMinus === null ? found.said : withTolerance(found.said, plusMinus);
  const leaf = leafOf(
    said,
    { ...(from === '' ? {} : { from }), ...rest, ...(note === '' ? {} : { note }) },
    isSettable,
  );
  return { leaf, grade: grade ?? gradeOf(found.said, rest) };
}

/** Points that the heading says; the field’s own are left unsaid, as its name means them. */
function pointsOf({ from }: Placed, rule: FieldRule): string | null {
  if (rule.from === undefined || from === rule.from[0]) return '';
  return from ?? (needsPoints(rule) ? null : '');
}

/** Somebody who is named, a tool or a method says that it was measured. */
function gradeOf(said: QuantitySaid, { method, tool, who }: Beside): ReadingGrade {
  if (said.approximate) return 'guessed';
  return [method, tool, who].some((each) => each !== undefined) ? 'measured' : 'listed';
}

function withTolerance(said: QuantitySaid, plusMinus: string): QuantitySaid {
  const [first, ...rest] = said.amounts;
  return first === undefined ? said : { ...said, amounts: [{ ...first, plusMinus }, ...rest] };
}

function tellRange({ column, said }: Said, plan: FieldPlan, isSettable: boolean, desk: RowDesk): void {
  const [low, high] = said.amounts[0]?.figures ?? [];
  if (said.shape !== 'amount' || low === undefined || high === undefined) return;
  const range = `${low.text} to ${high.text}`;
  const sentence = isSettable
    ? `${range} was taken for the range that it can be set to.`
    : `${range} was taken for one figure that is not known more exactly; where somebody can set it, write “adjustable ${range}”.`;
  const asBetween = /^between /i.test(cellAt(desk.cells, column).text);
  if (!asBetween) tell(desk, column, plan.field, [{ about: 'range', taken: range, sentence }], range);
}
