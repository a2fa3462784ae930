/**
 * The text with its first letter large.
 *
 * @param text any text [text]
 * @returns the same, beginning as a sentence does [text]
 */
export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
