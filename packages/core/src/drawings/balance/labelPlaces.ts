/** A box on paper [mm]. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A label that wants to stand over a point: its size, and where its leader starts [paper mm]. */
interface Wish {
  readonly x: number;
  readonly foot: number;
  readonly width: number;
  readonly height: number;
}

/** Where labels may stand from left to right, and what they must keep off [paper mm]. */
interface Room {
  readonly left: number;
  readonly right: number;
  readonly taken: readonly Box[];
}

/** Least gap around a label, and around a leader [paper mm]. */
const gaps = { label: 1.3, leader: 0.9 } as const;

/** Where a label stands at the lowest, how far up it is tried, and in what steps [paper mm]. */
const tried = { from: 2.2, step: 1.4, times: 40 } as const;

/**
 * Finds a place over each point: as low as it can stand, in the middle over the point or to one side of it, clear of blocks,
 * labels and leaders, those still to come among them, and with a clear way for its own leader. Labels are set from left to
 * right, or in another order where that leaves one without a free place.
 */
export function placeLabels(wishes: readonly Wish[], room: Room): Box[] {
  const orders = [byPlace, byPlaceBack, byHeight].map((order) =>
    wishes.map((_, i) => i).sort((a, b) => order(wishes[a] as Wish, wishes[b] as Wish)),
  );
  const found = orders.map((order) => placedIn(order, wishes, room));
  return (found.find(({ isFree }) => isFree) ?? found[0])?.boxes ?? [];
}

const byPlace = (a: Wish, b: Wish): number => a.x - b.x;
const byPlaceBack = (a: Wish, b: Wish): number => b.x - a.x;
const byHeight = (a: Wish, b: Wish): number => b.foot - a.foot;

function placedIn(order: readonly number[], wishes: readonly Wish[], room: Room): { boxes: Box[]; isFree: boolean } {
  const taken: Box[] = [...room.taken];
  const leaders: Box[] = [];
  const boxes: Box[] = [];
  let isFree = true;
  order.forEach((index, turn) => {
    const wish = wishes[index] as Wish;
    const waiting = order.slice(turn + 1).map((other) => leaderTo(wishes[other] as Wish, Infinity));
    const free = freePlace(wish, room, taken, [...leaders, ...waiting]);
    isFree &&= free !== undefined;
    const box = free ?? overAll(wish, room, taken);
    boxes[index] = box;
    taken.push(box);
    leaders.push(leaderTo(wish, box.bottom));
  });
  return { boxes, isFree };
}

function freePlace(wish: Wish, room: Room, taken: readonly Box[], leaders: readonly Box[]): Box | undefined {
  const levels = Array.from({ length: tried.times }, (_, i) => wish.foot + tried.from + i * tried.step);
  return levels
    .flatMap((level) => boxesAt(wish, room, level))
    .find(
      (box) =>
        isClear(box, taken, gaps.label) &&
        isClear(box, leaders, gaps.leader) &&
        isClear(leaderTo(wish, box.bottom), taken, 0),
    );
}

function overAll(wish: Wish, room: Room, taken: readonly Box[]): Box {
  const over = Math.max(wish.foot, ...taken.map(({ top }) => top)) + tried.from;
  return boxesAt(wish, room, over)[0] as Box;
}

/** A label at a level: over its point in the middle, or nearly at its start or at its end. */
function boxesAt({ x, width, height }: Wish, { left, right }: Room, bottom: number): Box[] {
  return [x - width / 2, x - 1.5, x - width + 1.5].map((wanted): Box => {
    const from = Math.max(left, Math.min(right - width, wanted));
    return { left: from, right: from + width, bottom, top: bottom + height };
  });
}

/** The way of a leader from just over its foot. */
function leaderTo({ x, foot }: Wish, top: number): Box {
  return { left: x, right: x, bottom: foot + 1.2, top };
}

/** Whether a box keeps a gap to each of the others. */
function isClear(box: Box, others: readonly Box[], gap: number): boolean {
  return others.every(
    (other) =>
      box.left >= other.right + gap ||
      other.left >= box.right + gap ||
      box.bottom >= other.top + gap ||
      other.bottom >= box.top + gap,
  );
}
