import { excerpt, type InputError } from '../../../records/index.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { findHeader, type Header } from '../headings/headerRow.ts';
import { commonAliases } from '../headings/aliases.ts';
import { folded } from '../headings/words.ts';
import { nameOfKind, rowKinds, type RowKind } from '../kinds.ts';
import { widthOf, type Table } from '../table.ts';
import { asksOf, kindAsk } from './asks.ts';
import { filledCells } from './columnFigures.ts';
import { columnsOf, type ColumnDesk } from './columns.ts';
import { kindScores, kindsInColumn, type KindScore } from './kindOf.ts';
import type { Ask, Column, Mapping, MappingTold } from './mapping.ts';
import { remembering } from './remembered.ts';
import { statedUnits } from './statedUnits.ts';
import { sameTarget } from './target.ts';

/** What is known beforehand of a table. */
export interface GuessOptions {
  /** What its rows are, where a person said so. */
  readonly kind?: RowKind;
  /** Name of the sheet or file. */
  readonly sheetName?: string;
  /** Mappings used before: one with the same headings is taken again. */
  readonly remembered?: readonly Mapping[];
  /** Whose units figures without one are in, where a person said so. */
  readonly system?: UnitSystem;
}

/** The mapping guessed for a table, how sure it is, what it takes for granted, and what has to be asked. */
export interface MappingGuess {
  /** Null where the table is no sheet of records; `errors` say why. */
  readonly mapping: Mapping | null;
  /** How much of the table is known [0–1]. */
  readonly confidence: number;
  /** How well the table fits each kind, the best first. */
  readonly kinds: readonly KindScore[];
  readonly told: readonly MappingTold[];
  readonly asks: readonly Ask[];
  readonly errors: readonly InputError[];
}

/** A table of records has at least so much in it that is known: a name and one thing more. */
const leastKnown = 1.4;

/**
 * Guesses what each column of a table holds: finds its headings among titles, merged cells and empty columns, what its rows are, which column
 * is which field by the many ways people head them, and the unit and reference points of each. Nothing is taken silently: `told` has
 * a sentence for each thing taken for granted, `asks` a question for each thing that may mean two.
 *
 * @param table the sheet as texts [rows of cells]
 * @param options what is known beforehand [record]
 * @returns the mapping, or why there is none [record]
 * @example guessMapping([['Model', 'Mast ht (in)'], ['Harl rake', '18']]).mapping?.columns[1]?.unit // 'in'
 */
export function guessMapping(table: Table, options: GuessOptions = {}): MappingGuess {
  const scores = kindScores(table, options.sheetName ?? '');
  const kinds = options.kind === undefined ? scores : scores.filter(({ kind }) => kind === options.kind);
  const [best] = kinds;
  const header = best === undefined ? null : findHeader(table, [best.kind]);
  if (best === undefined || header === null || header.score < leastKnown) return noMapping(table, scores);
  return settledGuess(table, header, scores, best.kind, options);
}

function settledGuess(
  table: Table,
  found: Header,
  scores: readonly KindScore[],
  best: RowKind,
  options: GuessOptions,
): MappingGuess {
  const told: MappingTold[] = [];
  const inColumn = namedKinds(table, found);
  const kinds = inColumn.length === 0 ? [best] : inColumn;
  const header = kinds.length > 1 ? (findHeader(table, kinds) ?? found) : found;
  const guessed = plainMapping(table, header, kinds, options.system ?? null, told);
  const plain = inColumn.length === 0 ? { ...guessed, columns: withoutKinds(guessed.columns) } : guessed;
  const mapping = remembering(plain, options.remembered ?? [], told);
  tellShared(mapping, told);
  tellUnknown(table, mapping, told);
  tellGrade(mapping, told);
  const isOpen = options.kind === undefined && inColumn.length === 0;
  const asks = [...(isOpen ? kindAsks(mapping.kind, closeKinds(scores)) : []), ...asksOf(mapping)];
  const known = mapping.columns.filter(({ target }) => target.role !== 'ignore').length;
  const headed = mapping.columns.filter(({ heading }) => heading !== '').length;
  const errors = hasName(mapping) ? [] : [noName];
  return { mapping, confidence: known / Math.max(1, headed), kinds: scores, told, asks, errors };
}

/** The kinds that a column of kinds names; none where there is no such column. */
function namedKinds(table: Table, { guesses, firstRow }: Header): RowKind[] {
  const index = guesses.findIndex(({ target }) => target.role === 'recordKind');
  return index < 0 ? [] : kindsInColumn(table, firstRow, index);
}

/** A column that is headed as one of kinds and names none is no such column. */
function withoutKinds(columns: readonly Column[]): Column[] {
  return columns.map((column) =>
    column.target.role === 'recordKind' ? { ...column, target: { role: 'ignore' } } : column,
  );
}

function plainMapping(
  table: Table,
  header: Header,
  kinds: readonly RowKind[],
  system: UnitSystem | null,
  told: MappingTold[],
): Mapping {
  const stated = statedUnits(table, header.rows, header.firstRow);
  const desk: ColumnDesk = { table, firstRow: header.firstRow, kinds, system, stated, told };
  const columns = withName(columnsOf(header, desk), desk);
  const [kind = 'implement'] = kinds;
  const others = kinds.length > 1 ? { otherKinds: kinds } : {};
  return { kind, ...others, headingRows: header.rows, firstRow: header.firstRow, columns, system };
}

function kindAsks(kind: RowKind, rivals: readonly RowKind[]): Ask[] {
  return rivals.length === 0 ? [] : [kindAsk(kind, rivals)];
}

const close = 0.92;

/** Other kinds that the table fits about as well as the best. */
function closeKinds(scores: readonly KindScore[]): RowKind[] {
  const [best, ...others] = scores;
  return others.filter(({ score }) => score > 0 && score >= (best?.score ?? 0) * close).map(({ kind }) => kind);
}

function hasName({ columns }: Mapping): boolean {
  return columns.some(({ target }) => target.role === 'name' || target.role === 'id');
}

const noName: InputError = {
  code: 'missing',
  path: '',
  expected: 'a column of names or numbers that tell the records apart',
  got: 'none',
  hint: 'Choose the column that says what each row is called.',
};

/** Of several columns that may hold the name the likeliest holds it; where none is headed so, the first of plain texts does. */
function withName(columns: readonly Column[], desk: ColumnDesk): Column[] {
  const ranked = [...columns]
    .filter(({ target }) => target.role === 'name')
    .sort((a, b) => rankOfName(a) - rankOfName(b));
  const [first] = ranked;
  if (first === undefined)
    return columns.some(({ target }) => target.role === 'id') ? [...columns] : withTextAsName(columns, desk);
  for (const { letter, heading } of ranked.slice(1)) {
    const sentence = `“${heading}” is left out: “${first.heading}” holds the name.`;
    desk.told.push({ column: letter, row: null, sentence });
  }
  return columns.map((column) =>
    column.target.role === 'name' && column !== first ? { ...column, target: { role: 'ignore' } } : column,
  );
}

function rankOfName({ heading, confidence }: Column): number {
  const rank = commonAliases.name.findIndex((alias) => folded(alias) === folded(heading));
  return confidence >= 0.95 ? -1 : rank;
}

function withTextAsName(columns: readonly Column[], desk: ColumnDesk): Column[] {
  const index = columns.findIndex((column, i) => {
    if (column.target.role !== 'ignore' || column.rivals.length > 0) return false;
    const texts = filledCells(desk.table, desk.firstRow, i);
    const lettered = texts.filter((text) => /\p{L}{2}/u.test(text)).length;
    return texts.length > 0 && lettered >= texts.length * 0.8 && new Set(texts).size >= texts.length * 0.7;
  });
  const chosen = columns[index];
  if (chosen === undefined) return [...columns];
  const heading = chosen.heading === '' ? `column ${chosen.letter}` : `“${chosen.heading}”`;
  desk.told.push({
    column: chosen.letter,
    row: null,
    sentence: `No column is headed as a name: ${heading} was taken for it.`,
  });
  return columns.map((column) =>
    column === chosen ? { ...column, target: { role: 'name' }, confidence: 0.5 } : column,
  );
}

/** Several columns for one field: all are read, the first that says something holds, and they have to agree. */
function tellShared({ columns, otherKinds }: Mapping, told: MappingTold[]): void {
  columns.forEach((column, i) => {
    if (column.target.role === 'ignore' || otherKinds !== undefined) return;
    const earlier = columns.slice(0, i).find((other) => sameTarget(other.target, column.target));
    if (earlier === undefined) return;
    const rule =
      column.target.role === 'field'
        ? 'the first that says something holds, and the other has to agree'
        : 'the first that says something holds';
    const sentence = `“${earlier.heading}” and “${column.heading}” say the same: ${rule}.`;
    told.push({ column: column.letter, row: null, sentence });
  });
}

/** Columns that are not known are named, so that nothing is lost unseen. */
function tellUnknown(table: Table, { columns, firstRow }: Mapping, told: MappingTold[]): void {
  columns.forEach(({ letter, heading, target, rivals }, i) => {
    const isTold = told.some(({ column }) => column === letter);
    if (target.role !== 'ignore' || rivals.length > 0 || isTold || filledCells(table, firstRow, i).length === 0) return;
    const name = heading === '' ? 'A column without a heading' : `“${heading}”`;
    told.push({ column: letter, row: null, sentence: `${name} is not known: left out. It can be kept as it stands.` });
  });
}

/** A column that says who measured, how or with what makes measured readings of listed ones. */
function tellGrade({ columns }: Mapping, told: MappingTold[]): void {
  const column = columns.find(
    ({ target }) => target.role === 'who' || target.role === 'method' || target.role === 'tool',
  );
  if (column === undefined) return;
  const sentence = `Where “${column.heading}” is filled in, figures count as measured; the others as listed.`;
  told.push({ column: column.letter, row: null, sentence });
}

function noMapping(table: Table, kinds: readonly KindScore[]): MappingGuess {
  return { mapping: null, confidence: 0, kinds, told: [], asks: [], errors: [noHeadings(table)] };
}

function noHeadings(table: Table): InputError {
  const expected = 'a row of headings such as Model, Category, Mast height';
  if (table.length === 0 || widthOf(table) === 0)
    return { code: 'empty', path: '', expected, got: 'an empty sheet', hint: 'Choose another sheet or file.' };
  const firstColumn = [table.slice(0, 60).map((row) => row[0] ?? '')];
  const runsDown = rowKinds.find((kind) => (findHeader(firstColumn, [kind])?.score ?? 0) >= 3);
  const hint =
    runsDown === undefined
      ? 'Choose another sheet, or head its columns with what they hold.'
      : `The headings of ${nameOfKind(runsDown)}s seem to run down the first column: swap rows and columns first.`;
  return {
    code: 'missing',
    path: '',
    expected,
    got: excerpt((table.find((row) => row.some((cell) => cell !== '')) ?? []).join(' | ')),
    hint,
  };
}
