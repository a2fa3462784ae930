import type { InputError } from '@hitchwright/core/records';
import type { Queries } from '../database/database.ts';
import { folded, refusal } from '../records/text.ts';
import type { ImportRow } from './rows.ts';

/** Which record a row is, none for a new one; or why that can’t be told. */
export type Match = { readonly id: string | null } | { readonly error: InputError };

/** Finds the record of each row of a part of an import. */
export async function matched(queries: Queries, rows: readonly ImportRow[]): Promise<Match[]> {
  const keys = rows.flatMap(({ key }) => key ?? []);
  const names = rows.map(({ name }) => folded(name));
  const known = await queries
    .selectFrom('record')
    .select(['id', 'kind', 'sort_name', 'import_key', 'removed_at', 'owner_id'])
    .where((w) => w.or([...(keys.length === 0 ? [] : [w('import_key', 'in', keys)]), w('sort_name', 'in', names)]))
    .execute();
  return rows.map((row) => {
    const same = known.filter(({ kind }) => kind === row.kind);
    const byKey = row.key === undefined ? undefined : same.find(({ import_key }) => import_key === row.key);
    if (row.id !== undefined) return byKey === undefined || byKey.id === row.id ? { id: row.id } : { error: takenKey };
    if (byKey !== undefined) return { id: byKey.id };
    const isNamesake = (one: (typeof same)[number]): boolean =>
      one.removed_at === null &&
      one.sort_name === folded(row.name) &&
      one.owner_id === (row.owner ?? null) &&
      (row.key === undefined || one.import_key === null);
    const [only, ...others] = same.filter(isNamesake);
    return others.length > 0 ? { error: severalNamed(row.name) } : { id: only?.id ?? null };
  });
}

/** Rows of one import that would be the same record. */
export function twins(rows: readonly ImportRow[]): Map<number, InputError> {
  const first = new Map<string, number>();
  const errors = new Map<number, InputError>();
  rows.forEach((row, i) => {
    const is =
      row.id ?? JSON.stringify([row.kind, row.key ?? folded(row.name), row.key === undefined, row.owner ?? null]);
    const before = first.get(is);
    if (before === undefined) first.set(is, i);
    else errors.set(i, twin(row.key === undefined ? 'name' : 'key', rows, before));
  });
  return errors;
}

const takenKey = refusal('not-a-choice', 'key', 'a key of its own', 'that of another record', 'Choose another.');

function severalNamed(name: string): InputError {
  return refusal(
    'ambiguous',
    'name',
    'a name that only one has',
    `several named ${name}`,
    'Give the row a key or an id.',
  );
}

/** The error of a row that would be the same record as one before it. */
export function twin(path: string, rows: readonly ImportRow[], before: number): InputError {
  const row = rows[before]?.row ?? before + 1;
  const hint = 'Leave one of them out, or tell them apart by name.';
  return refusal('ambiguous', path, 'one row for each record', `the same as row ${row}`, hint);
}
