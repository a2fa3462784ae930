const invisible = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;
const singleCharacterFraction = /[¼-¾⅐-⅞]/g;
const raisedFraction = /[⁰¹²³⁴-⁹]+[⁄∕/][₀-₉]+/g;

/** Typed text → the few plain characters that the readers know: one space, `'`, `"`, `-`, `/`, and fractions as `7/8`. */
export function tidy(text: string): string {
  return text
    .replace(invisible, '')
    .replace(singleCharacterFraction, spelledOut)
    .replace(raisedFraction, spelledOut)
    .replace(/[⁄∕]/g, '/')
    .replace(/[′’‘ʹʼ`´＇]/g, "'")
    .replace(/[″”“ʺ＂]/g, '"')
    .replace(/''/g, '"')
    .replace(/[−‐‑‒–—－]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The space keeps `26⅞` from becoming 267/8. */
function spelledOut(fraction: string): string {
  return ` ${fraction.normalize('NFKC')}`;
}

const longestExcerpt = 60;

/** At most 60 characters of what was typed, without control or direction characters, to be shown in a message. */
export function excerpt(text: string): string {
  const shown = text
    .slice(0, 4 * longestExcerpt)
    .replace(/[\p{C}\s]+/gu, ' ')
    .trim();
  const isWhole = shown.length <= longestExcerpt && text.length <= 4 * longestExcerpt;
  return isWhole ? shown : `${shown.slice(0, longestExcerpt - 1).replace(/\p{Cs}$/u, '')}…`;
}
