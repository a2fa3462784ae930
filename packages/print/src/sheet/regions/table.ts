import type { Spot } from '../../pdf/ink.ts';
import { settings, span, words, type Block } from '../block.ts';
import { rule, rules, type Press } from '../press.ts';

/** One column of a table. */
export interface TableColumn {
  readonly heading: string;
  readonly width: number;
}

/** What a cell holds: as high as it is, untagged. */
export type Cell = Block;

interface Row {
  readonly cells: readonly Cell[];
  readonly height: number;
}

/** Room beside and over the text of a cell [mm]. */
const cellPad = 2.5;
const over = 0.6;

/** A table in as many parts as it takes; each part has the headings of its columns, and its title over them where it has one. */
export class Table {
  private readonly heading: Row;
  private readonly rows: readonly Row[];

  constructor(
    private readonly press: Press,
    private readonly columns: readonly TableColumn[],
    rows: readonly (readonly Cell[])[],
    private readonly title: (goesOn: boolean) => Block | null = () => null,
  ) {
    const { label } = settings;
    this.heading = rowOf(columns.map(({ heading, width }) => textCell(press, [span(heading, label)], width)));
    this.rows = rows.map(rowOf);
  }

  get length(): number {
    return this.rows.length;
  }

  /** As many rows from one on as fit, and how many they are; null where not even one does. */
  part(from: number, room: number): { readonly block: Block; readonly count: number } | null {
    const title = this.title(from > 0);
    let height = (title?.height ?? 0) + this.heading.height;
    let count = 0;
    for (const row of this.rows.slice(from)) {
      if (height + row.height > room) break;
      height += row.height;
      count += 1;
    }
    if (count === 0) return null;
    const rows = this.rows.slice(from, from + count);
    return { block: { height, paint: (at) => this.paint(rows, at, title) }, count };
  }

  private paint(rows: readonly Row[], [x, y]: Spot, title: Block | null): void {
    const { tags } = this.press;
    const width = this.columns.reduce((sum, column) => sum + column.width, 0);
    title?.paint([x, y]);
    tags.group('Table', () => {
      let top = y + (title?.height ?? 0);
      for (const row of [this.heading, ...rows]) {
        if (row !== this.heading) rule(this.press, [x, top], [x + width, top], rules.thin);
        this.paintRow(row, [x, top], row === this.heading);
        top += row.height;
      }
    });
  }

  private paintRow({ cells }: Row, [x, y]: Spot, isHeading: boolean): void {
    const { tags } = this.press;
    tags.group('TR', () => {
      let left = x;
      cells.forEach((cell, i) => {
        const from = left;
        const draw = (): void => cell.paint([from, y + over]);
        if (isHeading) tags.leaf('TH', draw, { scope: 'Column' });
        else tags.leaf('TD', draw);
        left += this.columns[i]?.width ?? 0;
      });
    });
  }
}

function rowOf(cells: readonly Cell[]): Row {
  return { cells, height: Math.max(...cells.map(({ height }) => height)) + 2 * over };
}

/** A cell of words. */
export function textCell({ ink }: Press, spans: readonly ReturnType<typeof span>[], width: number): Cell {
  const set = words(ink.faces, spans, settings.small, width - 2 * cellPad);
  return { height: set.height, paint: ([x, y]) => set.write(ink, [x + cellPad, y]) };
}
