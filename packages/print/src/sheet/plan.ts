import type { Spot } from '../pdf/ink.ts';
import type { Box } from '../pdf/paper.ts';
import type { Block } from './block.ts';
import { flowInto, type HeadingFor, type InColumn, type TwoLists } from './flow.ts';
import { rule, rules, type Press } from './press.ts';
import type { Table } from './regions/table.ts';

/** A block with its place. */
export interface PlacedBlock extends Box {
  /** Counted from 1. */
  readonly page: number;
  readonly name: string;
  readonly paint: (at: Spot) => void;
}

/** Blocks of this name may stand with more room around them. */
export const drawingName = 'drawing';

/** Name of the rules between compartments. */
export const ruleName = 'rule';

const tolerance = 1e-6;

/** With less room than this neither a list nor a table is begun [mm]. */
const leastRoom = 16;

/** Where in its column the text of the right half begins, and padding [mm]. */
const pad = 3.5;

/** Fills pages from the top with what comes, and remembers where everything lies. */
export class Plan {
  readonly blocks: PlacedBlock[] = [];
  private readonly waiting: { readonly name: string; readonly block: Block }[] = [];
  private page = 1;
  private top: number;

  constructor(
    private readonly press: Press,
    private readonly frame: Box,
    /** Room at the foot of every page [mm]. */
    private readonly foot: number,
  ) {
    this.top = frame.y;
  }

  get pages(): number {
    return this.page;
  }

  /** A block over the whole width, on this page where it fits, else on the next. */
  add(name: string, block: Block): void {
    if (block.height > this.room()) this.turn();
    this.put(name, block, this.frame.x, this.top);
    this.advance(block.height);
  }

  /** A block that may wait for the top of the next page while what follows fills this one. */
  float(name: string, block: Block): void {
    if (this.waiting.length === 0 && block.height <= this.room()) this.add(name, block);
    else this.waiting.push({ name, block });
  }

  /** Nothing waits any longer. */
  flushFloats(): void {
    for (const { name, block } of this.waiting.splice(0)) this.add(name, block);
  }

  /** A block that stands at the foot of the last page, over a title block of a height. */
  addLast(name: string, block: Block, titleHeight: number): void {
    const needed = block.height + titleHeight - this.foot;
    if (needed > this.room()) this.turn();
    const y = this.frame.y + this.frame.height - titleHeight - block.height;
    const { x, width } = this.frame;
    this.put(name, block, x, y);
    if (y > this.top) this.blocks.push(ruleAt(this.press, { page: this.page, x, y, width }));
  }

  /** Two lists side by side, over as many pages as they take. */
  flow(name: string, lists: TwoLists, heading: HeadingFor): void {
    let rest = lists;
    if (this.room() < leastRoom) this.turn();
    while (rest.left.length + rest.right.length > 0) {
      const part = flowInto(rest, heading, this.room());
      if (part.height === 0) {
        if (this.isFresh()) throw new Error(`invariant: ${name} has a block that is higher than a page`);
        this.turn();
        continue;
      }
      part.columns.forEach((column, i) => this.putColumn(name, column, i));
      this.divide(name, part.height);
      this.advance(part.height);
      rest = part.rest;
    }
  }

  /** A table over as many pages as it takes. */
  table(name: string, table: Table): void {
    let from = 0;
    if (table.length > 0 && this.room() < leastRoom) this.turn();
    while (from < table.length) {
      const part = table.part(from, this.room());
      if (part === null) {
        if (this.isFresh()) throw new Error(`invariant: ${name} has a row that is higher than a page`);
        this.turn();
        continue;
      }
      this.add(name, part.block);
      from += part.count;
    }
  }

  private room(): number {
    return this.frame.y + this.frame.height - this.foot - this.top;
  }

  private isFresh(): boolean {
    return this.top === this.frame.y;
  }

  private turn(): void {
    this.spread();
    this.page += 1;
    this.top = this.frame.y;
    for (let next = this.waiting[0]; next !== undefined && next.block.height <= this.room(); next = this.waiting[0]) {
      this.waiting.shift();
      this.put(next.name, next.block, this.frame.x, this.top);
      this.advance(next.block.height);
    }
  }

  /** Drawings share what room is left on a page that is done. */
  private spread(): void {
    const here = this.blocks.filter(({ page }) => page === this.page);
    const drawings = here.filter(({ name }) => name === drawingName);
    const each = this.room() / drawings.length;
    const above = (y: number): number => drawings.filter((one) => one.y + one.height <= y + tolerance).length * each;
    const moved = here.map((block): PlacedBlock => ({
      ...block,
      y: block.y + above(block.y) + (block.name === drawingName ? each / 2 : 0),
    }));
    if (drawings.length > 0) this.blocks.splice(this.blocks.length - here.length, here.length, ...moved);
  }

  private putColumn(name: string, column: readonly InColumn[], side: number): void {
    const left = this.frame.x + pad + side * (this.frame.width / 2);
    for (const { block, top } of column) this.put(name, block, left, this.top + top, this.frame.width / 2 - 2 * pad);
  }

  private put(name: string, block: Block, x: number, y: number, width = this.frame.width): void {
    this.blocks.push({ page: this.page, name, x, y, width, height: block.height, paint: block.paint });
  }

  /** The rule between two columns. */
  private divide(name: string, height: number): void {
    const x = this.frame.x + this.frame.width / 2;
    const y = this.top;
    const paint = ([at, top]: Spot): void => rule(this.press, [at, top], [at, top + height], rules.thin);
    this.blocks.push({ page: this.page, name: `${name}, rule`, x, y, width: 0, height, paint });
  }

  /** Goes on under what was placed, with a rule between. */
  private advance(height: number): void {
    this.top += height;
    const { x, width } = this.frame;
    this.blocks.push(ruleAt(this.press, { page: this.page, x, y: this.top, width }));
  }
}

/** A rule between two compartments. */
function ruleAt(
  press: Press,
  { page, x, y, width }: { readonly page: number; readonly x: number; readonly y: number; readonly width: number },
): PlacedBlock {
  const paint = ([from, at]: Spot): void => rule(press, [from, at], [from + width, at], rules.frame);
  return { page, name: ruleName, x, y, width, height: 0, paint };
}
