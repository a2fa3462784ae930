import type { Item, Point, Stroke } from '../scene.ts';
import { mirrored } from '../strokes.ts';

type Drawn = Stroke | Extract<Item, { kind: 'circle' | 'hatch' }>;

/** The items and their mirror images across the centre line. */
export function bothSides(items: readonly Drawn[]): Drawn[] {
  return items.flatMap((item) => [item, mirrorOf(item)]);
}

function mirrorOf(item: Drawn): Drawn {
  if (item.kind === 'circle') return { ...item, centre: [-item.centre[0], item.centre[1]] as Point };
  if (item.kind === 'hatch') return { ...item, outline: mirrored(item.outline), falling: !item.falling };
  return { ...item, points: mirrored(item.points) };
}
