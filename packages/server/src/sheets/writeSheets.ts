import { stringify } from 'csv-stringify';
import writeXlsxFile from 'write-excel-file/node';
import { safeCell, shownText, type Sheet, type Table } from '@hitchwright/core/exchange';

/**
 * A table as CSV in UTF-8 with a mark that spreadsheets know it by. Every cell is quoted, so that no other sign can cut it in two, and no cell
 * is one that a spreadsheet would run.
 *
 * @param rows the table [rows of cells]
 * @returns the file [bytes]
 */
export function writeCsv(rows: Table): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const cells = rows.map((row) => row.map((cell) => safeCell(shownText(cell))));
    stringify(cells, { quoted: true, quoted_empty: true, bom: true, record_delimiter: 'windows' }, (problem, text) => {
      if (problem != null) reject(problem);
      else resolve(Buffer.from(text, 'utf8'));
    });
  });
}

/** A number that is written as one: not `007`, and nothing that would lose digits. */
const plainNumber = /^-?(?:0|[1-9]\d{0,14})(?:\.\d{1,10})?$/;

/**
 * Tables as an XLSX workbook, one sheet for each. Plain numbers, negative ones too, are numbers; everything else is text that no spreadsheet takes for
 * a formula.
 *
 * @param sheets names and tables [list]
 * @returns the file [bytes]
 */
export async function writeXlsx(sheets: readonly Sheet[]): Promise<Uint8Array> {
  const taken = new Set<string>();
  const data = sheets.map(({ name, rows }) => ({
    sheet: sheetName(name, taken),
    stickyRowsCount: 1,
    data: rows.map((row, i) => row.map((cell) => cellOf(shownText(cell), i === 0))),
  }));
  return writeXlsxFile(data).toBuffer();
}

function cellOf(text: string, isHeading: boolean) {
  if (text === '') return null;
  const isNumber = plainNumber.test(text) && String(Number(text)) === text;
  if (isNumber && !isHeading) return { value: Number(text), type: Number };
  return isHeading ? { value: text, type: String, fontWeight: 'bold' as const } : { value: text, type: String };
}

const longestName = 31;

/** Names of sheets are short, without some signs, and each its own. Source: ECMA-376-1, 18.2.19 (sheet), and what spreadsheets refuse. */
function sheetName(name: string, taken: Set<string>): string {
  const plain =
    name
      .replace(/[[\]:*?/\\\p{Cc}\p{Cs}]/gu, ' ')
      .replace(/^'+|'+$/g, '')
      .trim()
      .slice(0, longestName) || 'Sheet';
  let own = plain;
  for (let i = 2; taken.has(own.toLowerCase()); i += 1) own = `${plain.slice(0, longestName - 4)} ${i}`;
  taken.add(own.toLowerCase());
  return own;
}
