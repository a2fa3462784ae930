import { setImmediate } from 'node:timers/promises';
import { markedFormula } from '@hitchwright/core/exchange';
import { limits } from '../limits.ts';
import { damaged, tooMuch } from '../trouble.ts';
import { shownNumber, type NumberFormat } from './formats.ts';
import { Scanner } from './scan.ts';
import { withoutEscapes } from './texts.ts';

/** What the cells of a sheet refer to. */
export interface Workbook {
  readonly texts: readonly string[];
  readonly formats: readonly NumberFormat[];
  readonly is1904: boolean;
}

/** The cells of a sheet as texts, and what was seen on the way. */
export interface SheetCells {
  readonly rows: string[][];
  readonly hiddenRows: number;
  /** Formulas whose result was not saved. */
  readonly emptyFormulas: number;
}

interface Cell {
  row: number;
  column: number;
  type: string;
  style: number;
  value: string;
  isFormula: boolean;
  hasValue: boolean;
}

/** Tokens between two looks at whatever else the server has to do. */
const tokensAtOnce = 100_000;

/** Reads one sheet. A formula is never worked out: its saved result is taken, and marked. */
export async function readSheetCells(xml: string, workbook: Workbook, budget: { cells: number }): Promise<SheetCells> {
  const reader = new CellReader(workbook, budget);
  const scanner = new Scanner(xml);
  let seen = 0;
  for (let token = scanner.next(); token !== 'end'; token = scanner.next()) {
    if (token === 'open') reader.open(scanner);
    else if (token === 'close') reader.close(scanner.name);
    else reader.text(scanner.value);
    seen += 1;
    if (seen % tokensAtOnce === 0) await setImmediate();
  }
  return reader;
}

class CellReader implements SheetCells {
  readonly rows: string[][] = [];
  hiddenRows = 0;
  emptyFormulas = 0;
  private row = 0;
  private column = 0;
  private cell: Cell | null = null;
  private reading: 'value' | null = null;
  private pronounced = 0;

  constructor(
    private readonly workbook: Workbook,
    private readonly budget: { cells: number },
  ) {}

  open(scanner: Scanner): void {
    const { name } = scanner;
    if (name === 'row') this.openRow(scanner);
    if (name === 'c') this.openCell(scanner);
    if (this.cell === null) return;
    if (name === 'f') this.cell.isFormula = true;
    if (name === 'rPh') this.pronounced += 1;
    if (name === 'v' || name === 't') {
      this.reading = 'value';
      this.cell.hasValue = true;
    }
  }

  text(value: string): void {
    if (this.cell === null || this.reading === null || this.pronounced > 0) return;
    this.cell.value += value;
  }

  close(name: string): void {
    if (name === 'v' || name === 't') this.reading = null;
    if (name === 'rPh') this.pronounced -= 1;
    if (name !== 'c' || this.cell === null) return;
    this.keep(this.cell);
    this.cell = null;
  }

  private openRow(scanner: Scanner): void {
    const given = scanner.attribute('r');
    this.row = given === null ? this.row + 1 : wholeNumber(given);
    this.column = 0;
    if (scanner.attribute('hidden') === '1') this.hiddenRows += 1;
  }

  private openCell(scanner: Scanner): void {
    const address = scanner.attribute('r');
    const place = address === null ? { row: this.row, column: this.column + 1 } : placeOf(address);
    this.column = place.column;
    this.pronounced = 0;
    this.cell = {
      row: place.row,
      column: place.column,
      type: scanner.attribute('t') ?? 'n',
      style: Number(scanner.attribute('s') ?? '0'),
      value: '',
      isFormula: false,
      hasValue: false,
    };
  }

  private keep(cell: Cell): void {
    const shown = this.shown(cell);
    if (cell.isFormula && !cell.hasValue) this.emptyFormulas += 1;
    if (shown === '') return;
    if (cell.row < 1) throw damaged('a cell without a row');
    if (cell.row > limits.rows) throw tooMuch(`at most ${limits.rows} rows`, `row ${cell.row}`);
    if (cell.column > limits.columns) throw tooMuch(`at most ${limits.columns} columns`, `column ${cell.column}`);
    if (shown.length > limits.cell) throw tooMuch(`at most ${limits.cell} characters in a cell`, `${shown.length}`);
    this.budget.cells -= 1;
    if (this.budget.cells < 0) throw tooMuch(`at most ${limits.cells} filled cells`, 'more');
    while (this.rows.length < cell.row) this.rows.push([]);
    const row = this.rows[cell.row - 1] as string[];
    while (row.length < cell.column) row.push('');
    row[cell.column - 1] = cell.isFormula ? markedFormula(shown) : shown;
  }

  private shown({ type, style, value }: Cell): string {
    const { texts, formats, is1904 } = this.workbook;
    if (type === 's') return sharedText(texts, value);
    if (type === 'b') return value === '' ? '' : value === '1' ? 'TRUE' : 'FALSE';
    const number = type === 'n' && value !== '' ? Number(value) : NaN;
    const format = formats[style];
    if (!Number.isFinite(number)) return withoutEscapes(value);
    return shownNumber(number, format ?? { isDate: false, isPercent: false, before: '', behind: '' }, is1904);
  }
}

function sharedText(texts: readonly string[], value: string): string {
  if (value === '') return '';
  const text = texts[wholeNumber(value)];
  if (text === undefined) throw damaged('a cell whose text is not there');
  return text;
}

function wholeNumber(text: string): number {
  if (!/^\d{1,7}$/.test(text)) throw damaged('a number that is none');
  return Number(text);
}

/** `B7` → row 7, column 2. */
function placeOf(address: string): { row: number; column: number } {
  let [at, column, row] = [0, 0, 0];
  for (let code = address.charCodeAt(0); code >= 65 && code <= 90; code = address.charCodeAt(at)) {
    column = column * 26 + code - 64;
    at += 1;
  }
  const letters = at;
  for (let code = address.charCodeAt(at); code >= 48 && code <= 57; code = address.charCodeAt(at)) {
    row = row * 10 + code - 48;
    at += 1;
  }
  const isWhole = letters > 0 && letters < 4 && at > letters && at < letters + 8 && at === address.length;
  if (!isWhole) throw damaged('a cell that is nowhere');
  return { row, column };
}
