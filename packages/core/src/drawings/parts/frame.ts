import type { Item, LineRole, Point } from '../scene.ts';
import type { Seats } from '../seats.ts';
import { lineOf } from '../shown.ts';
import { body, circle, line, rectangle, rounded } from '../strokes.ts';
import type { TopHook } from '../upper.ts';
import { bothSides } from './mirror.ts';

/** A rigid frame: posts, cross member and tower for place only, hooks where they were measured. */
export function rigidFrame(seats: Seats, hook: TopHook): Item[] {
  const half = seats.centres.value / 2;
  const post = Math.max(seats.width.value, 44) / 2;
  const bottom = Math.max(90, Math.min(hook.distance.value * 0.42, hook.distance.value - 180));
  const top = bottom + 52;
  const tower = Math.max(18, (hook.cheekGap?.value ?? hook.thickness.value) / 2 + 12);
  const legs = bothSides([body('thin', rectangle([half - post, -30], [half + post, bottom + 4]))]);
  return [
    ...legs,
    body('thin', rectangle([-half - post, bottom], [half + post, top])),
    body('thin', [
      [-tower * 2.6, top],
      [tower * 2.6, top],
      [tower, hook.distance.value - 42],
      [-tower, hook.distance.value - 42],
    ]),
    ...topHook(hook, top),
  ];
}

function topHook(hook: TopHook, above: number): Item[] {
  const role = lineOf('thin', hook.distance);
  const top = hook.distance.value + hook.throat.value * 0.45;
  const bottom = Math.max(above - 20, hook.distance.value - 70);
  const seat = hook.distance.value - hook.throat.value / 2;
  const half = hook.thickness.value / 2;
  const holes = (hook.settings?.holes ?? [])
    .filter((z) => z < bottom && z > above)
    .map((z) => circle('thin', [0, z], 6));
  return [
    ...holes,
    ...(hook.cheekGap === null ? single(half, bottom, top, role) : cheeks(hook.cheekGap.value / 2, bottom, top, role)),
    line('hidden', [-half, seat], [half, seat]),
  ];
}

function single(half: number, bottom: number, top: number, role: LineRole): Item[] {
  return [body(role, rounded([-half, bottom], [half, top], 4))];
}

function cheeks(inner: number, bottom: number, top: number, role: LineRole): Item[] {
  return bothSides([body(role, rectangle([inner, bottom], [inner + 12, top]))]);
}

/** Lower hooks from behind: the lip in front of the seat, the seat itself hidden. */
export function lowerHooks(seats: Seats): Item[] {
  const role = lineOf('thin', seats.centres, seats.width);
  const centre = seats.centres.value / 2;
  const half = seats.width.value / 2;
  const seat = seats.opening.value / 2;
  const corner: Point = [centre - half, -seat - 22];
  return bothSides([
    body(role, rounded(corner, [centre + half, seat + 16], 3)),
    line('hidden', [centre - half, -seat], [centre + half, -seat]),
  ]);
}
