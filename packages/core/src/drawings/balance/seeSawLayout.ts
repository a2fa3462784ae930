import type { BalanceSweep } from '../../engine/balance/index.ts';
import type { Sheet } from '../sheet.ts';
import { widthOf } from '../lettering.ts';
import { groundDepth } from '../side/sideLayout.ts';
import { barHeight } from '../view/heading.ts';
import type { Block } from './blocks.ts';
import { armOf, blockSide } from './masses.ts';

/** Lengths on paper that are the same at every scale [paper mm]. */
export const paper = {
  beam: 2,
  least: 13,
  rod: 2.4,
  column: 3.2,
  fulcrum: 5.5,
  clear: 2,
  tail: 4,
} as const;

/** How far the beam tips where the front wheels leave the ground: to be seen, not to measure. */
export const tipSlope = Math.tan((4 * Math.PI) / 180);

/** Where everything stands: z = 0 is the ground below the beam, x = 0 the rear axle, to the right is rearward [scene mm]. */
export interface SeeSawLayout {
  readonly scale: number;
  readonly left: number;
  readonly right: number;
  /** Top and underside of the beam. */
  readonly deck: number;
  readonly under: number;
  readonly beam: { readonly left: number; readonly right: number };
  /** Levels of the rows below the ground: dimension line, name, figure, limit. */
  readonly rows: { readonly dimension: number; readonly name: number; readonly figure: number; readonly limit: number };
  readonly bottom: number;
}

/** How far back what hangs there acts, at the least and at the most [mm]. */
function armsOf(balance: BalanceSweep): { readonly least: number; readonly most: number } {
  const arms = balance.stations.map((station) => armOf(balance, station));
  return { least: Math.min(...arms), most: Math.max(...arms) };
}

/** Lays a see-saw out so wide that it fills its sheet; the same for all heights. */
export function seeSawLayout(
  sheet: Sheet,
  balance: BalanceSweep,
  blocks: readonly Block[],
  tyre: number,
): SeeSawLayout {
  const { wheelbase, behind } = balance;
  const half = blockSide(behind) / 2;
  const { most } = armsOf(balance);
  const ahead = Math.max(wheelbase, ...blocks.map((block) => block.ahead + block.side / 2));
  const room = sheet.width - 2 * sheet.margin;
  const beside = widthOf('8,888 lb', sheet.letters.note) + paper.column + 2.4;
  const label = widthOf('hung behind', sheet.letters.note) / 2 + 1;
  const lefts = [
    [ahead, 1],
    [wheelbase + tyre * 0.6, 1],
    [wheelbase, beside],
  ] as const;
  const rights = [
    [Math.max(most, 0) + half, 1],
    [Math.max(most, 0), label],
    [tyre, 1],
  ] as const;
  const least = Math.max(...lefts.flatMap(([l, a]) => rights.map(([r, b]) => (l + r) / (room - a - b))));
  const scale = sheet.scales?.find((one) => one >= least) ?? least;
  const reach = ([mm, onPaper]: readonly [number, number]): number => mm + onPaper * scale;
  const [from, to] = [Math.max(...lefts.map(reach)), Math.max(...rights.map(reach))];
  const spare = Math.max(0, room * scale - from - to) / 2;
  const tip = balance.wheelsLift ? Math.max(0, most) * tipSlope : 0;
  const under = Math.max(paper.least * scale, 2 * half + tip + (paper.rod + paper.clear) * scale);
  return {
    scale,
    left: -from - spare - sheet.margin * scale,
    right: to + spare + sheet.margin * scale,
    under,
    deck: under + paper.beam * scale,
    beam: { left: -ahead - scale, right: Math.max(most, 0) + paper.tail * scale },
    ...rowsBelow(sheet, scale, balance),
  };
}

function rowsBelow(sheet: Sheet, scale: number, { stations, permitted }: BalanceSweep) {
  const { dimension: size, note } = sheet.letters;
  const isOver = stations.some(
    ({ front, rear }) => front > (permitted.front ?? Infinity) || rear > (permitted.rear ?? Infinity),
  );
  const dimension = -(groundDepth + 2 + size * 0.75 + 1.1);
  const name = dimension - 2 - note * 0.8;
  const figure = name - size * 1.2;
  const limit = isOver ? figure - note * 1.3 : figure;
  const rows = { dimension: dimension * scale, name: name * scale, figure: figure * scale, limit: limit * scale };
  return { rows, bottom: (limit - 2 - barHeight(sheet)) * scale };
}
