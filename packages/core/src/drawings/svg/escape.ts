import { markupText } from '../../words/index.ts';

/** A text that is only text inside SVG: markup spelled out, and what XML forbids left out. */
export function escaped(text: string): string {
  return markupText(text.replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, ''));
}

/** A coordinate to a thousandth; a number that is none is a broken drawing. */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`invariant: ${value} is no coordinate`);
  return String(Math.round(value * 1000) / 1000 + 0);
}
