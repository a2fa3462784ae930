import type { Bounds, Item } from '../../scene.ts';
import { hatch, line, rectangle } from '../../strokes.ts';

/** The ground: a line, and strokes under it of a height [mm]. */
export function ground({ left, right }: Bounds, depth: number): Item[] {
  return [hatch('thin', rectangle([left, -depth], [right, 0])), line('thin', [left, 0], [right, 0])];
}
