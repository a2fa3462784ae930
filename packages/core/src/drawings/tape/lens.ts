import type { Bounds, Item, Point } from '../scene.ts';
import { circle, outline } from '../strokes.ts';
import { clipped, roundWindow } from './clip.ts';
import type { InkMap } from './inkMap.ts';
import type { Drawn } from './plate.ts';
import type { Enlarged } from './row.ts';

/** A magnifier in its place: what it enlarges, where it stands, and how many times it enlarges [scene mm]. */
export interface Lens {
  readonly on: Point;
  readonly reach: number;
  readonly centre: Point;
  readonly radius: number;
  readonly times: number;
}

/** Where a point stands in the magnifier; null where it is outside what is enlarged. */
export function inLens({ on, reach, centre, times }: Lens, [x, z]: Point): Point | null {
  const [dx, dz] = [x - on[0], z - on[1]];
  if (Math.hypot(dx, dz) > reach * 0.92) return null;
  return [centre[0] + dx * times, centre[1] + dz * times];
}

/** What a place for the magnifier costs besides the lines that it hides: its distance, and the middle of the drawing. */
const far = 0.5;

/** Finds the emptiest place for a magnifier near what it enlarges, clear of what is taken [paper mm in, scene mm out]. */
export function placeLens(
  { on, reach }: Enlarged,
  drawn: Drawn,
  bounds: Bounds,
  room: { readonly ink: InkMap; readonly taken: readonly Bounds[] },
): Lens {
  const { plate, perPaper } = drawn;
  const r = plate.lens;
  const target: Point = [(on[0] - bounds.left) / perPaper, (on[1] - bounds.bottom) / perPaper];
  const source = reach / perPaper;
  let best: { at: Point; cost: number } | null = null;
  for (let x = r + 1; x <= plate.width - r - 1; x += 1.5) {
    for (let z = r + 1; z <= plate.height - r - 1; z += 1.5) {
      const distance = Math.hypot(x - target[0], z - target[1]);
      if (distance < r + source + 1.5) continue;
      const box = { left: x - r, right: x + r, bottom: z - r, top: z + r };
      const over = room.taken.filter((other) => overlap(box, other)).length;
      const cost = room.ink.within(box) * 0.5 + distance * far + over * 80;
      if (best === null || cost < best.cost) best = { at: [x, z], cost };
    }
  }
  if (best === null) throw new Error('invariant: a magnifier has room on every plate');
  const radius = r * perPaper;
  return {
    on,
    reach,
    centre: [bounds.left + best.at[0] * perPaper, bounds.bottom + best.at[1] * perPaper],
    radius,
    times: radius / reach,
  };
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

/** The magnifier with what it shows, the circle around what it enlarges, and the line between them. */
export function lensItems(lens: Lens, items: readonly Item[]): Item[] {
  const { on, centre, radius, reach } = lens;
  const window = roundWindow(centre, radius);
  const distance = Math.hypot(centre[0] - on[0], centre[1] - on[1]);
  const unit: Point = [(centre[0] - on[0]) / distance, (centre[1] - on[1]) / distance];
  const from: Point = [on[0] + unit[0] * reach, on[1] + unit[1] * reach];
  const to: Point = [centre[0] - unit[0] * radius, centre[1] - unit[1] * radius];
  return [
    circle('thin', on, reach),
    { kind: 'stroke', role: 'thin', points: [from, to], closed: false },
    { ...outline('heavy', window), fill: 'sheet' },
    ...items.flatMap((item) => enlarged(lens, item)).flatMap((item) => clipped(item, window)),
    outline('heavy', window),
  ];
}

function enlarged(lens: Lens, item: Item): Item[] {
  const { on, centre, times } = lens;
  const at = ([x, z]: Point): Point => [centre[0] + (x - on[0]) * times, centre[1] + (z - on[1]) * times];
  switch (item.kind) {
    case 'stroke':
      return [{ ...item, view: 'detail', points: item.points.map(at) }];
    case 'circle':
      return [{ ...item, view: 'detail', centre: at(item.centre), radius: item.radius * times }];
    case 'hatch':
      return [{ ...item, view: 'detail', outline: item.outline.map(at) }];
    default:
      return [];
  }
}
