import { markupText } from '../words/index.ts';

/** A list of texts as an element of HTML; nothing where there is none. */
export function htmlList(texts: readonly string[]): string {
  return texts.length === 0 ? '' : `<ul>\n${texts.map((text) => `<li>${markupText(text)}</li>`).join('\n')}\n</ul>`;
}
