// Characters that can move a cursor, turn text round or hide in it; line ends and tabs are space.
const acting =
  /[\u0000-\u0008\u000e-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb]/g;
const lone = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text as one line that does nothing but stand there: what could act on a reader or a program is shown as a replacement sign. */
export function plainText(text: string): string {
  return text.replace(/\s+/g, ' ').trim().replace(lone, '\ufffd').replace(acting, '\ufffd');
}

/** Longest name that is handed over [characters]; a record takes no longer one either. */
const longestName = 200;

/** The name of a record as text, or what it is called without one. */
export function nameOr(name: unknown, otherwise: string): string {
  const plain = typeof name === 'string' ? plainText(name.slice(0, 4 * longestName)) : '';
  if (plain === '') return otherwise;
  const letters = [...plain];
  return letters.length > longestName ? `${letters.slice(0, longestName - 1).join('')}…` : plain;
}
