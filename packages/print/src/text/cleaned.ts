/** Vulgar fractions that the fonts lack, as a plain fraction, which is then set as one. */
const vulgar = /(\d?)([⅐-⅞])/g;
/** What acts instead of being read: controls, and signs that are not seen or turn text round. */
const controls = /[\p{Cc}\u2028\u2029]+/gu;
const unseen = /[\p{Cf}\ufe00-\ufe0f]/gu;

/**
 * A text as it is set: composed letters, one line, nothing in it that acts instead of being read.
 *
 * @param text any text [text]
 * @returns the text to set [text]
 */
export function cleaned(text: string): string {
  return text
    .normalize('NFC')
    .replace(vulgar, (_, before: string, sign: string) => {
      const plain = sign.normalize('NFKC').replace('\u2044', '/');
      return before === '' ? plain : `${before} ${plain}`;
    })
    .replace(controls, ' ')
    .replace(unseen, '');
}

/** A figure stays on one line with its unit and with the sign before it. */
export function bound(text: string): string {
  return text
    .replaceAll('± ', '±\u00a0')
    .replace(/(\d) (?=(?:in|mm|cm|m|lb|kg|hp|kW|rpm|psi|bar|mph|km\/h|acres\/h|ha\/h)\b|%)/g, '$1\u00a0');
}

/** At most so many code points are named one by one. */
const named = 6;

/**
 * Letters that no bundled font has, in words: nothing is ever printed as an empty box.
 *
 * @param letters the letters, one string each [texts]
 * @returns the words that stand in their place [text]
 */
export function spelledOut(letters: readonly string[]): string {
  const codes = letters.map((letter) => `U+${hex(letter)}`);
  const more = codes.length > named ? ` and ${codes.length - named} more` : '';
  const what = codes.length === 1 ? '1 letter' : `${codes.length} letters`;
  return `[${what} this font lacks: ${codes.slice(0, named).join(' ')}${more}]`;
}

function hex(letter: string): string {
  return (letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
}
