import type { LowerPins } from '../lowerPins.ts';
import type { Item, Point } from '../scene.ts';
import { lineOf } from '../shown.ts';
import { body, rectangle, rounded } from '../strokes.ts';
import type { Upper } from '../upper.ts';
import { bothSides } from './mirror.ts';
import { plateReach } from './pins.ts';

const legWidth = 36;

/** The mast from the pin plates to the clevis: legs for place only, clevis and upper pin as measured. */
export function mast(upper: Upper, foot: number): Item[] {
  if (!upper.exists) return [];
  const role = lineOf('heavy', upper.distance);
  return [...bothSides([body(role, leg(upper, foot)), body(role, clevisPlate(upper))]), upperPin(upper)];
}

/** Middle of a pin plate, where a leg stands. */
export function footOf({ shoulders, sign, plate }: LowerPins): number {
  return shoulders.value / 2 - (sign * plate) / 2;
}

function leg({ distance, clevisOuter }: Upper, foot: number): Point[] {
  const top = distance.value - 12;
  const inner = clevisOuter.value / 2 - 2;
  return [
    [foot + 9, plateReach - 6],
    [foot - legWidth, plateReach - 6],
    [inner, top - 62],
    [inner, top],
    [inner + legWidth * 0.55, top],
  ];
}

/** Outer edge of a leg at a height, where lettering has to end. */
export function legEdge({ distance, clevisOuter }: Upper, foot: number, z: number): number {
  const [low, high] = [plateReach - 6, distance.value - 12];
  const part = Math.min(1, Math.max(0, (z - low) / (high - low)));
  return foot + 9 + (clevisOuter.value / 2 + legWidth * 0.55 - 2 - foot - 9) * part;
}

/** The right clevis plate. */
export function clevisPlate({ distance, clevisGap, clevisOuter }: Upper): Point[] {
  const top = distance.value;
  return rectangle([clevisGap.value / 2, top - 58], [clevisOuter.value / 2, top + 28]);
}

/** The upper pin through both plates, with its ends for place only. */
export function upperPin({ distance, clevisOuter, pin }: Upper): Item {
  const reach = clevisOuter.value / 2 + 16;
  const radius = pin.value / 2;
  const outline = rounded([-reach, distance.value - radius], [reach, distance.value + radius], 4);
  return { ...body(lineOf('heavy', distance, pin), outline), part: 'pin' };
}
