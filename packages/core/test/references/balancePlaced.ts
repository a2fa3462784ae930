import type { BalanceCase } from '../properties/generateBalance.ts';
import type { LiftCase } from '../properties/generateLift.ts';
import type { PointMass, Supports } from './balanceBody.ts';
import type { Weight } from './freeBody.ts';
import { placed, type SideView } from './sideView.ts';
import { weightsAt } from './weights.ts';

/** Every mass of a case in space, by what it is [kg, mm]. */
export interface Placed {
  /** The tractor without any loader. */
  readonly tractor: readonly PointMass[];
  /** What was put into and onto its rear wheels. */
  readonly added: readonly PointMass[];
  readonly driver: readonly PointMass[];
  readonly frontWeights: readonly PointMass[];
  readonly loader: readonly PointMass[];
  readonly loaderLoad: readonly PointMass[];
  readonly behind: readonly PointMass[];
}

/** Where what stands on a tractor has its centre: all at one height, or each at a height of its own [mm]. */
export type Heights = number | 'own';

/** Everything that the wheels carry. */
export function everything({ tractor, added, driver, frontWeights, loader, loaderLoad, behind }: Placed): PointMass[] {
  return [...tractor, ...added, ...driver, ...frontWeights, ...loader, ...loaderLoad, ...behind];
}

/** Sum of masses [kg]. */
export function massOf(masses: readonly PointMass[]): number {
  return masses.reduce((sum, { mass }) => sum + mass, 0);
}

/** The points that a case stands on. */
export function supportsOf({ tractor }: BalanceCase): Supports {
  return {
    wheelbase: figure(tractor, 'wheelbase'),
    rearTrack: figure(tractor, 'rearTrack'),
    pivotHeight: figure(tractor, 'frontPivotHeight'),
  };
}

const figure = (of: Readonly<Record<string, number>>, key: string): number => of[key] ?? 0;

/** Front weights of a mass, where those of the case hang [kg]. */
export function frontWeightsOf({ tractor }: BalanceCase, mass: number, heights: Heights = 'own'): PointMass[] {
  const ahead = figure(tractor, 'wheelbase') + figure(tractor, 'frontWeightAhead');
  return [{ mass, at: [-ahead, 0, heights === 'own' ? 520 : heights] }];
}

/** What stands on the tractor of a case, and hangs behind it. */
export function placedOn(one: BalanceCase, behind: readonly PointMass[], heights: Heights = 'own'): Placed {
  const of = (key: string): number => figure(one.tractor, key);
  const wheelbase = of('wheelbase');
  const up = (own: number): number => (heights === 'own' ? own : heights);
  const aheadOfFront = (mass: string, ahead: string, height: number): PointMass[] => [
    { mass: of(mass), at: [-wheelbase - of(ahead), 0, up(height)] },
  ];
  const loader = aheadOfFront('loaderMass', 'loaderAhead', 760);
  const half = of('rearTrack') / 2;
  const wheels = (mass: string): PointMass[] =>
    [-half, half].map((aside) => ({ mass: of(mass) / 2, at: [0, aside, up(480)] }));
  return {
    tractor: bareTractor(one),
    added: [...wheels('wheelWeightMass'), ...wheels('tyreLiquidMass')],
    driver: [{ mass: of('driverMass'), at: [-of('driverAhead'), 0, up(1150)] }],
    frontWeights: frontWeightsOf(one, of('frontWeightMass'), heights),
    loader: one.loader === 'absent' ? [] : loader,
    loaderLoad: one.loader === 'loaded' ? aheadOfFront('loaderLoad', 'loaderLoadAhead', 930) : [],
    behind,
  };
}

/**
 * Seven points that together weigh what the tractor does without a loader, press on the front axle as it does, and have
 * their centre as high: four about the rear axle, low wheels and a high seat, and an engine over the front axle in three.
 */
function bareTractor({ tractor, weighedWithLoader }: BalanceCase): PointMass[] {
  const of = (key: string): number => figure(tractor, key);
  const wheelbase = of('wheelbase');
  const loader = weighedWithLoader ? of('loaderMass') : 0;
  const total = of('mass') - loader;
  const front = of('frontAxleMass') - (loader * (wheelbase + of('loaderAhead'))) / wheelbase;
  const rear = total - front;
  const half = of('rearTrack') / 2;
  const [low, high] = [0.6 * of('centreHeight'), 1.1 * of('centreHeight')];
  const engine = (total * of('centreHeight') - (rear * (low + high)) / 2) / front;
  return [
    { mass: rear / 4, at: [150, -half, low] },
    { mass: rear / 4, at: [150, half, low] },
    { mass: rear / 4, at: [-150, -0.1 * half, high] },
    { mass: rear / 4, at: [-150, 0.1 * half, high] },
    { mass: front / 2, at: [-wheelbase, 0, engine] },
    { mass: front / 4, at: [-wheelbase - 200, 60, engine + 90] },
    { mass: front / 4, at: [-wheelbase + 200, -60, engine - 90] },
  ];
}

/** All that hangs behind with the balls at a height, each mass where the side view has it; the implement off the middle. */
export function hungAt(one: BalanceCase, view: SideView, height: number): PointMass[] {
  const lift = standingTurned(one.lift);
  const { onBody, onLinks } = weightsAt(lift, view, height);
  return inSpace(one, onBody, onLinks);
}

/** All that hangs behind with links and implement level, where no top link holds it. */
export function hungLevel(one: BalanceCase): PointMass[] {
  const { held, implement, coupler, sideView } = one.lift;
  const ball = { x: sideView.pivot.x + sideView.link, z: sideView.pivot.z };
  const isOnEnds = held === 'hookEnds' || held === 'bar';
  const pins = { x: ball.x + (isOnEnds ? figure(coupler, 'hookBehind') : 0), z: ball.z };
  const from = (
    { x, z }: { x: number; z: number },
    of: Readonly<Record<string, number>>,
    [mass, behind, above]: readonly [string, string, string],
  ): Weight => ({ mass: figure(of, mass), at: { x: x + figure(of, behind), z: z + figure(of, above) } });
  return inSpace(
    one,
    [
      from(pins, implement, ['mass', 'centreBehind', 'centreAbove']),
      from(pins, implement, ['carriedMass', 'carriedBehind', 'carriedAbove']),
    ],
    [
      from(ball, coupler, ['mass', 'centreBehind', 'centreAbove']),
      from(ball, coupler, ['hungMass', 'hungBehind', 'hungAbove']),
    ],
  );
}

function inSpace({ lift }: BalanceCase, onBody: readonly Weight[], onLinks: readonly Weight[]): PointMass[] {
  return [...onBody, ...onLinks].map(({ mass, at }, i) => ({
    mass,
    at: [at.x, i === 0 ? figure(lift.implement, 'centreAside') : 0, at.z],
  }));
}

/**
 * The turn of an implement in a rigid coupler, δ = atan2(h2, e2) − atan2(h, e), as points of the implement that are turned
 * about its lower pins against the frame.
 */
function standingTurned(lift: LiftCase): LiftCase {
  if (lift.held !== 'uFrame') return lift;
  const { implement, coupler } = lift;
  const angle = (of: Readonly<Record<string, number>>, height: string, behind: string): number =>
    Math.atan2(figure(of, height), figure(of, behind));
  const turn = angle(coupler, 'topHookHeight', 'topHookBehind') - angle(implement, 'mastHeight', 'mastSetback');
  const turned = (behind: string, above: string): Record<string, number> => {
    if (implement[behind] === undefined) return {};
    const point = placed({ x: 0, z: 0 }, { x: figure(implement, behind), z: figure(implement, above) }, turn);
    return { [behind]: point.x, [above]: point.z };
  };
  const centres = { ...turned('centreBehind', 'centreAbove'), ...turned('carriedBehind', 'carriedAbove') };
  return { ...lift, implement: { ...implement, ...centres } };
}
