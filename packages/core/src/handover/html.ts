const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text that is only text inside HTML. */
export function htmlText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => entities[sign] as string);
}

/** A list of texts as an element of HTML; nothing where there is none. */
export function htmlList(texts: readonly string[]): string {
  return texts.length === 0 ? '' : `<ul>\n${texts.map((text) => `<li>${htmlText(text)}</li>`).join('\n')}\n</ul>`;
}
