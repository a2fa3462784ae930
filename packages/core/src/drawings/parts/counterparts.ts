import type { BarAndJaws, FrameAndReceiver } from '../counterparts.ts';
import type { Item, Point } from '../scene.ts';
import { lineOf } from '../shown.ts';
import { body, breakLine, line, rectangle, rounded } from '../strokes.ts';
import { bothSides } from './mirror.ts';

const legDepth = 34;

/** Apex height of a triangle from its width at the foot and its angle [mm]. */
export function apexOf(width: number, angle: number): number {
  return width / 2 / Math.tan((angle * Math.PI) / 360);
}

/** Height up to which the frame is drawn. */
function frameTop({ frameWidth, frameAngle }: FrameAndReceiver): number {
  return apexOf(frameWidth.value, frameAngle.value);
}

/** The outer edge of a leg at a height. */
export function legAt(width: number, angle: number, z: number): number {
  return width / 2 - z * Math.tan((angle * Math.PI) / 360);
}

/** The receiver on the implement and the frame inside it. */
export function frameInReceiver(frame: FrameAndReceiver): Item[] {
  return [...receiver(frame), ...triangle(frame)];
}

function receiver({ receiverWidth, receiverAngle, frameWidth, frameAngle }: FrameAndReceiver): Item[] {
  const role = lineOf('heavy', receiverWidth, receiverAngle);
  const top =
    Math.min(apexOf(receiverWidth.value, receiverAngle.value), apexOf(frameWidth.value, frameAngle.value)) * 0.86;
  const [foot, head] = [
    legAt(receiverWidth.value, receiverAngle.value, 0),
    legAt(receiverWidth.value, receiverAngle.value, top),
  ];
  const thick = legDepth / Math.cos((receiverAngle.value * Math.PI) / 360);
  const leg: Point[] = [
    [foot, 0],
    [foot + thick, 0],
    [head + thick, top],
    [head, top],
  ];
  return bothSides([body(role, leg)]);
}

function triangle({ frameWidth, frameAngle }: FrameAndReceiver): Item[] {
  const role = lineOf('thin', frameWidth, frameAngle);
  const apex = frameTop({ frameWidth, frameAngle } as FrameAndReceiver);
  const half = frameWidth.value / 2;
  const inner = half - legDepth / Math.cos((frameAngle.value * Math.PI) / 360);
  const innerApex = (apex * inner) / half;
  return [
    body(role, [
      [-half, 0],
      [0, apex],
      [half, 0],
      [inner, 0],
      [0, innerApex],
      [-inner, 0],
    ]),
  ];
}

/** The bar between the link ends. */
export function crossBar({ diameter, length }: BarAndJaws): Item[] {
  const half = length.value / 2;
  const radius = diameter.value / 2;
  return [
    body(lineOf('thin', diameter, length), rectangle([-half, -radius], [half, radius])),
    ...bothSides([body('thin', rounded([half, -radius - 20], [half + 40, radius + 26], 6))]),
  ];
}

/** Jaws that drop over the bar, with their plates for place only. */
export function jaws({ span, opening, diameter }: BarAndJaws): Item[] {
  const outer = span.value / 2;
  const reach = Math.max(opening.value, diameter.value) / 2;
  return bothSides([
    body(lineOf('heavy', span), rectangle([outer - 20, -reach - 14], [outer, 96])),
    line('hidden', [outer - 20, opening.value / 2], [outer, opening.value / 2]),
  ]);
}

/** The implement's beam above a bar or behind a receiver. */
export function upperBeam(half: number, bottom: number): Item[] {
  const end = breakLine([half, bottom], bottom + 56);
  const fill = body('ghost', rectangle([-half, bottom], [half, bottom + 56]));
  const edges = [bottom, bottom + 56].map((z) => line('thin', [-half, z], [half, z]));
  return [fill, ...edges, ...bothSides([end])];
}
