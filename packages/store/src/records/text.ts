import type { InputError } from '@hitchwright/core/records';

/** Longest name, title or person [characters]. */
export const longestName = 200;
/** Longest reason or note [characters]. */
export const longestNote = 2000;

/** Text as a search sees it: no capitals, no accents, nothing that a database can’t keep. */
export function folded(text: string): string {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toUpperCase().toLowerCase();
  return plain.replace(/[\p{Cs}\p{Cc}\s]+/gu, ' ').trim();
}

/** The words of a search as patterns; each must be found. */
export function patternsOf(search: string): string[] {
  const words = folded(search.slice(0, longestName)).split(' ');
  return words.filter((word) => word !== '').map((word) => `%${word.replace(/[\\%_]/g, '\\$&')}%`);
}

/** What is wrong with a text that a column keeps. */
export function textErrors(path: string, text: unknown, longest: number, least = 0): InputError[] {
  if (typeof text !== 'string')
    return [refusal('wrong-type', path, 'text', text === undefined ? 'nothing' : typeof text, 'Write it as text.')];
  if (text.trim().length < least) return [refusal('missing', path, 'a few letters', 'nothing', 'Add it.')];
  if (text.length > longest)
    return [refusal('out-of-range', path, `at most ${longest} characters`, `${text.length}`, 'Shorten it.')];
  if (/[\p{Cs}\0]/u.test(text))
    return [refusal('wrong-type', path, 'text', 'characters that stand for nothing', 'Write it again.')];
  return [];
}

/** One input error. */
export function refusal(
  code: InputError['code'],
  path: string,
  expected: string,
  got: string,
  hint: string,
): InputError {
  return { code, path, expected, got, hint };
}
