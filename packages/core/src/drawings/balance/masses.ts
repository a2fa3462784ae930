import type { Answer } from '../../engine/assess/index.ts';
import type { BalanceStation, BalanceSweep, FittedMass } from '../../engine/balance/index.ts';
import { shown, type Shown } from '../shown.ts';

/** What a mass on the beam is. */
export type MassName = 'tractor' | FittedMass['what'];

/** A mass that stands on the beam, and how far ahead of the rear axle it acts [kg, mm]. */
export interface StandingMass {
  readonly what: MassName;
  readonly mass: number;
  readonly ahead: number;
}

/** What was put on the rear wheels themselves after the tractor was weighed; it acts on the rear axle alone [kg]. */
export interface WheelMass {
  readonly what: 'wheelWeights' | 'tyreLiquid';
  readonly figure: Shown;
}

const wheelPaths = { wheelWeights: 'tractor.wheelWeightMass', tyreLiquid: 'tractor.tyreLiquidMass' } as const;

/** Weights and liquid on the rear wheels, where there are any. */
export function wheelMassesOf(answer: Answer): WheelMass[] {
  return (['wheelWeights', 'tyreLiquid'] as const).flatMap((what) => {
    const figure = shown(answer, wheelPaths[what], 0);
    return figure.value > 0 ? [{ what, figure }] : [];
  });
}

/**
 * All that stands on the beam. The tractor is what is left of everything when all else is taken off: as it was weighed, but
 * without a loader that was weighed with it and is off now.
 */
export function standingMasses(answer: Answer, balance: BalanceSweep): StandingMass[] {
  const { fitted, frontFree, wheelbase, behind, stations } = balance;
  const onWheels = wheelMassesOf(answer).reduce((sum, { figure }) => sum + figure.value, 0);
  const fittedMass = fitted.reduce((sum, { mass }) => sum + mass, 0);
  const fittedMoment = fitted.reduce((sum, { mass, ahead }) => sum + mass * ahead, 0);
  const mass = (stations[0]?.total ?? 0) - behind - fittedMass - onWheels;
  const ahead = (frontFree * wheelbase - fittedMoment) / mass;
  return [{ what: 'tractor', mass, ahead }, ...fitted];
}

/** How far behind the rear axle what hangs there acts, by what it takes off the front axle [mm]. */
export function armOf({ frontFree, wheelbase, behind }: BalanceSweep, { front }: BalanceStation): number {
  return ((frontFree - front) * wheelbase) / behind;
}

/** What the rear axle carries at a height: all there is, where the front wheels are off the ground [kg]. */
export function rearLoad({ rear, total }: BalanceStation): number {
  return Math.min(rear, total);
}

/** Grey cast iron [kg/mm³]: a rounded value from memory, for drawing only. */
const castIron = 7.2e-6;

/** How far across every block is taken to reach, out of the picture [mm]. */
export const blockAcross = 400;

/** Side of a square block of cast iron of a mass [mm]. */
export function blockSide(mass: number): number {
  return Math.sqrt(Math.max(0, mass) / (castIron * blockAcross));
}

/**
 * How far the picture's figure may be above what is certain [kg]: at its worst, and by how much the front axle was found to
 * carry less for certain.
 */
function slackOf({ stations, worst }: BalanceSweep): number {
  const least = Math.min(...stations.map(({ front }) => front));
  return Math.max(0, least - worst.front.low);
}

/** What the front axle comes to at a height. */
export type FrontState = 'lifted' | 'short' | 'notCertain' | 'toSpare';

/** Whether something is missing on the front axle. */
export function isMissing(state: FrontState): boolean {
  return state === 'lifted' || state === 'short';
}

/** Whether the front axle carries what is wanted at a height; what is within the slack is not certain. */
export function frontStateAt(balance: BalanceSweep, { front, wanted }: BalanceStation): FrontState {
  if (front <= 0) return 'lifted';
  if (front < wanted) return 'short';
  return front - wanted < slackOf(balance) ? 'notCertain' : 'toSpare';
}
