import { cleaned } from '../text/cleaned.ts';

/** Signs that a reader of DXF would take for a code, and all beyond ASCII. */
const coded = /[\\^]|[^\u0020-\u007e]/g;

/**
 * A text that is only text inside DXF: on one line, with nothing in it that a reader takes for a code; letters beyond ASCII
 * as `\U+XXXX`, two for those beyond the first plane.
 *
 * @param text any text [text]
 * @returns the value of a text's group [text]
 */
export function dxfText(text: string): string {
  return cleaned(text)
    .replace(/%%+/g, (signs) => '%%%'.repeat(signs.length))
    .replace(coded, (sign) => `\\U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);
}
