import {
  answered,
  asksOf,
  guessMapping,
  guessSheet,
  wrongSheet,
  type Ask,
  type Mapping,
  type MappingChange,
  type MappingTold,
  type Sheet,
  type SheetGuess,
} from '@hitchwright/core/exchange';
import type { InputError } from '@hitchwright/core/records';
import type { Store } from '@hitchwright/store';
import { inputRefusal } from '../http/refusal.ts';

/** What the columns of a sheet were taken for, and what has to be asked. */
export interface Guessed {
  readonly mapping: Mapping | null;
  readonly confidence: number;
  readonly told: readonly MappingTold[];
  readonly asks: readonly Ask[];
  readonly errors: readonly InputError[];
}

/** What somebody chose: another sheet, something of the mapping, or a whole mapping. */
export interface Choice {
  readonly sheet?: number;
  readonly change?: MappingChange;
}

interface SheetGuessed {
  readonly sheet: number;
  readonly guessed: Guessed;
}

/** Guesses what a sheet holds, with what was chosen the last time for the same headings; the sheet that fits best where none is chosen. */
export async function guessedFor(store: Store, sheets: readonly Sheet[], chosen: number | null): Promise<SheetGuessed> {
  const all = guessSheet(sheets);
  const sheet = chosen ?? all.best ?? 0;
  const guess = all.guesses[sheet];
  const one = sheets[sheet];
  if (guess === undefined || one === undefined) throw noSheet(sheets, sheet);
  const before = guess.mapping === null ? null : await store.mappings.get(headingsOf(guess.mapping.columns));
  const again =
    before === null ? guess : guessMapping(one.rows, { sheetName: one.name, remembered: [before.columns as Mapping] });
  return { sheet, guessed: { ...again, errors: [...again.errors, ...otherSheet(sheets, all, sheet)] } };
}

function otherSheet(sheets: readonly Sheet[], all: SheetGuess, sheet: number): InputError[] {
  const wrong = sheets.length > 1 ? wrongSheet(sheets, all, sheet) : null;
  return wrong === null ? [] : [wrong];
}

/** What a sheet holds with what somebody chose. */
export async function chosenFor(
  store: Store,
  held: { readonly sheets: readonly Sheet[]; readonly sheet: number; readonly guessed: Guessed },
  { sheet, change }: Choice,
): Promise<SheetGuessed> {
  const start =
    sheet === undefined || sheet === held.sheet
      ? { sheet: held.sheet, guessed: held.guessed }
      : await guessedFor(store, held.sheets, sheet);
  const { mapping } = start.guessed;
  if (change === undefined || mapping === null) return start;
  refuseStrangeColumn(mapping, change);
  const table = held.sheets[start.sheet]?.rows ?? [];
  const { mapping: next, told } = answered(table, mapping, change);
  return { sheet: start.sheet, guessed: { ...start.guessed, mapping: next, told, asks: asksOf(next), errors: [] } };
}

function refuseStrangeColumn({ columns }: Mapping, { column }: MappingChange): void {
  if (column === undefined || columns.some(({ letter }) => letter === column)) return;
  const expected = `one of the columns ${columns.map(({ letter }) => letter).join(', ')}`.slice(0, 200);
  throw inputRefusal({ code: 'not-a-choice', path: 'change.column', expected, got: column, hint: 'Choose another.' });
}

function noSheet(sheets: readonly Sheet[], sheet: number) {
  const expected = sheets.length === 0 ? 'a file with a sheet' : `a sheet from 0 to ${sheets.length - 1}`;
  return inputRefusal({ code: 'not-a-choice', path: 'sheet', expected, got: String(sheet), hint: 'Choose another.' });
}

/** Headings of the columns of a sheet that have one. */
export function headingsOf(columns: readonly { readonly heading: string }[]): string[] {
  return columns.map(({ heading }) => heading).filter((heading) => heading !== '');
}
