import type { BalanceSweep } from '../../engine/balance/index.ts';
import { blockSide, type MassName, type StandingMass } from './masses.ts';

/** A block on the beam: how far ahead of the rear axle its middle is, how high over the beam its foot, and its side [mm]. */
export interface Block {
  readonly what: MassName | 'ballast';
  readonly mass: number;
  readonly ahead: number;
  readonly foot: number;
  readonly side: number;
  /** Wanted, not there: the outline of all the front weights that it would take. */
  readonly isWanted: boolean;
}

/** What stands lowest comes first; what would stand in another stands on it. */
const order: readonly Block['what'][] = ['tractor', 'ballast', 'frontWeights', 'loader', 'loaderLoad', 'driver'];

/** Blocks side by side, or one on the other where they would overlap; front weights stand inside the outline of what is wanted. */
export function blocksOf(
  masses: readonly StandingMass[],
  ballast: BalanceSweep['ballast'],
  wheelbase: number,
): Block[] {
  const wanted: readonly Omit<Block, 'foot' | 'side'>[] =
    ballast === null
      ? []
      : [{ what: 'ballast', mass: ballast.enough, ahead: wheelbase + ballast.ahead, isWanted: true }];
  const all = [...masses.map((mass) => ({ ...mass, isWanted: false })), ...wanted];
  const placed: Block[] = [];
  for (const one of [...all].sort((a, b) => order.indexOf(a.what) - order.indexOf(b.what))) {
    const side = blockSide(one.mass);
    const under = placed.filter(
      (other) =>
        !(other.what === 'ballast' && one.what === 'frontWeights') &&
        Math.abs(other.ahead - one.ahead) < (other.side + side) / 2,
    );
    placed.push({ ...one, side, foot: Math.max(0, ...under.map((other) => other.foot + other.side)) });
  }
  return placed;
}
