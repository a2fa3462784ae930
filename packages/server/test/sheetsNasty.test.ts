import { describe, expect, test } from 'vitest';
import { guessSheet, readTable, wrongSheet, type RowReading } from '@hitchwright/core/exchange';
import { readSheetFile } from '../src/sheets/index.ts';
import { escaped, workbook } from './sheetsWorkbook.ts';

type Written = string | { readonly style?: number; readonly value: string; readonly formula?: string };

/** A cell of text, or of a number in a style, or of a formula with its saved result. */
function cell(row: number, column: number, written: Written): string {
  const address = `${String.fromCharCode(65 + column)}${row}`;
  if (written === '') return '';
  if (typeof written === 'string') return `<c r="${address}" t="inlineStr"><is><t>${escaped(written)}</t></is></c>`;
  const formula = written.formula === undefined ? '' : `<f>${escaped(written.formula)}</f>`;
  return `<c r="${address}" s="${written.style ?? 0}">${formula}<v>${written.value}</v></c>`;
}

function sheet(rows: readonly (readonly Written[])[]): string {
  return rows
    .map((cells, i) => `<row r="${i + 1}">${cells.map((written, k) => cell(i + 1, k, written)).join('')}</row>`)
    .join('');
}

/** Styles by their number: 1 shows inch marks, 2 a day, 3 a fraction. */
const formats = ['0.0##\\"', 'd-mmm', '# ??/??'];
const number = (value: string, style = 0): Written => ({ value, style });

/** Everything that a spreadsheet program does to a list of implements that people keep for years. */
const file = workbook({
  formats,
  sheets: {
    Hours: sheet([
      ['Week', 'Who', 'Hours'],
      [number('1'), 'Jo', number('40')],
    ]),
    'Implements 2026': sheet([
      ['Harl & Tarn, hire yard'],
      [],
      ['', 'Lower pins', '', '', 'Top pin', '', 'Weight', '', ''],
      ['Attachment', 'Ø', 'span (shoulder)', 'usable length', 'Ø', 'ht', '', 'Type', 'CG behind pins (mm)'],
      [
        'Harl rake',
        number('0.875', 3),
        number('26.5', 1),
        number('2.375', 1),
        number('0.75', 3),
        number('18', 1),
        '331 lb',
        '',
        number('838'),
      ],
      [
        'Tarn ripper',
        number('46089', 2),
        number('683'),
        '2 3/8',
        '1"',
        { value: '20.5', style: 1, formula: 'F5+2.5' },
        '250 kg',
        'ripper',
        '1.016',
      ],
      ['Wickset topper', '22,2 mm', '27ish', '60 mm', number('19.05'), '18-18 1/2', number('700'), 'topper', ''],
      ['Total', '', '', '', '', '', { value: '1031', formula: 'SUM(G5:G7)' }, '', ''],
    ]),
  },
});

const read = await readSheetFile(file, 'yard.xlsx');
if (!read.ok) throw new Error(JSON.stringify(read.errors));
const { sheets } = read.file;
const guess = guessSheet(sheets);
const chosen = guess.best ?? 0;
const mapping = guess.guesses[chosen]?.mapping;
if (mapping == null) throw new Error('no mapping');
const { readings, tally } = readTable(sheets[chosen]?.rows ?? [], mapping);

const leaf = ({ record }: RowReading, field: string): unknown => record?.readings[field]?.leaf;
const errors = (reading: RowReading): string[] =>
  reading.errors.map(({ column, row, code }) => `${column}${row} ${code}`);

describe('a workbook that people have kept for years', () => {
  const [rake, ripper, topper, totals] = readings as [RowReading, RowReading, RowReading, RowReading];

  test('the sheet with the records is found, and the other told to be the wrong one', () => {
    expect(sheets[chosen]?.name).toBe('Implements 2026');
    expect(wrongSheet(sheets, guess, 0)?.hint).toContain('The sheet “Implements 2026” fits better');
  });

  test('its headings stand under a title, in two rows with merged groups', () => {
    expect(mapping.headingRows).toEqual([2, 3]);
    expect(mapping.columns.map(({ target }) => ('field' in target ? target.field : target.role))).toEqual([
      'name',
      'lowerPinDiameter',
      'shoulderSpan',
      'standOut',
      'upperPinDiameter',
      'mastHeight',
      'mass',
      'work',
      'centreBehind',
    ]);
  });

  test('units come from number formats, cells, headings, or the only one that fits; each guess is told', () => {
    expect(leaf(rake, 'shoulderSpan')).toBe('26.5"');
    expect(leaf(rake, 'lowerPinDiameter')).toBe('0.875 in');
    expect(leaf(rake, 'centreBehind')).toBe('838 mm');
    expect(leaf(ripper, 'shoulderSpan')).toBe('683 mm');
    expect(ripper.told.map(({ column, about }) => `${column} ${about}`)).toContain('C unit');
    expect(leaf(topper, 'lowerPinDiameter')).toBe('22,2 mm');
    expect(leaf(topper, 'shoulderSpan')).toEqual({ value: '27 in', plusMinus: '1 in' });
    expect(leaf(topper, 'mastHeight')).toEqual({ between: ['18 in', '18 1/2 in'] });
  });

  test('a fraction that became a day, and figures that may mean two things, are refused where they stand', () => {
    expect(errors(ripper)).toEqual(['B6 not-a-quantity', 'I6 ambiguous']);
    expect(ripper.errors[0]?.hint).toContain('this is 8 March 2026; was 3/8 meant?');
    expect(errors(topper)).toEqual(['G7 ambiguous']);
    expect(errors(rake)).toEqual([]);
  });

  test('a formula is taken by its saved result, and told', () => {
    expect(leaf(ripper, 'mastHeight')).toBe('20.5"');
    expect(ripper.told.map(({ column, about }) => `${column} ${about}`)).toContain('F formula');
  });

  test('totals are left out', () => {
    expect(totals.outcome).toBe('skipped');
    expect(tally).toMatchObject({ records: 3, skipped: 1 });
  });
});
