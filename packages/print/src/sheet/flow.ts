import type { Block } from './block.ts';

/** A block of a list, under the heading of its group. */
export interface FlowItem {
  readonly group: string;
  readonly block: Block;
  /** Goes on what stands before it: no room between. */
  readonly goesOn?: boolean;
}

/** Makes the heading of a group, or the one that stands where it goes on in another column. */
export type HeadingFor = (group: string, goesOn: boolean) => Block;

/** A block with its place in a column [mm]. */
export interface InColumn {
  readonly block: Block;
  readonly top: number;
}

/** A part of two columns that fits in a room. */
export interface FlowPart {
  readonly columns: readonly [readonly InColumn[], readonly InColumn[]];
  readonly height: number;
  /** What goes on elsewhere. */
  readonly rest: TwoLists;
}

/** What stands on the left and what stands beside it. */
export interface TwoLists {
  readonly left: readonly FlowItem[];
  readonly right: readonly FlowItem[];
  /** Groups that have begun already. */
  readonly begun: readonly string[];
}

/** Room over a column, between blocks, and over a heading [mm]. */
const gaps = { edge: 1.5, block: 0.4, heading: 1.2 } as const;

/**
 * Fills two columns: the left list on the left, the right one beside it; what is too long for its own column goes on under
 * the other, once that is done. The columns are as low as all of it allows, or as high as the room where it goes on.
 */
export function flowInto(lists: TwoLists, heading: HeadingFor, room: number): FlowPart {
  const whole = filled(lists, heading, room);
  if (hasRest(whole)) return whole;
  let [low, high] = [0, whole.height];
  let best = whole;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    const tried = filled(lists, heading, middle);
    if (hasRest(tried)) low = middle;
    else [high, best] = [middle, tried];
  }
  return best;
}

function hasRest({ rest }: FlowPart): boolean {
  return rest.left.length + rest.right.length > 0;
}

function filled(lists: TwoLists, heading: HeadingFor, room: number): FlowPart {
  const begun = new Set(lists.begun);
  const [left, right] = [new Column(heading, room, begun), new Column(heading, room, begun)];
  let [restLeft, restRight] = [left.take(lists.left), right.take(lists.right)];
  if (restRight.length === 0) restLeft = right.take(restLeft);
  else if (restLeft.length === 0) restRight = left.take(restRight);
  return {
    columns: [left.blocks, right.blocks],
    height: Math.max(left.height, right.height),
    rest: { left: restLeft, right: restRight, begun: [...begun] },
  };
}

class Column {
  readonly blocks: InColumn[] = [];
  private used = gaps.edge;
  private group: string | null = null;

  constructor(
    private readonly heading: HeadingFor,
    private readonly room: number,
    private readonly begun: Set<string>,
  ) {}

  get height(): number {
    return this.blocks.length === 0 ? 0 : this.used + gaps.edge;
  }

  /** Takes what fits from the beginning of a list; returns the rest. */
  take(items: readonly FlowItem[]): readonly FlowItem[] {
    const first = items.findIndex((item) => !this.place(item));
    return first < 0 ? [] : items.slice(first);
  }

  private place({ group, block, goesOn = false }: FlowItem): boolean {
    const head = group === this.group ? null : this.heading(group, this.begun.has(group));
    const over = this.blocks.length === 0 || (goesOn && head === null) ? 0 : head === null ? gaps.block : gaps.heading;
    const needed = over + (head?.height ?? 0) + block.height;
    if (this.used + needed + gaps.edge > this.room) return false;
    this.used += over;
    if (head !== null) this.put(head);
    this.put(block);
    this.group = group;
    this.begun.add(group);
    return true;
  }

  private put(block: Block): void {
    this.blocks.push({ block, top: this.used });
    this.used += block.height;
  }
}
