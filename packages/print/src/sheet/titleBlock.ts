import type { Faces } from '../fonts/faces.ts';
import type { Spot } from '../pdf/ink.ts';
import { lineWidth, oneLine } from '../text/lines.ts';
import { settings, span, words, type Block, type Setting, type Words } from './block.ts';
import { rule, rules, type Press } from './press.ts';

/** One cell of a title block, with its share of the width that is left over, or of all of it where there is too little. */
export interface TitleCell {
  readonly label: string;
  readonly text: string;
  readonly share: number;
  /** Its text is the heading of the document. */
  readonly isHeading?: boolean;
}

/** Room beside and over the words of a cell [mm]. */
const [pad, over] = [2.5, 0.8] as const;

interface SetCell {
  readonly cell: TitleCell;
  readonly width: number;
  readonly label: Words;
  readonly text: Words;
}

/** The strip that closes a sheet: what it is about, for whom, which sheet, of which day. Every text is shown whole. */
export function titleBlock(press: Press, cells: readonly TitleCell[], width: number): Block {
  const { ink } = press;
  const widths = widthsOf(ink.faces, cells, width);
  const set = cells.map((cell, i): SetCell => {
    const own = widths[i] ?? 0;
    const label = words(ink.faces, [span(cell.label, settings.label)], settings.label, own - 2 * pad);
    const text = words(ink.faces, [span(cell.text, settings.cell)], settings.cell, own - 2 * pad);
    return { cell, width: own, label, text };
  });
  const height = Math.max(...set.map(({ label, text }) => label.height + text.height)) + 2.2;
  return { height, paint: (at) => paint(press, set, at, height) };
}

/** Every cell takes what its text wants in one line; where that is too much for all of them, its share. */
function widthsOf(faces: Faces, cells: readonly TitleCell[], width: number): number[] {
  const wide = (text: string, setting: Setting): number => lineWidth(faces, oneLine(faces, [span(text, setting)]));
  const wanted = cells.map(
    ({ label, text }) => Math.max(wide(label, settings.label), wide(text, settings.cell)) + 2 * pad + slack,
  );
  const spare = width - wanted.reduce((sum, one) => sum + one, 0);
  const all = cells.reduce((sum, { share }) => sum + share, 0);
  return cells.map(({ share }, i) => (spare < 0 ? (share / all) * width : (wanted[i] ?? 0) + (share / all) * spare));
}

/** Against rounding [mm]. */
const slack = 0.1;

function paint(press: Press, set: readonly SetCell[], [x, y]: Spot, height: number): void {
  const { ink, tags } = press;
  let left = x;
  for (const { cell, width, label, text } of set) {
    const from = left;
    tags.leaf(cell.isHeading === true ? 'H1' : 'P', () => {
      label.write(ink, [from + pad, y + over]);
      text.write(ink, [from + pad, y + over + label.height]);
    });
    if (from > x) rule(press, [from, y], [from, y + height], rules.thin);
    left += width;
  }
}
