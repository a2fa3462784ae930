import { Readable } from 'node:stream';
import { parse, type Parser } from 'csv-parse';
import { shownText } from '@hitchwright/core/exchange';
import { limits } from '../limits.ts';
import type { SheetFile } from '../sheetFile.ts';
import { notThis, tooMuch } from '../trouble.ts';
import { decode } from './decode.ts';
import { delimiterNames, delimiterOf, separatorLine } from './delimiter.ts';

/** Text is handed to the parser in pieces, so that the server can do other things between them [characters]. */
const piece = 256_000;

/** Reads a CSV file: one sheet, its cells as they stand, rows as ragged as they are. */
export async function readCsv(bytes: Uint8Array, name: string): Promise<SheetFile> {
  const { text, guessed } = decode(bytes);
  if (/^\s*(?:<!doctype html|<html|<table|<\?xml)/i.test(text))
    throw notThis(
      'a CSV or XLSX file',
      'a web page or XML',
      'Open it in a spreadsheet program and save it as XLSX or CSV.',
    );
  const delimiter = delimiterOf(text);
  const parser = parserFor(delimiter);
  const rows = await parsed(text.replace(separatorLine, ''), parser);
  const told = [
    ...(guessed === null ? [] : [`The file does not say its encoding: read as ${guessed}.`]),
    ...(delimiter === ',' ? [] : [`Columns are set apart by ${delimiterNames[delimiter]}.`]),
  ];
  return { sheets: [{ name: name.replace(/\.[a-z0-9]{1,5}$/i, ''), rows }], told };
}

/** Inch marks stand in cells without quotes round them, and rows are as long as they are. */
function parserFor(delimiter: string): Parser {
  return parse({
    delimiter,
    relax_quotes: true,
    relax_column_count: true,
    skip_empty_lines: false,
    max_record_size: 1_000_000,
  });
}

async function parsed(text: string, parser: Parser): Promise<string[][]> {
  const rows: string[][] = [];
  const budget = { cells: limits.cells };
  const source = Readable.from(pieces(text));
  source.pipe(parser);
  try {
    for await (const record of parser) keep(record as string[], rows, budget);
  } catch (problem) {
    source.destroy();
    if (isCsvProblem(problem))
      throw notThis('a CSV file', problem.message, 'Look at the quotes near there, or save it as XLSX.');
    throw problem;
  }
  while (rows.at(-1)?.length === 0) rows.pop();
  return rows;
}

function* pieces(text: string): Generator<string> {
  for (let at = 0; at < text.length; at += piece) yield text.slice(at, at + piece);
}

function isCsvProblem(problem: unknown): problem is Error {
  return problem instanceof Error && /^CSV_/.test(String((problem as { code?: unknown }).code));
}

function keep(record: readonly string[], rows: string[][], budget: { cells: number }): void {
  let width = record.length;
  while (width > 0 && (record[width - 1] ?? '').trim() === '') width -= 1;
  const row = record.slice(0, width).map(shownText);
  const longest = row.find((cell) => cell.length > limits.cell);
  if (longest !== undefined) throw tooMuch(`at most ${limits.cell} characters in a cell`, `${longest.length}`);
  if (width > limits.columns) throw tooMuch(`at most ${limits.columns} columns`, `${width}`);
  budget.cells -= width;
  if (budget.cells < 0) throw tooMuch(`at most ${limits.cells} filled cells`, 'more');
  if (width > 0 && rows.length >= limits.rows) throw tooMuch(`at most ${limits.rows} rows`, 'more');
  if (rows.length < limits.rows + 1) rows.push(row);
}
