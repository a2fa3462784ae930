import type { LowerPins } from '../lowerPins.ts';
import type { Item, Point } from '../scene.ts';
import { lineOf } from '../shown.ts';
import { body, rectangle } from '../strokes.ts';
import type { Upper } from '../upper.ts';
import { bothSides } from './mirror.ts';
import { clevisPlate, footOf } from './mast.ts';
import { plateReach } from './pins.ts';

/** The front of a frame, with the implement left out: posts, cross member and tower for place only. */
export function couplerFront(pins: LowerPins, upper: Upper): Item[] {
  const foot = footOf(pins);
  const height = upper.distance.value;
  const low = Math.max(90, height * 0.42);
  const half = upper.clevisOuter.value / 2;
  const tower: Point[] = [
    [-half * 2.4, low + 52],
    [half * 2.4, low + 52],
    [half, height - 40],
    [-half, height - 40],
  ];
  return [
    ...bothSides([body('thin', rectangle([foot - 24, plateReach - 8], [foot + 24, low + 4]))]),
    body('thin', rectangle([-foot - 24, low], [foot + 24, low + 52])),
    body('thin', tower),
    ...bothSides([body(lineOf('heavy', upper.distance), clevisPlate(upper))]),
  ];
}
