import type { UnitSystem } from '../../../units/index.ts';
import { guessAmong, type Header } from '../headings/headerRow.ts';
import type { HeadingGuess } from '../headings/guessHeading.ts';
import { splitHeading } from '../headings/headingUnit.ts';
import type { RowKind } from '../kinds.ts';
import type { Table } from '../table.ts';
import { kindsOf } from './asks.ts';
import { columnOf, columnsOf, type ColumnDesk } from './columns.ts';
import { chosen, type Column, type Mapping, type MappingTold } from './mapping.ts';
import { statedUnits } from './statedUnits.ts';
import type { Target } from './target.ts';

/** What a person chose for a mapping: what the rows are, whose units bare figures are in, or something of one column. */
export interface MappingChange {
  readonly kind?: RowKind;
  readonly system?: UnitSystem | null;
  readonly column?: string;
  /** What the column holds. */
  readonly target?: Target;
  /** The unit or currency of its figures without one; null looks at each figure by itself. */
  readonly unit?: string | null;
  /** The reference points of its readings. */
  readonly from?: string | null;
}

/**
 * The mapping with what a person chose. What hangs on it is looked at again: another kind reads all headings anew, another field looks for the
 * unit and the points of its column, another system settles the units that were asked about.
 *
 * @param table the sheet that the mapping is of [rows of cells]
 * @param mapping the mapping so far [record]
 * @param change what was chosen [record]
 * @returns the new mapping; `told` has a sentence for each thing taken for granted anew [record]
 */
export function answered(
  table: Table,
  mapping: Mapping,
  change: MappingChange,
): { mapping: Mapping; told: readonly MappingTold[] } {
  const told: MappingTold[] = [];
  const kind = change.kind ?? mapping.kind;
  const system = change.system === undefined ? mapping.system : change.system;
  const { otherKinds, ...plain } = mapping;
  const next: Mapping = {
    ...plain,
    kind,
    system,
    ...(change.kind === undefined && otherKinds !== undefined ? { otherKinds } : {}),
  };
  const { headingRows, firstRow } = mapping;
  const desk: ColumnDesk = {
    table,
    firstRow,
    kinds: kindsOf(next),
    system,
    stated: statedUnits(table, headingRows, firstRow),
    told,
  };
  const columns = change.kind === undefined ? mapping.columns : readAnew(mapping, desk);
  return { mapping: { ...next, columns: columns.map((column, i) => changed(column, i, change, desk)) }, told };
}

function readAnew(mapping: Mapping, desk: ColumnDesk): Column[] {
  const headings = mapping.columns.map(({ heading }) => heading);
  const guesses = headings.map((heading) => guessAmong([heading], desk.kinds));
  const header: Header = { rows: mapping.headingRows, firstRow: mapping.firstRow, headings, guesses, score: 0 };
  return columnsOf(header, desk);
}

function changed(column: Column, index: number, change: MappingChange, desk: ColumnDesk): Column {
  if (change.column !== column.letter) {
    return change.system !== undefined && column.unitFrom === 'ask' ? withTarget(column, index, column, desk) : column;
  }
  const targeted =
    change.target === undefined
      ? column
      : withTarget(column, index, { target: change.target, confidence: chosen }, desk);
  const united: Column = change.unit === undefined ? targeted : { ...targeted, unit: change.unit, unitFrom: 'person' };
  return change.from === undefined ? united : { ...united, from: change.from };
}

/** A column that holds something else: its unit and points are looked for anew, and nothing of it is asked any more. */
function withTarget(
  { heading }: Column,
  index: number,
  { target, confidence }: Pick<Column, 'target' | 'confidence'>,
  desk: ColumnDesk,
): Column {
  const guess: HeadingGuess = { target, confidence, unit: splitHeading(heading).unit, rivals: [] };
  return columnOf(/^(?:type|kind|style|class)$/i.test(heading) ? `${heading} ` : heading, index, guess, desk);
}
