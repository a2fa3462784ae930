import { excerpt } from '../../../records/index.ts';
import { rowKinds, type RowKind } from '../kinds.ts';
import { kindNamed } from '../mapping/kindOf.ts';
import { isBlankRow } from '../table.ts';
import { checked } from './check.ts';
import { asRowError, cellAt, refuse, type RowDesk } from './desk.ts';
import { identityOf, keyOf } from './identity.ts';
import type { Plan } from './plan.ts';
import { readPlain, readQuantityField } from './readField.ts';
import type { ProposedReading, ProposedRecord } from './record.ts';
import type { RowReading } from './rowTypes.ts';
import { strayReason } from './stray.ts';
import type { Plain } from '../cells/plainCell.ts';

/** Reads one row by itself: what it proposes, and everything that is wrong with it or was taken for granted. */
export function readRow(cells: readonly string[], index: number, plan: Plan): RowReading {
  const row = index + 1;
  const nothing = { row, record: null, errors: [], told: [], missing: 0 };
  if (isBlankRow(cells)) return { ...nothing, outcome: 'blank' };
  const stray = strayReason(cells, plan);
  if (stray !== null) {
    const got = excerpt(cells.filter((cell) => cell.trim() !== '').join(' | '));
    return { ...nothing, outcome: 'skipped', told: [{ ...stray, row, column: null, field: null, got }] };
  }
  const desk: RowDesk = { plan, row, cells, kind: plan.mapping.kind, errors: [], told: [], missing: 0 };
  const kind = kindOfRow(desk);
  const record = kind === null ? null : recordOfRow({ ...desk, kind }, desk);
  const outcome = record === null ? 'refused' : 'record';
  return { row, outcome, record, errors: desk.errors, told: desk.told, missing: desk.missing };
}

function kindOfRow(desk: RowDesk): RowKind | null {
  const { recordKind, mapping } = desk.plan;
  const { text } = cellAt(desk.cells, recordKind);
  if (text === '') return mapping.kind;
  const kind = kindNamed(text);
  if (kind === null) {
    const expected = `one of ${rowKinds.join(', ')}`;
    refuse(desk, recordKind, '', { code: 'not-a-choice', expected, got: excerpt(text), hint: 'Say what the row is.' });
  }
  return kind;
}

const longestName = 200;

function recordOfRow(desk: RowDesk, counted: RowDesk): ProposedRecord | null {
  const { plan, kind } = desk;
  const id = cellAt(desk.cells, plan.id).text;
  const name = cellAt(desk.cells, plan.name).text || id;
  if (name === '' || name.length > longestName || id.length > longestName) {
    const column = plan.name ?? plan.id;
    const code = name === '' ? 'missing' : 'out-of-range';
    const got = name === '' ? 'nothing' : `${name.length} characters`;
    refuse(desk, column, 'name', {
      code,
      expected: `a name of at most ${longestName} characters`,
      got,
      hint: 'Give the row a name or a number.',
    });
    return null;
  }
  const read = readFields(desk);
  counted.missing = desk.missing;
  const sound = checked({ kind, name, ...read });
  for (const error of sound.errors) desk.errors.push(asRowError(error, desk, error.field));
  if (sound.isIncomplete) return null;
  const record = { kind, name, id: id === '' ? null : id, fields: sound.fields, readings: sound.readings };
  return { ...record, key: keyOf(identityOf(record)) };
}

function readFields(desk: RowDesk): { fields: Record<string, Plain>; readings: Record<string, ProposedReading> } {
  const { fields: plans, foreign } = desk.plan.ofKind(desk.kind);
  const fields: Record<string, Plain> = {};
  const readings: Record<string, ProposedReading> = {};
  for (const plan of plans) {
    const plain = plan.spec.form === 'quantity' ? undefined : readPlain(plan, desk);
    if (plain !== undefined) fields[plan.field] = plain;
    const reading = readQuantityField(plan, desk);
    if (reading !== undefined) readings[plan.field] = reading;
  }
  const extra = extrasOf(desk);
  if (extra.length > 0) fields['extra'] = extra;
  for (const column of foreign) {
    const cell = cellAt(desk.cells, column);
    if (cell.text === '') continue;
    const hint = `Column ${column.letter} is for other rows: empty the cell, or say what the row is.`;
    refuse(desk, column, '', {
      code: 'unknown-key',
      expected: `what a ${desk.kind} has`,
      got: excerpt(cell.text),
      hint,
    });
  }
  return { fields, readings };
}

const longestExtra = 2000;

/** What stands in columns that are kept as they are, each under its heading. */
function extrasOf(desk: RowDesk): { readonly label: string; readonly text: string }[] {
  return desk.plan.extras.flatMap((column) => {
    const { text } = cellAt(desk.cells, column);
    const label = column.heading.replace(/^extra: /, '').slice(0, longestName) || `column ${column.letter}`;
    if (text.length <= longestExtra) return text === '' ? [] : [{ label, text }];
    const [expected, got] = [`at most ${longestExtra} characters`, `${text.length} characters`];
    refuse(desk, column, '', { code: 'out-of-range', expected, got, hint: 'Shorten it.' });
    return [];
  });
}

/** What tells two rows of one record from two of the same: everything that they say. */
export function contentOf({ kind, name, id, fields, readings }: ProposedRecord): string {
  return JSON.stringify([kind, name, id, fields, readings]);
}

/** How a row stands to an earlier one: it says all the same, it is of the same record, or only its name is the same. */
export type Earlier = 'copy' | 'same' | 'apart';

const earlierWords: Readonly<Record<Earlier, (row: number) => string>> = {
  copy: (row) => `This row is the same as row ${row}: left out.`,
  same: (row) =>
    `This row has the name or number of row ${row}: both are one record, to which this row’s readings are added.`,
  apart: (row) => `This row has the name of row ${row}, but another number or category: kept as two records.`,
};

/** Adds to a row how it stands to an earlier one. */
export function tellEarlier(reading: RowReading, earlier: number, how: Earlier, { name, id }: Plan): RowReading {
  const told = { about: 'duplicate', taken: `row ${earlier}`, sentence: earlierWords[how](earlier) } as const;
  const place = { row: reading.row, column: (name ?? id)?.letter ?? null, field: null };
  return { ...reading, told: [...reading.told, { ...told, ...place, got: excerpt(reading.record?.name ?? '') }] };
}
