import { unsafeCell } from './writing/safeCell.ts';

/** Two characters of the private use area, which no keyboard writes, stand before what a sheet keeps beside a text. */
const dateMark = '\ue0d1';
const formulaMark = '\ue0f1';
const anyMark = /[\ue0d1\ue0f1]/g;

/** Control characters but tabs and line ends, and halves of characters: nothing that a person wrote. */
const unreadable = /[\p{Cs}\x00-\x08\x0b\x0c\x0e-\x1f\x7f]/gu;

/** A cell taken apart: its text, and whether the sheet keeps it as a date or had worked it out. */
export interface Cell {
  readonly text: string;
  readonly isDate: boolean;
  readonly isFormula: boolean;
}

/**
 * The text of a cell that its sheet keeps as a date.
 *
 * @param iso the day, as in 2026-03-08 [ISO 8601]
 * @returns the text with its mark [cell]
 */
export function markedDate(iso: string): string {
  return dateMark + iso;
}

/**
 * The text of a cell that was a formula: what it came to when the sheet was saved.
 *
 * @param text the saved result, itself perhaps a marked date [cell]
 * @returns the text with its mark [cell]
 */
export function markedFormula(text: string): string {
  return formulaMark + text;
}

/**
 * The text of a cell as a person sees it, without marks.
 *
 * @param raw a cell of a table [cell]
 * @returns its text [text]
 */
export function shownText(raw: string): string {
  return raw.replace(anyMark, '');
}

/** A cell taken apart; the apostrophe that `safeCell` puts before a dangerous text is taken off again. */
export function cellOf(raw: string): Cell {
  const text = unsafeCell(shownText(raw).replace(unreadable, '')).trim();
  return { text, isDate: raw.includes(dateMark), isFormula: raw.startsWith(formulaMark) };
}
