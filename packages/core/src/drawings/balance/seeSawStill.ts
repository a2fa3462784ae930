import type { BalanceSweep } from '../../engine/balance/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, LineRole, Point } from '../scene.ts';
import type { Shown } from '../shown.ts';
import { body, circle, outline, rectangle } from '../strokes.ts';
import { ground } from '../side/parts/ground.ts';
import { wheelAt } from '../side/parts/tractor.ts';
import { groundDepth } from '../side/sideLayout.ts';
import type { Block } from './blocks.ts';
import { paper, tipSlope, type SeeSawLayout } from './seeSawLayout.ts';

/** What a see-saw is drawn with. */
export interface SeeSaw {
  readonly pen: Pen;
  readonly balance: BalanceSweep;
  readonly layout: SeeSawLayout;
  readonly blocks: readonly Block[];
  readonly tyre: Shown;
  /** Ring of weights and level of liquid on the rear wheel. */
  readonly onWheel: readonly Item[];
}

/** A point as it stands on the beam: where that tips each goes up or down by how far it is from the fulcrum, none goes sideways. */
export function onBeam([x, z]: Point, isTipped: boolean): Point {
  return [x, isTipped ? z - x * tipSlope : z];
}

/** An item on the beam, level or tipped. */
export function carried(item: Item, isTipped: boolean): Item {
  if (!isTipped) return item;
  if (item.kind === 'stroke') return { ...item, points: item.points.map((point) => onBeam(point, true)) };
  return item.kind === 'circle' ? { ...item, centre: onBeam(item.centre, true) } : item;
}

/** Radius of the front wheel against the rear one: nobody measured it [part]. */
export const frontWheel = 0.6;

/** What stays where it is at every height: ground, fulcrum, the column of the scale, and the beam with all that stands on it. */
export function stillItems(seeSaw: SeeSaw, isTipped: boolean): Item[] {
  const { pen, layout } = seeSaw;
  const box = { left: layout.left, right: layout.right, bottom: layout.bottom, top: 0 };
  const inset = onPaper(pen, pen.sheet.margin);
  return [
    ...ground({ ...box, left: box.left + inset, right: box.right - inset }, onPaper(pen, groundDepth)),
    ...wheels(seeSaw).map((item) => carried(item, isTipped)),
    ...fulcrum(seeSaw),
    outline('thin', columnOf(seeSaw)),
    carried(beam(seeSaw), isTipped),
    ...seeSaw.blocks.flatMap((block) => blockItems(seeSaw, block)).map((item) => carried(item, isTipped)),
    ...seeSaw.onWheel.map((item) => carried(item, isTipped)),
  ];
}

/** Outline of the column under the front axle, on whose height its load is read. */
export function columnOf({ pen, balance: { wheelbase }, layout }: SeeSaw): Point[] {
  const half = onPaper(pen, paper.column);
  return rectangle([-wheelbase - half, 0], [-wheelbase + half, layout.under]);
}

function beam({ layout: { beam: ends, under, deck } }: SeeSaw): Item {
  return body('thin', rectangle([ends.left, under], [ends.right, deck]));
}

function fulcrum({ pen, layout: { under } }: SeeSaw): Item[] {
  const half = onPaper(pen, paper.fulcrum);
  return [
    body('thin', [
      [-half, 0],
      [half, 0],
      [0, under],
    ]),
  ];
}

/** Both wheels on the beam, the rear one of its true radius, the front one dashed. */
function wheels({ balance: { wheelbase }, layout: { deck }, tyre }: SeeSaw): Item[] {
  const front = tyre.value * frontWheel;
  const role: LineRole = tyre.standing === 'measured' ? 'ghost' : 'hidden';
  return [
    ...wheelAt(role, [0, deck + tyre.value], tyre.value),
    ...[1, 0.55].map((share) => circle('hidden', [-wheelbase, deck + front], front * share)),
  ];
}

function blockItems({ layout: { deck } }: SeeSaw, { ahead, foot, side, isWanted }: Block): Item[] {
  const corners = rectangle([-ahead - side / 2, deck + foot], [-ahead + side / 2, deck + foot + side]);
  return [isWanted ? outline('hidden', corners) : body('heavy', corners)];
}
