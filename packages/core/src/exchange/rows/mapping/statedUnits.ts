import type { Measured, WrittenUnit } from '../headings/headingUnit.ts';
import { unitOf } from '../headings/headingUnit.ts';
import type { Table } from '../table.ts';

/** A unit that a line beside the table states for all figures of a dimension, and where. */
export interface StatedUnit extends WrittenUnit {
  readonly row: number;
  readonly line: string;
}

const statements: readonly (readonly [Measured, RegExp])[] = [
  ['length', /\b(?:dimensions?|measurements?|lengths?|sizes?|distances?)\b[^.;\d]{0,30}?\b(?:in|are)\s+([a-z]+)/i],
  ['mass', /\b(?:weights?|mass(?:es)?)\b[^.;\d]{0,30}?\b(?:in|are)\s+([a-z]+)/i],
  ['power', /\b(?:powers?)\b[^.;\d]{0,30}?\b(?:in|are)\s+([a-z]+)/i],
];

/** Lines below a table that may state a unit. */
const linesBelow = 10;

/** Units that lines above or below the table state, such as `All dimensions in mm`; none where two lines disagree. */
export function statedUnits(table: Table, headingRows: readonly number[], firstRow: number): readonly StatedUnit[] {
  const above = Array.from({ length: headingRows[0] ?? 0 }, (_, i) => i);
  const below = Array.from({ length: linesBelow }, (_, i) => table.length - linesBelow + i).filter(
    (row) => row >= firstRow,
  );
  const found = [...above, ...below].flatMap((row) => statedIn(table[row] ?? [], row));
  return found.filter((one) => found.every((other) => other.dimension !== one.dimension || other.unit === one.unit));
}

/** Units that one row states: a line is a row with one or two texts in it, not a row of figures. */
export function statedIn(cells: readonly string[], row: number): StatedUnit[] {
  const filled = cells.filter((cell) => cell.trim() !== '');
  if (filled.length > 2) return [];
  const line = filled.join(' ').slice(0, 300);
  return statements.flatMap(([dimension, statement]) => {
    const unit = unitOf(statement.exec(line)?.[1] ?? '');
    return unit?.dimension === dimension ? [{ ...unit, row, line }] : [];
  });
}
