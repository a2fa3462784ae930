import type { Bounds, Item, LineRole, Point } from '../scene.ts';

/** A named part of a sketch, drawn thin; a row may ask for it to be drawn heavy. */
export interface Piece {
  readonly name: string;
  readonly items: readonly Item[];
}

/** A schematic machine seen from one side [mm]: sizes of a typical machine, our own invention and not to scale. */
export interface Sketch {
  /** From where it is seen. */
  readonly view: string;
  /** In painter's order. */
  readonly pieces: readonly Piece[];
  /** Seen from above: nothing hangs down in it. */
  readonly isPlan?: true;
  /** Height of the ground, where it is part of the picture [mm]. */
  readonly ground: number | null;
  /** What is shown, unless a row asks for less. */
  readonly show: Bounds;
}

/** A part of a sketch. */
export function piece(name: string, ...items: readonly (Item | readonly Item[])[]): Piece {
  return { name, items: items.flat() };
}

/** What a sketch is made of, with the parts in question heavy. */
export function itemsOf({ pieces }: Sketch, inQuestion: readonly string[]): Item[] {
  return pieces.flatMap(({ name, items }) => (inQuestion.includes(name) ? items.map(heavier) : items));
}

function heavier(item: Item): Item {
  const isThin = (item.kind === 'stroke' || item.kind === 'circle') && item.role === 'thin';
  return isThin ? { ...item, role: 'heavy' satisfies LineRole } : item;
}

/** A sketch with what was on its left on its right. */
export function turnedRound(sketch: Sketch): Sketch {
  const { left, right, bottom, top } = sketch.show;
  return {
    ...sketch,
    pieces: sketch.pieces.map(({ name, items }) => ({ name, items: items.map(mirrored) })),
    show: { left: -right, right: -left, bottom, top },
  };
}

function mirrored(item: Item): Item {
  if (item.kind === 'stroke') return { ...item, points: item.points.map(across) };
  if (item.kind === 'hatch') return { ...item, outline: item.outline.map(across), falling: !item.falling };
  return item.kind === 'circle' ? { ...item, centre: across(item.centre) } : item;
}

/** A point of a sketch that was turned round. */
export function across([x, z]: Point): Point {
  return [-x, z];
}
