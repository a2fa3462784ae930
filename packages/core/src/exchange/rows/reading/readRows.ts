import type { Mapping } from '../mapping/mapping.ts';
import type { Table } from '../table.ts';
import { foldedName, identityOf, keyOf, recordIndex, type RecordIndex } from './identity.ts';
import { namesakesIn } from './namesakes.ts';
import { planOf, type Plan } from './plan.ts';
import { contentOf, readRow, tellEarlier } from './readRow.ts';
import type { ProposedRecord } from './record.ts';
import type { RowReading } from './rowTypes.ts';

/** How many rows came to what. */
export interface RowsTally {
  readonly rows: number;
  readonly records: number;
  readonly blank: number;
  readonly skipped: number;
  readonly duplicates: number;
  readonly refused: number;
  readonly errors: number;
  readonly told: number;
  /** Cells of known columns that say nothing. */
  readonly missing: number;
}

/**
 * Reads the rows of a table one after the other, so that a caller can show how far it is and stop between any two. Every row comes back, with
 * its record or without. Cells that can’t be read, or that may mean two things, are refused one by one: their row stands without them.
 *
 * @param table the sheet as texts [rows of cells]
 * @param mapping what its columns hold [record]
 * @returns a reading for each row; at the end the tally [generator]
 * @example [...readRows(table, mapping)].flatMap(({ record }) => record ?? [])
 */
export function* readRows(table: Table, mapping: Mapping): Generator<RowReading, RowsTally, void> {
  const plan = planOf(mapping, table);
  const seen = openSeen(namesakesIn(table, plan));
  const tally = {
    rows: 0,
    records: 0,
    blank: 0,
    skipped: 0,
    duplicates: 0,
    refused: 0,
    errors: 0,
    told: 0,
    missing: 0,
  };
  for (let index = mapping.firstRow; index < table.length; index += 1) {
    const reading = withEarlier(readRow(table[index] ?? [], index, plan), seen, plan);
    count(tally, reading);
    yield reading;
  }
  return tally;
}

const counted = {
  record: 'records',
  blank: 'blank',
  skipped: 'skipped',
  duplicate: 'duplicates',
  refused: 'refused',
} as const;

function count(
  tally: { -readonly [K in keyof RowsTally]: number },
  { outcome, errors, told, missing }: RowReading,
): void {
  tally.rows += 1;
  tally[counted[outcome]] += 1;
  tally.errors += errors.length;
  tally.told += told.length;
  tally.missing += missing;
}

/** Records of earlier rows: found by what they are known by, each with its rows’ contents. */
interface Seen {
  readonly index: RecordIndex;
  /** Names that records of several categories or kinds have. */
  readonly namesakes: ReadonlySet<string>;
  /** The first row of each name, with its key. */
  readonly names: Map<string, { readonly row: number; readonly key: string }>;
  readonly rows: Map<string, { readonly row: number; readonly contents: Set<string> }>;
}

function openSeen(namesakes: ReadonlySet<string>): Seen {
  return { index: recordIndex(), namesakes, names: new Map(), rows: new Map() };
}

/** A row of a record that was there before has its key; one that says nothing new is left out. */
function withEarlier(reading: RowReading, seen: Seen, plan: Plan): RowReading {
  const { record } = reading;
  if (record === null) return reading;
  const identity = identityOf(record);
  const match = seen.index.find(identity);
  const name = `${record.kind} ${foldedName(record.name)}`;
  const key = match.kind === 'same' ? match.ref : keyOf(identity, seen.namesakes.has(name));
  seen.index.add(identity, key);
  const namesake = seen.names.get(name);
  if (namesake === undefined) seen.names.set(name, { row: reading.row, key });
  const before = seen.rows.get(key);
  const content = contentOf(record);
  if (before === undefined) {
    seen.rows.set(key, { row: reading.row, contents: new Set([content]) });
    const keyed = { ...reading, record: { ...record, key } };
    return namesake === undefined ? keyed : tellEarlier(keyed, namesake.row, 'apart', plan);
  }
  const isSameContent = before.contents.has(content);
  before.contents.add(content);
  const same: ProposedRecord | null = isSameContent ? null : { ...record, key };
  return {
    ...tellEarlier(reading, before.row, isSameContent ? 'copy' : 'same', plan),
    outcome: isSameContent ? 'duplicate' : 'record',
    record: same,
  };
}

/** A whole table read at once. */
export interface TableReading {
  readonly readings: readonly RowReading[];
  readonly tally: RowsTally;
  /** Whether it was stopped before the end. */
  readonly stopped: boolean;
}

/** Rows between two looks at whether to go on. */
const rowsAtOnce = 500;

/**
 * Reads a whole table, telling now and then how far it is.
 *
 * @param table the sheet as texts [rows of cells]
 * @param mapping what its columns hold [record]
 * @param watch is told the rows done and all rows; where it returns false reading stops [function]
 * @returns every row read [record]
 */
export function readTable(
  table: Table,
  mapping: Mapping,
  watch?: (done: number, all: number) => boolean,
): TableReading {
  const all = Math.max(0, table.length - mapping.firstRow);
  const readings: RowReading[] = [];
  const rows = readRows(table, mapping);
  for (let next = rows.next(); ; next = rows.next()) {
    if (next.done === true) return { readings, tally: next.value, stopped: false };
    readings.push(next.value);
    if (readings.length % rowsAtOnce === 0 && watch?.(readings.length, all) === false) return stoppedAt(readings);
  }
}

function stoppedAt(readings: readonly RowReading[]): TableReading {
  const tally = {
    rows: 0,
    records: 0,
    blank: 0,
    skipped: 0,
    duplicates: 0,
    refused: 0,
    errors: 0,
    told: 0,
    missing: 0,
  };
  for (const reading of readings) count(tally, reading);
  return { readings, tally, stopped: true };
}
