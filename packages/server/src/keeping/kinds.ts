import { recordOf, rowKinds, tableOf, type ProposedRecord, type RowKind, type Table } from '@hitchwright/core/exchange';
import type { UnitSystem } from '@hitchwright/core/units';
import type { FullRecord, RecordKind, Store } from '@hitchwright/store';

/** Every record of a kind with its readings, by name. */
export async function* fullRecords({ records }: Store, kind: RecordKind): AsyncGenerator<FullRecord> {
  let cursor: string | undefined;
  do {
    const page = await records.list({ kind, limit: 200, ...(cursor === undefined ? {} : { cursor }) });
    for (const { id } of page.items) yield await records.get(id, { removed: true });
    cursor = page.next ?? undefined;
  } while (cursor !== undefined);
}

/** Whether records of a kind can stand in a sheet. */
export function isRowKind(kind: RecordKind): kind is RowKind {
  return (rowKinds as readonly string[]).includes(kind);
}

/** The records of a kind as a table, each figure the one in use. */
export async function tableOfKind(store: Store, kind: RowKind, units: UnitSystem): Promise<Table> {
  const rows: ProposedRecord[] = [];
  for await (const record of fullRecords(store, kind)) rows.push(proposedOf(record, kind));
  return tableOf(rows, { units });
}

function proposedOf({ name, fields, readings, inUse }: FullRecord, kind: RowKind): ProposedRecord {
  const used = Object.values(inUse).flatMap(({ id }) => readings.find((reading) => reading.id === id) ?? []);
  const plain = recordOf(kind, { ...fields, name });
  return {
    ...plain,
    readings: Object.fromEntries(used.map(({ field, leaf, grade }) => [field, { leaf, grade }])),
  };
}
