import type { LowerPins } from '../lowerPins.ts';
import type { Item, LineRole, Point } from '../scene.ts';
import { lineOf } from '../shown.ts';
import { body, line, rectangle } from '../strokes.ts';
import { bothSides } from './mirror.ts';

/** Diameter of a retaining hole, for place only: nothing is said of its far edge. */
const holeAcross = 11;

/** Half the height of a pin plate, for place only. */
export const plateReach = 62;

/** One lower pin, from its shoulder at `shoulder` to its tip, seen from behind. */
export function pinOutline(pins: LowerPins, shoulder: number): Point[] {
  const { sign, standOut, diameter } = pins;
  const reach = pins.doubleGap === null ? standOut.value : pins.doubleGap.value + pins.plate;
  const radius = diameter.value / 2;
  const tip = shoulder + sign * reach;
  const chamfer = Math.min(4, reach / 4);
  return [
    [shoulder, -radius],
    [tip - sign * chamfer, -radius],
    [tip, -radius + chamfer],
    [tip, radius - chamfer],
    [tip - sign * chamfer, radius],
    [shoulder, radius],
  ];
}

/** The retaining hole through a pin: its near edge where it was measured. */
export function retainingHole(pins: LowerPins, shoulder: number, role: LineRole = 'hidden'): Item[] {
  if (pins.toHole.standing === 'unknown' || pins.doubleGap !== null) return [];
  const radius = pins.diameter.value / 2;
  const near = shoulder + pins.sign * pins.toHole.value;
  const far = near + pins.sign * Math.max(3, Math.min(holeAcross, pins.standOut.value - pins.toHole.value - 3));
  return [near, far].map((y) => line(role, [y, -radius], [y, radius]));
}

/** Pins, their plates, bushings and retaining holes, on both sides. */
export function lowerPins(pins: LowerPins): Item[] {
  const shoulder = pins.shoulders.value / 2;
  const role = lineOf('heavy', pins.shoulders);
  const pinRole = lineOf('heavy', pins.shoulders, pins.diameter, pins.doubleGap ?? pins.standOut);
  const one = [
    { ...body(pinRole, pinOutline(pins, shoulder)), part: 'pin' as const },
    ...retainingHole(pins, shoulder),
    ...bushing(pins, shoulder),
    ...plates(pins).map((plate) => body(role, plate)),
  ];
  return bothSides(one as Parameters<typeof bothSides>[0]);
}

function bushing({ bushing, sign }: LowerPins, shoulder: number): Item[] {
  if (bushing === null) return [];
  const radius = bushing.outside.value / 2;
  const end = shoulder + sign * bushing.length.value;
  return [body(lineOf('heavy', bushing.length), rectangle([shoulder, -radius], [end, radius]))];
}

/** Pin plates of the right side: behind the shoulder, and beyond the gap where there are two. */
function plates({ shoulders, sign, plate, doubleGap }: LowerPins): Point[][] {
  const face = shoulders.value / 2;
  const inner = rectangle([face, -plateReach], [face - sign * plate, plateReach]);
  if (doubleGap === null) return [inner];
  const outer = face + sign * doubleGap.value;
  return [inner, rectangle([outer, -plateReach], [outer + sign * plate, plateReach])];
}
