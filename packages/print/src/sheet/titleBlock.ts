import type { Spot } from '../pdf/ink.ts';
import { settings, span, words, type Block, type Words } from './block.ts';
import { rule, rules, type Press } from './press.ts';

/** One cell of a title block, with its share of the width. */
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
  const all = cells.reduce((sum, { share }) => sum + share, 0);
  const set = cells.map((cell): SetCell => {
    const own = (cell.share / all) * width;
    const label = words(ink.faces, [span(cell.label, settings.label)], settings.label, own - 2 * pad);
    const text = words(ink.faces, [span(cell.text, settings.cell)], settings.cell, own - 2 * pad);
    return { cell, width: own, label, text };
  });
  const height = Math.max(...set.map(({ label, text }) => label.height + text.height)) + 2.2;
  return { height, paint: (at) => paint(press, set, at, height) };
}

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
