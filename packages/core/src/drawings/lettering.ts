/** One piece of a line of lettering: plain, or the upper or lower figure of a fraction. */
export interface Run {
  readonly part: 'plain' | 'over' | 'slash' | 'under';
  readonly text: string;
}

const fraction = /(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)/g;

/** Figures of a fraction against the rest. */
export const fractionSize = 0.77;

/** How far the upper figure of a fraction is raised [part of the size of the rest]. */
export const fractionRise = 0.3;

/** Width of the cleared ground around letters [part of their size]. */
export const haloWidth = 0.3;

/** Gap before the other unit [part of its size]. */
export const secondGap = 0.5;

/**
 * Splits `20 1/2 in` into pieces, so that the fraction can be set as one.
 *
 * @param text one line of lettering [text]
 * @returns its pieces in order, plain ones and fractions [list]
 */
export function runsOf(text: string): Run[] {
  const runs: Run[] = [];
  let last = 0;
  for (const match of text.matchAll(fraction)) {
    const [all, whole = '', over = match[4] ?? '', under = match[5] ?? ''] = match;
    const before = text.slice(last, match.index) + whole;
    if (before !== '') runs.push({ part: 'plain', text: before });
    runs.push({ part: 'over', text: over }, { part: 'slash', text: '⁄' }, { part: 'under', text: under });
    last = match.index + all.length;
  }
  if (last < text.length) runs.push({ part: 'plain', text: text.slice(last) });
  return runs;
}

/** Width that a line takes, on the safe side [same unit as the size]. */
export function widthOf(text: string, size: number): number {
  return runsOf(text).reduce((sum, run) => sum + size * runWidth(run), 0);
}

function runWidth({ part, text }: Run): number {
  if (part === 'slash') return 0.2;
  const width = [...text].reduce((sum, letter) => sum + letterWidth(letter), 0);
  return part === 'plain' ? width : width * fractionSize;
}

const widths = new Map<string, number>();

/** Width of a letter [part of its size]; each is looked up once. */
function letterWidth(letter: string): number {
  const known = widths.get(letter);
  if (known !== undefined) return known;
  const width = readWidth(letter);
  widths.set(letter, width);
  return width;
}

/** Widths of the drawing's own face at its boldest, read from the font and rounded up; most other faces are narrower. */
function readWidth(letter: string): number {
  if (/[iljI.,:;’'|!\s]/.test(letter)) return 0.29;
  if (/[frt()°-]/.test(letter)) return 0.42;
  if (/[mMW]/.test(letter)) return 0.92;
  if (/[\dA-Zw]/.test(letter)) return /w/.test(letter) ? 0.78 : 0.66;
  return 0.61;
}

/** A text in lines no wider than given, broken between words. */
export function wrapped(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
