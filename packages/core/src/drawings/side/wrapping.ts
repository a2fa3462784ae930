import { wrapped } from '../lettering.ts';

const held = '\u00a0';

/** A text in lines no wider than given, broken between words but never inside a figure or before its unit. */
export function wrappedFigures(text: string, size: number, width: number): string[] {
  const joined = text.replace(/(\d) (?=\d+\/\d|lb|kg|in\b|mm)/g, `$1${held}`);
  return wrapped(joined, size, width).map((line) => line.replaceAll(held, ' '));
}
