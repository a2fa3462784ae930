/** What may stand beside a figure, in a column of its own: for one field, or for every reading of a row. */
export type Companion =
  'plusMinus' | 'from' | 'method' | 'tool' | 'who' | 'when' | 'source' | 'note' | 'grade' | 'unit' | 'default';

/**
 * What a column holds. `low` and `high` are the two ends of one field; `extra` is kept as it stands, under its heading. A companion without a
 * field is for every reading of its row.
 */
export type Target =
  | { readonly role: 'ignore' | 'id' | 'name' | 'recordKind' | 'extra' }
  | { readonly role: 'field' | 'low' | 'high'; readonly field: string }
  | { readonly role: Companion; readonly field: string | null };

/** The field a column is about, or null. */
export function fieldOfTarget(target: Target): string | null {
  return 'field' in target ? target.field : null;
}

/** Whether two columns hold the same thing. */
export function sameTarget(a: Target, b: Target): boolean {
  return a.role !== 'extra' && a.role === b.role && fieldOfTarget(a) === fieldOfTarget(b);
}

/** Whether a column holds figures of a field, not what stands beside them. */
export function holdsFigures(target: Target): target is Extract<Target, { role: 'field' | 'low' | 'high' }> {
  return target.role === 'field' || target.role === 'low' || target.role === 'high';
}
