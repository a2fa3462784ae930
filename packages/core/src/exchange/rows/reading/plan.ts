import { catalogues } from '../catalogue/catalogue.ts';
import type { FieldSpec } from '../catalogue/fieldSpec.ts';
import { plainCell, type PlainReading } from '../cells/plainCell.ts';
import { quantityCell, type QuantityReading } from '../cells/quantityCell.ts';
import type { UnitSaid } from '../cells/bareUnit.ts';
import type { Column, Mapping } from '../mapping/mapping.ts';
import { kindsOf } from '../mapping/asks.ts';
import { filledCells, usualUnit } from '../mapping/columnFigures.ts';
import { specOf } from '../mapping/columns.ts';
import type { Table } from '../table.ts';
import { holdsFigures, type Companion } from '../mapping/target.ts';
import type { RowKind } from '../kinds.ts';

/** A column with its index. */
export interface Placed extends Column {
  readonly index: number;
}

/** Columns of what stands beside figures; where there are several, the first that says something holds. */
type Beside = ReadonlyMap<Companion, readonly Placed[]>;

/** The columns of one field: those that hold it, those that hold its ends, and those that stand beside it. */
export interface FieldPlan {
  readonly field: string;
  readonly spec: FieldSpec;
  readonly whole: readonly Placed[];
  readonly low: readonly Placed[];
  readonly high: readonly Placed[];
  readonly beside: Beside;
}

/** How the rows of one kind are read, worked out once. */
interface KindPlan {
  readonly kind: RowKind;
  readonly fields: readonly FieldPlan[];
  /** Columns of fields that this kind does not have. */
  readonly foreign: readonly Placed[];
}

/** How a table is read, worked out once from its mapping. */
export interface Plan {
  readonly mapping: Mapping;
  readonly id: Placed | null;
  readonly name: Placed | null;
  readonly recordKind: Placed | null;
  /** Columns that are kept as they stand. */
  readonly extras: readonly Placed[];
  /** Columns that are for every reading of their row. */
  readonly beside: Beside;
  readonly ofKind: (kind: RowKind) => KindPlan;
  readonly quantity: (text: string, isDate: boolean, plan: FieldPlan, said: UnitSaid) => QuantityReading;
  readonly plain: (text: string, isDate: boolean, plan: FieldPlan, unit: string | null) => PlainReading;
  readonly known: readonly Placed[];
  /** The unit that most bare figures of a column are in, by its letter, where nobody has said one. */
  readonly usual: ReadonlyMap<string, string>;
}

/** Works out how a table is read. */
export function planOf(mapping: Mapping, table: Table): Plan {
  const known = mapping.columns
    .map((column, index) => ({ ...column, index }))
    .filter(({ target }) => target.role !== 'ignore');
  const first = (role: string): Placed | null => known.find(({ target }) => target.role === role) ?? null;
  const plans = new Map<RowKind, KindPlan>();
  return {
    mapping,
    known,
    usual: usualUnits(known, mapping, table),
    id: first('id'),
    name: first('name'),
    recordKind: first('recordKind'),
    extras: known.filter(({ target }) => target.role === 'extra'),
    beside: companionsOf(known, null),
    ofKind: (kind) => {
      const plan = plans.get(kind) ?? kindPlan(kind, known);
      plans.set(kind, plan);
      return plan;
    },
    quantity: remembering((text, isDate, { spec }, said) =>
      spec.form === 'quantity' ? quantityCell(text, isDate, spec.rule, said) : { kind: 'missing' },
    ),
    plain: remembering((text, isDate, { spec }, unit) =>
      spec.form === 'quantity' ? { kind: 'missing' } : plainCell(text, isDate, spec, unit),
    ),
  };
}

function usualUnits(known: readonly Placed[], mapping: Mapping, table: Table): ReadonlyMap<string, string> {
  const guessed = known.filter(({ unitFrom }) => unitFrom === null || unitFrom === 'figures');
  const usual = guessed.flatMap(({ letter, target, index }): [string, string][] => {
    const spec = specOf(kindsOf(mapping), holdsFigures(target) ? target.field : null);
    if (spec?.form !== 'quantity') return [];
    const unit = usualUnit(filledCells(table, mapping.firstRow, index), spec.rule);
    return unit === null ? [] : [[letter, unit]];
  });
  return new Map(usual);
}

function kindPlan(kind: RowKind, known: readonly Placed[]): KindPlan {
  const holding = known.filter(({ target }) => holdsFigures(target));
  const fields = [...new Set(holding.map((column) => fieldOf(column)))];
  return {
    kind,
    foreign: holding.filter((column) => !catalogues[kind].has(fieldOf(column))),
    fields: fields.flatMap((field) => {
      const spec = catalogues[kind].get(field);
      return spec === undefined ? [] : [fieldPlan(field, spec, known)];
    }),
  };
}

function fieldOf({ target }: Placed): string {
  return holdsFigures(target) ? target.field : '';
}

function fieldPlan(field: string, spec: FieldSpec, known: readonly Placed[]): FieldPlan {
  const columns = known.filter(({ target }) => holdsFigures(target) && target.field === field);
  const inRole = (role: 'field' | 'low' | 'high'): Placed[] => columns.filter(({ target }) => target.role === role);
  return {
    field,
    spec,
    whole: inRole('field'),
    low: inRole('low'),
    high: inRole('high'),
    beside: companionsOf(known, field),
  };
}

function companionsOf(known: readonly Placed[], field: string | null): Beside {
  const beside = new Map<Companion, readonly Placed[]>();
  for (const column of known) {
    const { target } = column;
    if (holdsFigures(target) || !('field' in target) || target.field !== field) continue;
    beside.set(target.role, [...(beside.get(target.role) ?? []), column]);
  }
  return beside;
}

/** Sheets say the same in many rows: a cell that was read is not read again. */
const mostRemembered = 2000;

function remembering<Said, Reading>(
  read: (text: string, isDate: boolean, plan: FieldPlan, said: Said) => Reading,
): (text: string, isDate: boolean, plan: FieldPlan, said: Said) => Reading {
  const known = new Map<FieldSpec, Map<string, Reading>>();
  return (text, isDate, plan, said) => {
    const ofField = known.get(plan.spec) ?? new Map<string, Reading>();
    known.set(plan.spec, ofField);
    const key = `${JSON.stringify(said)}${isDate ? 'date' : ''}\n${text}`;
    const before = ofField.get(key);
    if (before !== undefined) return before;
    const reading = read(text, isDate, plan, said);
    if (ofField.size < mostRemembered && text.length < 100) ofField.set(key, reading);
    return reading;
  };
}
