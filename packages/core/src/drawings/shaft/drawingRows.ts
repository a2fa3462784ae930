import type { ShaftStation } from '../../engine/shaft/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Dimension, Item, LineRole, Point } from '../scene.ts';
import { body, hatch, line, outline, rectangle, run } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { poseAt } from '../side/pose.ts';
import { shortText } from '../side/readings.ts';
import { cutText } from './shaftWords.ts';
import { halvesOf } from './halves.ts';
import {
  cross,
  fixed,
  guardItems,
  halvesItems,
  inView,
  neckOf,
  sizes,
  sliding,
  splinedEnd,
  type Guard,
} from './parts.ts';
import type { MeasuredShaft, Places } from './measured.ts';

/** One row of a drawing: its items about their own axis, and how far they reach up and down from it [scene mm]. */
export interface Row {
  readonly items: readonly Item[];
  readonly up: number;
  readonly down: number;
}

/** Distance of a dimension line from what it measures, and room for its lettering [paper mm]. */
const gap = { line: 5, text: 6 } as const;

/** Overlap and closed length of the shaft pushed right together: the joint at the tractor at 0. */
export function closedRow(pen: Pen, { closedLength, closedOverlap, guard, isGuardMeasured }: MeasuredShaft): Row {
  const half = guard.cone;
  const halves =
    closedOverlap === null ? null : halvesOf({ length: closedLength, overlap: closedOverlap, toBottom: 0 });
  const up = half + onPaper(pen, gap.line);
  return {
    up: up + onPaper(pen, gap.text),
    down: half + onPaper(pen, gap.line + 2),
    items: [
      ...(halves === null
        ? [line('heavy', [0, 0], [closedLength, 0])]
        : halvesItems(halves, { role: 'heavy', isShort: false, bottoms: false })),
      ...guardItems(guard, closedLength, guardRole(isGuardMeasured)),
      ...joint([0, 0], 0),
      ...joint([closedLength, 0], 180),
      level(
        pen,
        [0, closedLength],
        -half - onPaper(pen, gap.line),
        `${shortText(closedLength, pen.system).text} cross to cross`,
      ),
      ...(halves === null
        ? []
        : [
            level(
              pen,
              [halves.inner[0], halves.outer[1]],
              up,
              `${shortText(closedOverlap ?? 0, pen.system).text} overlap`,
            ),
          ]),
    ],
  };
}

function guardRole(isMeasured: boolean): LineRole {
  return isMeasured ? 'thin' : 'hidden';
}

function joint(at: Point, turn: number): Item[] {
  return [...inView(poseAt(at, turn), [sliding('heavy')]), ...cross('heavy', at)];
}

/** A length along the row, dimensioned at a height, its label over the line. */
export function level(
  pen: Pen,
  [from, to]: readonly [number, number],
  z: number,
  text: string,
  role: 'dimension' | 'misfit' = 'dimension',
): Dimension {
  const at: Point = [(from + to) / 2, z + onPaper(pen, 1.1)];
  const writing = role === 'misfit' ? ({ tone: 'accent', weight: 600 } as const) : {};
  const label = lettering(at, text, pen.sheet.letters.dimension, { anchor: 'middle', ...writing });
  const ends = { from: [from, 0], to: [to, 0], along: [1, 0], at: -z } as const;
  return { kind: 'dimension', role, ...ends, label, sides: 1, mmPerUnit: 1 };
}

/** How far the guard of a half ends short of its tube, for place only [mm]. */
const guardShort = 10;

/** From the outer end of the sliding yoke to the end of the tube [mm]. */
export function halfLength({ closedLength, closedOverlap }: MeasuredShaft): number {
  return sizes.hubTo + (closedLength + (closedOverlap ?? closedLength)) / 2;
}

/** One half by itself, its joint at 0 and its tube to the right, with what is cut off tube and guard hatched. */
export function halfRow(pen: Pen, shaft: MeasuredShaft, end: 'tractor' | 'implement', cut: number): Row {
  const { closedLength, closedOverlap, guard } = shaft;
  const reach = (closedLength + (closedOverlap ?? 0)) / 2;
  const neck = neckOf(closedLength - reach);
  const half = end === 'tractor' ? sizes.outer : sizes.inner;
  const k = Math.max(0, Math.min(cut, reach - neck));
  const guardEnd = reach - guardShort;
  const items = [
    body('heavy', rectangle([neck, -half], [reach, half])),
    fixed('heavy', neck, half),
    ...guardHalf(guard, guardEnd, guardRole(shaft.isGuardMeasured)),
    ...joint([0, 0], 0),
    ...(k === 0 ? [] : cutItems(guard, half, [reach - k, reach], [guardEnd - k, guardEnd])),
  ];
  const [up, down] = [guard.tube + onPaper(pen, gap.line), guard.tube + onPaper(pen, gap.line)];
  const [text = ''] = cutText(cut, pen.system).split(' (');
  const spans = [
    level(pen, [reach - k, reach], up, `tube ${text}`, 'misfit'),
    level(pen, [guardEnd - k, guardEnd], -down, `guard ${text}`, 'misfit'),
  ].map((span) => ({ ...span, label: toLeft(pen, span) }));
  return {
    items: [...items, ...(k === 0 ? [] : spans)],
    up: Math.max(guard.cone, up + onPaper(pen, gap.text)),
    down: Math.max(guard.cone, k === 0 ? 0 : down + onPaper(pen, 2)),
  };
}

/** A label left of its short dimension, clear of the arrowhead. */
function toLeft(pen: Pen, { from, label, at }: Dimension): Dimension['label'] {
  if (label === null) return null;
  const { size } = label;
  return { ...label, anchor: 'end', at: [from[0] - onPaper(pen, 6.4), -at - onPaper(pen, size * 0.34)] };
}

function guardHalf({ tube, cone, coneLength }: Guard, to: number, role: LineRole): Item[] {
  const side = (sign: 1 | -1): Point[] => [
    [0, sign * cone],
    [Math.min(coneLength, to), sign * tube],
    [to, sign * tube],
  ];
  return [
    run(role, side(1)),
    run(role, side(-1)),
    line(role, [0, -cone], [0, cone]),
    line(role, [to, -tube], [to, tube]),
  ];
}

/** What is cut off, hatched: the end of the tube, and the wall of the guard on both sides of it. */
function cutItems(
  { tube }: Guard,
  half: number,
  [from, to]: readonly [number, number],
  [a, b]: readonly [number, number],
): Item[] {
  const wall = Math.max(6, (tube - half) * 0.6);
  const pieces = [
    rectangle([from, -half], [to, half]),
    rectangle([a, tube - wall], [b, tube]),
    rectangle([a, -tube], [b, wall - tube]),
  ];
  return [
    ...pieces.flatMap((piece): Item[] => [body('misfit', piece), hatch('misfit', piece), outline('misfit', piece)]),
    line('misfit', [from, -half - 12], [from, half + 12]),
  ];
}

/** Stub and input shaft where they come nearest, as they stand, with what is measured between them. */
export function measureRow(
  pen: Pen,
  { tractorCross, implementCross, stub, input, slope, shortest }: ShaftStation,
  places: Places | null,
): Row {
  const shift = ([x, z]: Point): Point => [x - tractorCross[0], z - tractorCross[1]];
  const [front, rear, from, to] = [tractorCross, implementCross, stub, input].map(shift) as [
    Point,
    Point,
    Point,
    Point,
  ];
  const over = onPaper(pen, gap.line) + sizes.hub;
  const dot = (at: Point): Item => ({
    kind: 'circle',
    role: 'heavy',
    centre: at,
    radius: onPaper(pen, 0.7),
    fill: 'line',
  });
  const tops = [front, rear, from, to].map(([, z]) => z);
  const under = places === null ? sizes.hub + onPaper(pen, 2) : over + onPaper(pen, gap.text);
  return {
    up: Math.max(...tops) + over + onPaper(pen, gap.text),
    down: -Math.min(...tops) + under,
    items: [
      ...inView(poseAt(front, 0), splinedEnd('thin', 'thin')),
      ...inView(poseAt(rear, slope + 180), splinedEnd('thin', 'thin')),
      line('centre', front, rear),
      ...cross('heavy', front),
      ...cross('heavy', rear),
      aslant(pen, front, rear, over, { mm: shortest, words: 'cross to cross' }),
      ...(places === null
        ? []
        : [dot(from), dot(to), aslant(pen, from, to, -over, { mm: places.distance, words: places.words })]),
    ],
  };
}

/** A length between two points, dimensioned beside them; a line that runs a little aside as well is longer than it looks. */
function aslant(
  pen: Pen,
  from: Point,
  to: Point,
  off: number,
  { mm, words }: { readonly mm: number; readonly words: string },
): Dimension {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const { dimension: size, second } = pen.sheet.letters;
  const text = shortText(mm, pen.system);
  const middle: Point = [(from[0] + to[0]) / 2 - along[1] * off, (from[1] + to[1]) / 2 + along[0] * off];
  return {
    kind: 'dimension',
    role: 'dimension',
    from,
    to,
    along,
    at: from[0] * along[1] - from[1] * along[0] - off,
    label: lettering([middle[0], middle[1] - onPaper(pen, size * 0.34)], `${text.text} ${words}`, size, {
      anchor: 'middle',
      second: { text: text.second, size: second },
    }),
    sides: 1,
    mmPerUnit: mm / length,
  };
}
