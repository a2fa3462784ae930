import type { InputError } from '../../../records/index.ts';
import type { Table } from '../table.ts';
import { guessMapping, type GuessOptions, type MappingGuess } from './guessMapping.ts';

/** One sheet of a file: its name, and its cells as texts. */
export interface Sheet {
  readonly name: string;
  readonly rows: Table;
}

/** The guess for every sheet of a file, and which of them is the one to read. */
export interface SheetGuess {
  /** Index of the sheet that fits best, counted from 0; null where none fits. */
  readonly best: number | null;
  readonly guesses: readonly MappingGuess[];
}

/**
 * Guesses which sheet of a file holds records, and the mapping of each.
 *
 * @param sheets the sheets of a file [list]
 * @param options what is known beforehand [record]
 * @returns the guesses in the order of the sheets, and the best of them [record]
 */
export function guessSheet(sheets: readonly Sheet[], options: GuessOptions = {}): SheetGuess {
  const guesses = sheets.map(({ name, rows }) => guessMapping(rows, { ...options, sheetName: name }));
  const scores = guesses.map(scoreOf);
  const highest = Math.max(0, ...scores);
  return { best: highest === 0 ? null : scores.indexOf(highest), guesses };
}

function scoreOf({ mapping, kinds }: MappingGuess): number {
  return mapping === null ? 0 : (kinds.find(({ kind }) => kind === mapping.kind)?.score ?? 0);
}

/** A sheet of which less than this share is known is asked about, where another fits better. */
const wellKnown = 0.5;

/**
 * Whether the sheet that a person chose looks like the wrong one: few of its columns are known, and another sheet fits better.
 *
 * @param sheets the sheets of a file [list]
 * @param guess what was guessed for them [record]
 * @param chosen the sheet that was chosen, counted from 0 [index]
 * @returns what is wrong and which sheet fits better, or null [InputError]
 */
export function wrongSheet(sheets: readonly Sheet[], guess: SheetGuess, chosen: number): InputError | null {
  const mine = guess.guesses[chosen];
  if (mine === undefined || (mine.mapping !== null && mine.confidence >= wellKnown)) return null;
  const better = betterSheet(sheets, guess, chosen);
  if (better === null && mine.mapping !== null) return null;
  const expected = 'a sheet whose columns are known';
  const got = `“${sheets[chosen]?.name ?? ''}”: ${knownOf(mine)}`;
  return { code: 'missing', path: '', expected, got, hint: better ?? mine.errors[0]?.hint ?? 'Choose another file.' };
}

function betterSheet(sheets: readonly Sheet[], { best, guesses }: SheetGuess, chosen: number): string | null {
  const guess = best === null || best === chosen ? undefined : guesses[best];
  if (best === null || guess === undefined) return null;
  return `The sheet “${sheets[best]?.name ?? ''}” fits better: ${knownOf(guess)}.`;
}

function knownOf({ mapping }: MappingGuess): string {
  if (mapping === null) return 'no headings found';
  const headed = mapping.columns.filter(({ heading }) => heading !== '').length;
  const known = mapping.columns.filter(({ heading, target }) => heading !== '' && target.role !== 'ignore').length;
  return `${known} of ${headed} columns known`;
}
