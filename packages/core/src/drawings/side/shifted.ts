import type { Item, Point } from '../scene.ts';

/** An item moved by so much [scene mm]. */
export function shiftedBy(item: Item, [dx, dz]: Point): Item {
  const moved = ([x, z]: Point): Point => [x + dx, z + dz];
  switch (item.kind) {
    case 'stroke':
      return { ...item, points: item.points.map(moved) };
    case 'hatch':
      return { ...item, outline: item.outline.map(moved) };
    case 'circle':
      return { ...item, centre: moved(item.centre) };
    case 'text':
      return { ...item, at: moved(item.at) };
    case 'dimension': {
      const { along, label } = item;
      return {
        ...item,
        from: moved(item.from),
        to: moved(item.to),
        at: item.at + dx * along[1] - dz * along[0],
        label: label === null ? null : { ...label, at: moved(label.at) },
      };
    }
    default:
      throw new Error(`invariant: no ${item.kind} is ever moved`);
  }
}
