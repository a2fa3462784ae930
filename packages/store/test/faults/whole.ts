import { expect } from 'vitest';
import { applied } from '../../src/history/entries.ts';
import { entryOf } from '../../src/history/log.ts';
import { readingOf, recordOf } from '../../src/records/rows.ts';
import type { RecordState } from '../../src/records/kinds.ts';
import type { Row, TableName } from '../../src/database/tables.ts';
import { unarchive } from '../../src/keep/unarchive.ts';
import { soundFile } from '../../src/keep/sqliteFile.ts';
import type { Store } from '../../src/index.ts';

/** Every row of a store, by table. */
export type Rows = { readonly [T in TableName]?: Row<T>[] };

/** All rows of a store. */
export async function rowsOf(store: Store): Promise<Rows> {
  const lines: string[] = [];
  await store.exportAll((line) => void lines.push(line));
  const rows: Record<string, unknown[]> = {};
  await unarchive(lines, (table, some) => {
    (rows[table] ??= []).push(...some);
    return Promise.resolve();
  });
  return rows as Rows;
}

/** Nothing half-written is in a store: every group of changes is there with all its records, and every record is what its history says. */
export function expectWhole({ record = [], reading = [], history = [], change_group: groups = [] }: Rows): void {
  const touched = new Map(groups.map(({ id }) => [id, new Set<string>()]));
  for (const { group_id, record_id } of history) touched.get(group_id)?.add(record_id);
  for (const { id, records } of groups) expect(touched.get(id)?.size).toBe(records);
  const states = new Map<string, { state: RecordState | null; revision: number }>();
  for (const row of history) {
    const { state = null, revision = 0 } = states.get(row.record_id) ?? {};
    expect([revision, revision + 1]).toContain(row.revision);
    states.set(row.record_id, { state: applied(state, entryOf(row)), revision: row.revision });
  }
  const readings = new Map(record.map(({ id }) => [id, new Array<unknown>()]));
  for (const row of reading) readings.get(row.record_id)?.push(readingOf(row));
  expect(states.size).toBe(record.length);
  for (const row of record) {
    const now = recordOf(row);
    const { state, revision } = states.get(row.id) ?? {};
    expect({ ...state?.record, revision, updatedAt: now.updatedAt }).toEqual(now);
    expect([...(state?.readings.values() ?? [])].sort(byId)).toEqual(readings.get(row.id)?.sort(byId));
  }
}

function byId(a: unknown, b: unknown): number {
  return (a as { id: string }).id < (b as { id: string }).id ? -1 : 1;
}

/** Every page and reference of a store’s file is sound; PostgreSQL looks after its own. */
export async function expectSound(url: string): Promise<void> {
  if (url.startsWith('sqlite:')) await soundFile(url.slice('sqlite:'.length));
}
