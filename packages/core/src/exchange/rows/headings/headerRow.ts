import type { RowKind } from '../kinds.ts';
import { fieldOfTarget, holdsFigures } from '../mapping/target.ts';
import { isBlankRow, type Table } from '../table.ts';
import { guessHeading, type HeadingGuess } from './guessHeading.ts';
import { unitOf, type WrittenUnit } from './headingUnit.ts';

/** Headings found in a table, column by column, with the rows they stand in, counted from 0. */
export interface Header {
  readonly rows: readonly number[];
  readonly firstRow: number;
  readonly headings: readonly string[];
  readonly guesses: readonly HeadingGuess[];
  /** How much of it is known: about one for each column. */
  readonly score: number;
}

/** Headings stand among these first rows; nobody writes more above them. */
const mostRowsAbove = 30;

/** Finds the headings of a table whose rows are of one of some kinds: in one row or two, titles above, units below. Null where nothing is known. */
export function findHeader(table: Table, kinds: readonly RowKind[]): Header | null {
  let best: Header | null = null;
  let above = 0;
  for (let row = 0; row < Math.min(table.length, mostRowsAbove); row += 1) {
    const alone = single(table, row, kinds);
    if (alone !== null && isOwn(alone)) return alone;
    const score = alone?.score ?? 0;
    const isPromising = Math.max(score, above) >= 1;
    for (const candidate of [alone, isPromising ? twofold(table, row, kinds) : null]) {
      if (candidate !== null && candidate.score > (best?.score ?? 0) + (candidate.rows.length - 1) * 0.4)
        best = candidate;
    }
    above = score;
  }
  return best === null ? null : withUnitsBelow(table, best);
}

/** Headings of a table that was written here: the kind of each record and its name. */
function isOwn({ guesses }: Header): boolean {
  const [first, ...others] = guesses.map(({ target }) => target.role);
  return first === 'recordKind' && (others[0] === 'name' || (others[0] === 'id' && others[1] === 'name'));
}

function single(table: Table, row: number, kinds: readonly RowKind[]): Header | null {
  const cells = table[row] ?? [];
  if (isBlankRow(cells)) return null;
  const headings = cells.map((cell) => oneLine(cell));
  const guesses = headings.map((heading) => guessAmong([heading], kinds));
  return { rows: [row], firstRow: row + 1, headings, guesses, score: scoreOf(guesses) };
}

/** A row of groups above the row of headings, each group’s cell merged over its columns so that only the first of them has a text. */
function twofold(table: Table, row: number, kinds: readonly RowKind[]): Header | null {
  const above = table[row - 1];
  const cells = table[row] ?? [];
  if (above === undefined || isBlankRow(above) || isBlankRow(cells)) return null;
  const taken = new Set<string>();
  let group = '';
  const columns = cells.map((cell, i) => {
    const head = oneLine(above[i] ?? '');
    if (head !== '') group = head;
    const column = inGroup(group, oneLine(cell), head, taken, kinds);
    const isMergedDown = head !== '' && oneLine(cell) === '';
    if (isMergedDown || (column.isOutside && head === '')) group = '';
    taken.add(keyOf(column.guess));
    return column;
  });
  const [headings, guesses] = [columns.map(({ heading }) => heading), columns.map(({ guess }) => guess)];
  return { rows: [row - 1, row], firstRow: row + 1, headings, guesses, score: scoreOf(guesses) };
}

interface Grouped {
  readonly heading: string;
  readonly guess: HeadingGuess;
  /** The column stands beyond the end of its group, which no text shows. */
  readonly isOutside: boolean;
}

/**
 * A heading under its group’s. It is read with the group where that makes something of it; by itself where it is known so and the group
 * makes nothing of it, or something that was there before.
 */
function inGroup(
  group: string,
  heading: string,
  head: string,
  taken: ReadonlySet<string>,
  kinds: readonly RowKind[],
): Grouped {
  const alone = guessAmong([heading === '' ? head : heading], kinds);
  if (group === '' || heading === '')
    return { heading: heading === '' ? head : heading, guess: alone, isOutside: false };
  const joint = guessAmong([`${group} ${heading}`], kinds);
  const isIdle = worthOf(joint) < enoughInGroup || taken.has(keyOf(joint)) || !isField(joint);
  const isOutside = isKnownAlone(alone) && (isIdle || !isField(alone));
  const isBetterAlone = isIdle ? worthOf(alone) > worthOf(joint) : saysSame(alone, joint);
  return isOutside || isBetterAlone
    ? { heading, guess: alone, isOutside }
    : { heading: `${group} ${heading}`, guess: joint, isOutside: false };
}

/** Known without its group; but under a group `ID` is an inside diameter. */
function isKnownAlone(alone: HeadingGuess): boolean {
  return alone.confidence >= known && alone.target.role !== 'id';
}

function saysSame(alone: HeadingGuess, joint: HeadingGuess): boolean {
  return keyOf(alone) === keyOf(joint) && alone.confidence >= joint.confidence;
}

const known = 0.85;
const enoughInGroup = 0.78;

function isField({ target }: HeadingGuess): boolean {
  return holdsFigures(target);
}

function keyOf({ target, rivals }: HeadingGuess): string {
  return `${target.role} ${fieldOfTarget(target) ?? ''}${rivals.join()}`;
}

function oneLine(cell: string): string {
  return cell.replace(/\s+/g, ' ').trim();
}

/** The surest guess for any of some texts in any of some kinds. */
export function guessAmong(texts: readonly string[], kinds: readonly RowKind[]): HeadingGuess {
  const guesses = texts.flatMap((text) => kinds.map((kind) => guessOf(text, kind)));
  return guesses.reduce((best, guess) => (worthOf(guess) > worthOf(best) ? guess : best));
}

/** A heading that is asked about is better than one that is unknown. */
function worthOf(guess: HeadingGuess): number {
  return guess.rivals.length > 0 ? 0.5 : guess.confidence;
}

const remembered = new Map<string, HeadingGuess>();
const mostRemembered = 5000;

function guessOf(text: string, kind: RowKind): HeadingGuess {
  const key = `${kind} ${text}`;
  const known = remembered.get(key);
  if (known !== undefined) return known;
  const isHeading = /\p{L}|[ø⌀#±]/u.test(text) && text.length <= 80;
  const guess = guessHeading(isHeading ? text : '', kind);
  if (remembered.size >= mostRemembered) remembered.clear();
  remembered.set(key, guess);
  return guess;
}

/** Every target counts once; what stands beside a figure counts less, and a name least of all sets one kind apart from another. */
function scoreOf(guesses: readonly HeadingGuess[]): number {
  const seen = new Set<string>();
  return guesses.reduce((sum, guess) => {
    const key = keyOf(guess);
    if (seen.has(key)) return sum;
    seen.add(key);
    const share = guess.target.role === 'field' || guess.target.role === 'name' || guess.rivals.length > 0 ? 1 : 0.6;
    return sum + worthOf(guess) * share;
  }, 0);
}

/** A row of nothing but units under the headings: `mm`, `(kg)`, `in`. */
function withUnitsBelow(table: Table, header: Header): Header {
  const cells = table[header.firstRow] ?? [];
  const units = header.headings.map((_, i) => unitIn(cells[i] ?? ''));
  const filled = cells.filter((cell) => /[^\s-]/.test(cell)).length;
  const known = units.filter((unit) => unit !== null).length;
  if (known === 0 || known < filled) return header;
  return {
    ...header,
    rows: [...header.rows, header.firstRow],
    firstRow: header.firstRow + 1,
    guesses: header.guesses.map((guess, i) => ({ ...guess, unit: guess.unit ?? units[i] ?? null })),
  };
}

function unitIn(cell: string): WrittenUnit | null {
  return unitOf(cell.replace(/^\s*[([]|[)\]]\s*$/g, ''));
}
