import type { Item } from '../scene.ts';
import type { Seats } from '../seats.ts';
import { lineOf } from '../shown.ts';
import { body, line, rounded } from '../strokes.ts';
import type { Upper } from '../upper.ts';
import { bothSides } from './mirror.ts';

/** Lower-link balls from behind: barrel-shaped, with the link end around them for place only. */
export function linkBalls(seats: Seats): Item[] {
  const centre = seats.centres.value / 2;
  const half = seats.width.value / 2;
  const radius = Math.max(seats.opening.value * 0.95, 20);
  const link = body('ghost', rounded([centre - half * 0.7, -radius - 14], [centre + half * 0.7, radius + 14], 10));
  const role = lineOf('thin', seats.centres, seats.width);
  const ball = body(role, rounded([centre - half, -radius], [centre + half, radius], half * 0.45));
  return bothSides([link, ball]);
}

/** Ends of the lower links behind hooks that are pinned into them, for place only. */
export function linkStubs(seats: Seats): Item[] {
  const centre = seats.centres.value / 2;
  return bothSides([body('ghost', rounded([centre - 17, -46], [centre + 17, 46], 12))]);
}

/** Claws on the link ends with the loose balls in them. */
export function claws(seats: Seats): Item[] {
  const centre = seats.centres.value / 2;
  const half = seats.width.value / 2;
  const ball = (seats.looseBall?.diameter.value ?? seats.opening.value) / 2;
  const claw = seats.opening.value / 2;
  const shell = half * 0.8;
  return bothSides([
    body('thin', rounded([centre - shell, -claw - 18], [centre + shell, claw * 0.35], 8)),
    body(
      lineOf('thin', seats.centres, seats.width),
      rounded([centre - half, -ball], [centre + half, ball], half * 0.5),
    ),
    line('hidden', [centre - shell, claw * 0.35], [centre + shell, claw * 0.35]),
  ]);
}

/** The ball of the top link between the mast plates. */
export function topLinkBall(upper: Upper): Item[] {
  if (upper.ball === null || !upper.exists) return [];
  const half = upper.ball.width.value / 2;
  const radius = Math.max(18, upper.ball.bore.value * 0.95);
  const z = upper.distance.value;
  return [
    body('ghost', rounded([-half * 0.6, z - radius - 10], [half * 0.6, z + radius + 10], 8)),
    body(
      lineOf('thin', upper.distance, upper.ball.width),
      rounded([-half, z - radius], [half, z + radius], half * 0.45),
    ),
  ];
}
