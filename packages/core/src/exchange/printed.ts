import type { Outcome } from '../engine/assess/index.ts';
import type { SetupDocument } from '../records/index.ts';
import { linkOf } from './link.ts';

/** What a sheet said when it was printed. */
export interface Printed {
  /** The day that the sheet bears [ISO 8601]. */
  readonly date: string;
  readonly verdict: Outcome;
}

const verdicts: readonly Outcome[] = ['works', 'withParts', 'willNot', 'measureFirst', 'notChecked', 'notNeeded'];

/**
 * The fragment that opens a setup and tells what was printed of it: `1.…&printed=2026-11-26.withParts`.
 *
 * @param document the setup [JSON]
 * @param printed the verdict that is printed, and the day of the sheet [record]
 * @returns the fragment without `#` [text]
 */
export function printedLinkOf(document: SetupDocument, { date, verdict }: Printed): string {
  return `${linkOf(document)}&printed=${date}.${verdict}`;
}

/**
 * Takes a fragment apart into the link of its setup and what a sheet said of it. Whatever else stands behind the link is let be, so that a
 * later kind of sheet still opens here.
 *
 * @param fragment the fragment, with or without `#` [text]
 * @returns the link for `readLink`, and what was printed; null where nothing of it can be read [record]
 */
export function readPrinted(fragment: string): { readonly link: string; readonly printed: Printed | null } {
  const [link = '', ...rest] = fragment.replace(/^#/, '').split('&');
  const said = rest.find((one) => one.startsWith('printed='))?.slice('printed='.length) ?? '';
  const [, date, word] = /^(\d{4}-\d\d-\d\d)\.(\w+)$/.exec(said) ?? [];
  const verdict = verdicts.find((one) => one === word);
  return {
    link,
    printed: date === undefined || Number.isNaN(Date.parse(date)) || verdict === undefined ? null : { date, verdict },
  };
}
