import { excerpt, type InputError } from '../../../records/index.ts';
import type { CellError, Told } from '../cells/told.ts';
import type { RowKind } from '../kinds.ts';
import { cellOf, type Cell } from '../marks.ts';
import type { Placed, Plan } from './plan.ts';
import type { RowError, RowTold } from './rowTypes.ts';

/** One row while it is read. */
export interface RowDesk {
  readonly plan: Plan;
  readonly row: number;
  readonly cells: readonly string[];
  readonly kind: RowKind;
  readonly errors: RowError[];
  readonly told: RowTold[];
  /** Counts cells that say nothing. */
  missing: number;
}

/** The cell of a column in a row, taken apart; empty where the row is shorter. */
export function cellAt(cells: readonly string[], column: Placed | null | undefined): Cell {
  return cellOf(column == null ? '' : (cells[column.index] ?? ''));
}

/** Adds what is wrong with a cell. */
export function refuse(desk: RowDesk, column: Placed | null, field: string, error: CellError): void {
  const path = field === '' ? desk.kind : `${desk.kind}.${field}`;
  desk.errors.push({ ...error, path, row: desk.row, column: column?.letter ?? null });
}

/** Adds what was taken for something, and that a cell was a formula. */
export function tell(
  desk: RowDesk,
  column: Placed | null,
  field: string | null,
  told: readonly Told[],
  got: string,
): void {
  for (const each of told)
    desk.told.push({ ...each, row: desk.row, column: column?.letter ?? null, field, got: excerpt(got) });
}

/** A formula is never worked out here: what it came to when the sheet was saved is taken, and told. */
export function tellFormula(desk: RowDesk, column: Placed, field: string, cell: Cell): void {
  if (!cell.isFormula) return;
  const sentence = `“${excerpt(cell.text)}” was a formula: what it came to when the sheet was saved is taken.`;
  tell(desk, column, field, [{ about: 'formula', taken: cell.text, sentence }], cell.text);
}

/** An error of the record’s own check, put where its column is. */
export function asRowError(error: InputError, desk: RowDesk, field: string): RowError {
  const plan = desk.plan.ofKind(desk.kind).fields.find((each) => each.field === field);
  const column = [...(plan?.whole ?? []), ...(plan?.low ?? []), ...(plan?.high ?? [])][0] ?? null;
  return {
    ...error,
    path: field === '' ? desk.kind : `${desk.kind}.${field}`,
    row: desk.row,
    column: column?.letter ?? null,
  };
}
