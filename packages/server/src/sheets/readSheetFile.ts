import { readCsv } from './csv/readCsv.ts';
import { limits } from './limits.ts';
import type { SheetFile, SheetFileReading } from './sheetFile.ts';
import { notThis, SheetTrouble, tooMuch } from './trouble.ts';
import { readXlsx } from './xlsx/readXlsx.ts';

/**
 * Reads a spreadsheet file, CSV or XLSX by its content, whatever it is called: its sheets with every cell as a person sees it. Dates are marked,
 * because a spreadsheet makes dates of fractions, and so are the saved results of formulas; nothing in the file is ever run. Whatever is
 * too large, packed to mislead, or reaches out of the file is refused.
 *
 * @param bytes the file [bytes]
 * @param name its name, for the name of the sheet of a CSV file [text]
 * @returns the sheets, or what is wrong with the file [InputError]
 */
export async function readSheetFile(bytes: Uint8Array, name: string): Promise<SheetFileReading> {
  try {
    return { ok: true, file: await read(bytes, name) };
  } catch (problem) {
    if (!(problem instanceof SheetTrouble)) throw problem;
    return { ok: false, errors: [problem.error] };
  }
}

async function read(bytes: Uint8Array, name: string): Promise<SheetFile> {
  if (bytes.length === 0) throw notThis('a CSV or XLSX file', 'an empty file', 'Choose another file.');
  if (bytes.length > limits.file)
    throw tooMuch(`at most ${limits.file / 1e6} MB`, `${(bytes.length / 1e6).toFixed(1)} MB`);
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const start = buffer.toString('latin1', 0, 8);
  if (start.startsWith('PK')) return readXlsx(buffer);
  if (start === '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1') {
    const hint = 'Save it as XLSX without a password in a spreadsheet program.';
    throw notThis('a CSV or XLSX file', 'an old binary workbook (.xls), or one with a password', hint);
  }
  return readCsv(bytes, name);
}
