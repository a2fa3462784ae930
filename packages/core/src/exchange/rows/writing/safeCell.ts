/**
 * What a spreadsheet may take for a formula: an equals sign, plus, minus or at sign, in either width, perhaps behind blanks and quotes; or a
 * tab or line end in front, which some programs drop before they look.
 */
const dangerous = /^(?:[\s"']*[=+\-@＝＋－＠]|[ "']*[\t\r\n])/u;

/** A plain number is no formula, whatever its sign. */
const plainNumber = /^-?\d+(?:\.\d+)?$/;

/**
 * The text of a cell that no spreadsheet runs: an apostrophe, a spreadsheet’s own sign for text, stands before whatever could be taken for a
 * formula. Plain numbers stay as they are, negative ones too.
 *
 * @param text any text [text]
 * @returns the text, with an apostrophe in front where it is dangerous [text]
 * @example safeCell('=1+1') // "'=1+1"
 * @example safeCell('-25') // '-25'
 */
export function safeCell(text: string): string {
  return dangerous.test(text) && !plainNumber.test(text) ? `'${text}` : text;
}

/** The text before `safeCell`. */
export function unsafeCell(text: string): string {
  return text.startsWith("'") && dangerous.test(text.slice(1)) && !plainNumber.test(text.slice(1))
    ? text.slice(1)
    : text;
}
