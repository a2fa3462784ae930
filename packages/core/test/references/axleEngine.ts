import type { BalanceSteps } from '../../src/engine/balance/balanceSteps.ts';
import { rearBallastWanted } from '../../src/engine/balance/counterweight.ts';
import type { SetupDocument } from '../../src/records/index.ts';
import { balanceAt } from './balanceAt.ts';
import { questionOf } from './engineAt.ts';

/** What stands on a tractor [kg, mm]; what is left out is not there. */
export interface Standing {
  readonly wheelbase: number;
  readonly front: number;
  readonly rear: number;
  /** A mass behind the rear axle. */
  readonly behind?: { readonly mass: number; readonly at: number };
  /** Front weights, ahead of the front axle; where they would hang, with no mass. */
  readonly weights?: { readonly mass: number; readonly ahead: number };
  /** A mass over the rear axle. */
  readonly over?: number;
  /** A load in the loader, ahead of the front axle; the loader itself is weighed with the tractor. */
  readonly load?: { readonly mass: number; readonly ahead: number };
}

/** Links level at 500 mm; nothing for a top link to hold, so that masses stand where they are said to. */
const document = (isLoaded: boolean): SetupDocument => ({
  hitchwright: 1,
  tractor: {
    wheelbase: 1800,
    mass: 1500,
    frontAxleMass: 600,
    driverMass: 0,
    frontWeightMass: 10,
    frontWeightAhead: 500,
    lowerLinkLength: 700,
    lowerLinkPivotSpan: 700,
    ballSpan: { adjustable: { between: [650, 760] } },
    lowerLinkPivotBehindAxle: 100,
    lowerLinkPivotHeight: 500,
    ballHeightLow: 250,
    ballHeightHigh: 750,
    weighedWithLoader: true,
    loader: isLoaded ? 'loaded' : 'empty',
    loaderLoad: 100,
    loaderLoadAhead: 900,
  },
  implement: { mounting: 'twoPointsAndWheels', mass: 100, centreBehind: 0, shoulderSpan: 665 },
});

const questions = { true: questionOf(document(true)), false: questionOf(document(false)) };

/** The engine’s axle loads on plain figures. */
export function axlesBy({ wheelbase, front, rear, behind, weights, over = 0, load }: Standing) {
  const question = questions[load === undefined ? 'false' : 'true'];
  const wanted = (steps: BalanceSteps) => [
    steps.front,
    steps.rear,
    steps.total,
    steps.wanted,
    steps.ballast,
    steps.rearSpare,
    steps.lift.links.pivot.x,
    steps.lift.links.length,
  ];
  const base = balanceAt(question, 'stroke', [0.5], wanted);
  const links = base.value(base.steps.lift.links.pivot.x) + base.value(base.steps.lift.links.length);
  const { steps, value } = balanceAt(question, 'stroke', [0.5], wanted, {
    wheelbase,
    wheelWeightMass: over,
    tractorMass: front + rear,
    frontAxleMass: front,
    mass: behind?.mass ?? 0,
    centreBehind: (behind?.at ?? links) - links,
    frontWeightMass: weights?.mass ?? 0,
    frontWeightAhead: weights?.ahead ?? 0,
    ballastAhead: weights?.ahead ?? 0,
    loaderLoad: load?.mass ?? 0,
    loaderLoadAhead: load?.ahead ?? 0,
  });
  return {
    front: value(steps.front),
    rear: value(steps.rear),
    total: value(steps.total),
    wanted: value(steps.wanted),
    ballast: value(steps.ballast),
    rearSpare: value(steps.rearSpare),
  };
}

/** The engine’s counterweight for what stands on a tractor, hung so far behind its rear axle; below zero none is needed [kg]. */
export function counterweightBy(standing: Standing, behind: number, share: number): number {
  const { front, rear } = axlesBy(standing);
  return rearBallastWanted({ wheelbase: standing.wheelbase, front, rear, behind }, share);
}
