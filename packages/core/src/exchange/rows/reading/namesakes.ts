import { kindNamed } from '../mapping/kindOf.ts';
import type { Table } from '../table.ts';
import { cellAt } from './desk.ts';
import { foldedName } from './identity.ts';
import type { FieldPlan, Plan } from './plan.ts';

/** Names that rows of several categories, or of several kinds of part, have: they need more than their name to be told apart. */
export function namesakesIn(table: Table, plan: Plan): ReadonlySet<string> {
  const variants = new Map<string, Set<string>>();
  for (let row = plan.mapping.firstRow; row < table.length; row += 1) {
    const cells = table[row] ?? [];
    const name = cellAt(cells, plan.name).text;
    const kind = kindNamed(cellAt(cells, plan.recordKind).text) ?? plan.mapping.kind;
    const variant = name === '' ? null : variantOf(cells, plan.ofKind(kind).fields, plan);
    if (variant === null) continue;
    const key = `${kind} ${foldedName(name)}`;
    variants.set(key, (variants.get(key) ?? new Set()).add(variant));
  }
  return new Set([...variants].filter(([, several]) => several.size > 1).map(([key]) => key));
}

function variantOf(cells: readonly string[], fields: readonly FieldPlan[], plan: Plan): string | null {
  for (const field of ['kind', 'category']) {
    const found = fields.find((each) => each.field === field);
    const column = found?.whole[0];
    if (found === undefined || column === undefined) continue;
    const cell = cellAt(cells, column);
    const reading = plan.plain(cell.text, cell.isDate, found, column.unit);
    if (reading.kind === 'read' && typeof reading.value === 'string') return reading.value;
  }
  return null;
}
