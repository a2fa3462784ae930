const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * A text that is only text inside markup: its signs spelled out.
 *
 * @param text any text [text]
 * @returns the same for HTML, SVG or XML, in an element or an attribute [markup]
 */
export function markupText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => entities[sign] as string);
}
