import type { Row } from './importTypes.ts';

/** What becomes of a row. */
export type Becomes = 'new' | 'changes' | 'back' | 'nothing' | 'refused' | 'twice' | 'skipped';

/** The same in words. */
export const becomesWords: Readonly<Record<Becomes, string>> = {
  new: 'new',
  changes: 'changes',
  back: 'brought back',
  nothing: 'nothing new',
  refused: 'refused',
  twice: 'there twice',
  skipped: 'no record',
};

/** What is looked for among the rows. */
export const filters = [
  ['all', 'All rows'],
  ['errors', 'Errors'],
  ['guesses', 'Guesses'],
  ['new', 'New'],
  ['changes', 'Changes'],
  ['aside', 'Not written'],
] as const;
/** One of `filters`. */
export type Filter = (typeof filters)[number][0];

/** What becomes of a row as the server sees it. */
export function becomesOf({ outcome, does }: Pick<Row, 'outcome' | 'does'>): Becomes {
  if (outcome === 'refused' || does === 'refuse') return 'refused';
  if (outcome === 'duplicate') return 'twice';
  if (outcome !== 'record') return 'skipped';
  if (does === 'create') return 'new';
  if (does === 'update') return 'changes';
  return does === 'restore' ? 'back' : 'nothing';
}

/** Whether somebody may leave the row out: it would be written otherwise. */
export function isWritten(row: Pick<Row, 'outcome' | 'does'>): boolean {
  return ['new', 'changes', 'back'].includes(becomesOf(row));
}

/** Whether a row is among those that are looked for. */
export function isIn(filter: Filter, row: Row, left: ReadonlySet<number>): boolean {
  const becomes = becomesOf(row);
  switch (filter) {
    case 'all':
      return true;
    case 'errors':
      return row.errors.length > 0;
    case 'guesses':
      return row.outcome === 'record' ? row.told.length > 0 : row.told.some(({ about }) => about !== 'duplicate');
    case 'new':
      return becomes === 'new';
    case 'changes':
      return becomes === 'changes' || becomes === 'back';
    case 'aside':
      return !isWritten(row) || left.has(row.row);
  }
}

/** One field of a record that becomes another. */
export interface FieldChange {
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** Changes by field: a reading that takes another one’s place is one change, not two. */
export function byField(changes: Row['changes']): readonly FieldChange[] {
  const fields = [...new Set(changes.map(({ field }) => field))];
  return fields.map((field) => {
    const own = changes.filter((change) => change.field === field);
    return {
      field,
      before: own.find(({ before }) => before !== null)?.before ?? null,
      after: [...own].reverse().find(({ after }) => after !== null)?.after ?? null,
    };
  });
}
