import type { Faces, Style } from '../fonts/faces.ts';
import { inks, type Ink, type Spot } from '../pdf/ink.ts';
import { linesOf, type Line } from '../text/lines.ts';
import type { Span } from '../text/pieces.ts';

/** Something that is as high as it is and can be painted from its upper left corner [mm]. */
export interface Block {
  readonly height: number;
  readonly paint: (at: Spot) => void;
}

/** How lines of a text stand: their style, and from baseline to baseline [mm]. */
export interface Setting {
  readonly style: Style;
  readonly leading: number;
}

const mmPerPoint = 25.4 / 72;

function setting(family: Style['family'], weight: Style['weight'], points: number, leading: number): Setting {
  return { style: { family, weight, size: points * mmPerPoint }, leading: leading * mmPerPoint };
}

/** Every setting of words on paper: nothing is smaller than 8.5 points. */
export const settings = {
  verdict: setting('national-park', 700, 24, 27),
  unchecked: setting('national-park', 500, 13, 16),
  because: setting('source-sans-3', 700, 11.5, 13.8),
  heading: setting('national-park', 600, 10.5, 12.2),
  answer: setting('national-park', 600, 11.5, 14),
  body: setting('source-sans-3', 400, 9.5, 11.2),
  small: setting('source-sans-3', 400, 8.5, 9.6),
  label: setting('national-park', 500, 8.5, 10.2),
  cell: setting('national-park', 600, 11, 13),
} as const;

/** Figures of fractions against the rest: on paper larger than on a screen. */
const fractions = 0.85;

/** A text in a style, to be set. */
export function span(text: string, { style }: Setting): Span {
  return { text, style, fractions };
}

/** The same text bold. */
export function bold(text: string, { style }: Setting): Span {
  return { text, style: { ...style, weight: 700 }, fractions };
}

/** Lines of words in a column, nothing tagged. */
export interface Words {
  readonly lines: readonly Line[];
  readonly height: number;
  readonly write: (ink: Ink, at: Spot, colour?: string) => void;
}

/** Sets spans in a column of a width. */
export function words(faces: Faces, spans: readonly Span[], { style, leading }: Setting, width: number): Words {
  const lines = linesOf(faces, spans, width);
  const first = (leading - style.size) / 2 + style.size * ascent;
  return {
    lines,
    height: lines.length * leading,
    write: (ink, [x, y], colour = inks.black) => {
      lines.forEach((line, i) => ink.line(line, [x, y + first + i * leading], colour));
    },
  };
}

/** From the top of a line's body to its baseline [part of its size]. */
const ascent = 0.78;
