import {
  draftOf,
  readRows,
  type Mapping,
  type RecordDraft,
  type RowReading,
  type RowsTally,
  type Table,
} from '@hitchwright/core/exchange';
import { setImmediate as turn } from 'node:timers/promises';
import type { ImportRow } from '@hitchwright/store';

/** A whole sheet read. */
export interface RowsRead {
  readonly readings: readonly RowReading[];
  readonly tally: RowsTally;
}

/** Rows between two turns of everybody else. */
const atOnce = 200;

/** Reads every row of a sheet, a few at a time, so that other requests are answered meanwhile. */
export async function readAll(table: Table, mapping: Mapping): Promise<RowsRead> {
  const readings: RowReading[] = [];
  const rows = readRows(table, mapping);
  for (let next = rows.next(); ; next = rows.next()) {
    if (next.done === true) return { readings, tally: next.value };
    readings.push(next.value);
    if (readings.length % atOnce === 0) await turn();
  }
}

/** The rows of an import, and the row of the sheet that each comes from. */
export interface MergedRows {
  readonly rows: readonly ImportRow[];
  readonly sheetRows: readonly number[];
}

/**
 * The records that a sheet proposes, as the store takes them. Rows of one record are one: a later row adds its readings, and its plain fields
 * where the earlier ones say nothing; where the first is left out, so are they.
 *
 * @param read the rows of the sheet
 * @param leaveOut rows to leave out, as the sheet counts them [list]
 * @returns the rows of the import [record]
 */
export function mergedRows({ readings }: RowsRead, leaveOut: readonly number[] = []): MergedRows {
  const left = new Set(leaveOut);
  const byKey = new Map<string, { draft: RecordDraft; row: number }>();
  const first = new Map<string, number>();
  for (const { record, row } of readings) {
    if (record === null) continue;
    if (!first.has(record.key)) first.set(record.key, row);
    if (left.has(row) || left.has(first.get(record.key) ?? row)) continue;
    const draft = draftOf({ ...record, row });
    const before = byKey.get(draft.key);
    byKey.set(draft.key, before === undefined ? { draft, row } : { draft: both(before.draft, draft), row: before.row });
  }
  const all = [...byKey.values()];
  return { rows: all.map(({ draft }) => draft), sheetRows: all.map(({ row }) => row) };
}

/**
 * The rows as they are looked at before they are written: what a later row of one record adds stands at its first row, and it is no row of its
 * own. Of a row that says the same as another one only that is told.
 *
 * @param read the rows of the sheet
 * @returns the same rows [record]
 */
export function mergedView({ readings, tally }: RowsRead): RowsRead {
  const first = new Map<string, number>();
  const shown: RowReading[] = [];
  for (const reading of readings) {
    const { record, row } = reading;
    const at = record === null ? undefined : first.get(record.key);
    const before = at === undefined ? undefined : shown[at];
    if (record === null) shown.push(reading.outcome === 'duplicate' ? copyOf(reading) : reading);
    else if (at === undefined || before?.record == null) {
      first.set(record.key, shown.length);
      shown.push({ ...reading, record: { ...record, row } });
    } else {
      const { fields, readings: own } = before.record;
      const more = { fields: { ...record.fields, ...fields }, readings: { ...record.readings, ...own } };
      shown[at] = { ...before, record: { ...before.record, ...more } };
      shown.push({ ...reading, outcome: 'duplicate', record: null });
    }
  }
  return { readings: shown, tally };
}

function copyOf(reading: RowReading): RowReading {
  return { ...reading, errors: [], told: reading.told.filter(({ about }) => about === 'duplicate') };
}

function both(first: RecordDraft, second: RecordDraft): RecordDraft {
  return {
    ...first,
    fields: { ...second.fields, ...first.fields },
    readings: [...first.readings, ...second.readings.filter((reading) => !first.readings.some(sameAs(reading)))],
  };
}

function sameAs(reading: RecordDraft['readings'][number]) {
  const text = JSON.stringify(reading);
  return (other: RecordDraft['readings'][number]): boolean => JSON.stringify(other) === text;
}
