import fc from 'fast-check';
import { withEdits, type Edit, type LoaderState, type SetupDocument } from '../../src/records/index.ts';
import type { SteeringRuleName } from '../../src/tables/index.ts';
import { even } from '../even.ts';
import { documentOf, helds, liftCases, type Figures, type Held, type LiftCase, type Spoken } from './generateLift.ts';

/** A lift on a tractor that was weighed: what stands on it, and what it may carry, each figure by its field [mm, kg]. */
export interface BalanceCase {
  readonly lift: LiftCase;
  readonly tractor: Figures;
  readonly loader: LoaderState;
  readonly weighedWithLoader: boolean;
  readonly rule: SteeringRuleName;
}

/** What is known of a loader. */
export type Loaders = Pick<BalanceCase, 'loader' | 'weighedWithLoader'>;

/** Every state of a loader, weighed with the tractor and not. */
export const everyLoader: readonly Loaders[] = (['absent', 'empty', 'loaded'] as const).flatMap((loader) =>
  [false, true].map((weighedWithLoader) => ({ loader, weighedWithLoader })),
);

const perhaps = (min: number, max: number): fc.Arbitrary<number> => fc.oneof(fc.constant(0), even(min, max));

const shares = fc.record({
  wheelbase: even(1.9, 2.8),
  overImplement: fc.oneof(even(2.2, 6), even(2.2, 6), even(10, 25)),
  frontShare: even(0.36, 0.5),
  driverMass: perhaps(60, 120),
  driverAhead: even(150, 700),
  frontWeights: perhaps(0.03, 0.2),
  frontWeightAhead: even(300, 900),
  wheelWeights: perhaps(0.05, 0.2),
  tyreLiquid: perhaps(0.05, 0.25),
  loader: even(0.08, 0.2),
  loaderAhead: even(-700, 300),
  loaderLoad: fc.oneof(even(0.05, 0.25), even(0.3, 0.7)),
  loaderLoadAhead: even(700, 1600),
  centreHeight: even(0.3, 0.45),
  frontPivotHeight: even(0.14, 0.24),
  rearTrack: even(0.55, 0.8),
  centreAside: even(-150, 150),
  frontLimit: even(0.35, 1.2),
  rearLimit: even(0.7, 1.8),
  totalLimit: even(0.9, 2.2),
  frontTyres: even(0.35, 1.2),
  rearTyres: even(0.7, 1.8),
  topHookBehind: perhaps(-60, 60),
  topHookAbove: even(-60, 60),
});

type Shares = typeof shares extends fc.Arbitrary<infer T> ? T : never;

const rules = fc.constantFrom<SteeringRuleName[]>('ofTractor', 'ofTractor', 'ofTotal', 'halfOfFront');

/** Weighed tractors of every size with a lift behind, from far too light at one end to far heavier there than the rules want. */
export function balanceCases(
  loaders: fc.Arbitrary<Loaders> = fc.constantFrom(...everyLoader),
  held: fc.Arbitrary<Held> = helds,
): fc.Arbitrary<BalanceCase> {
  return fc
    .tuple(liftCases(held), shares, loaders, rules)
    .map(([lift, of, loader, rule]) => ({ ...weighed(lift, of), ...loader, rule }));
}

function weighed(lift: LiftCase, of: Shares): Pick<BalanceCase, 'lift' | 'tractor'> {
  const implement = lift.implement['mass'] ?? 0;
  const mass = Math.min(5000, Math.max(500, implement * of.overImplement));
  const wheelbase = lift.sideView.link * of.wheelbase;
  return {
    lift: {
      ...lift,
      implement: { ...lift.implement, centreAside: of.centreAside },
      coupler: lift.held === 'uFrame' ? hookMoved(lift, of) : lift.coupler,
    },
    tractor: {
      wheelbase,
      mass,
      frontAxleMass: mass * of.frontShare,
      driverMass: of.driverMass,
      driverAhead: of.driverAhead,
      frontWeightMass: mass * of.frontWeights,
      frontWeightAhead: of.frontWeightAhead,
      wheelWeightMass: mass * of.wheelWeights,
      tyreLiquidMass: mass * of.tyreLiquid,
      loaderMass: mass * of.loader,
      loaderAhead: of.loaderAhead,
      loaderLoad: mass * of.loaderLoad,
      loaderLoadAhead: of.loaderLoadAhead,
      centreHeight: wheelbase * of.centreHeight,
      frontPivotHeight: wheelbase * of.frontPivotHeight,
      rearTrack: wheelbase * of.rearTrack,
      frontAxleLimit: mass * of.frontLimit,
      rearAxleLimit: mass * of.rearLimit,
      totalLimit: mass * of.totalLimit,
      frontTyreLimit: (mass * of.frontTyres) / 2,
      rearTyreLimit: (mass * of.rearTyres) / 2,
      frontBracketLimit: mass * 0.15,
    },
  };
}

/** A top hook that does not suit the mast: the implement stands turned in its coupler. */
function hookMoved({ coupler }: LiftCase, { topHookBehind: behind, topHookAbove }: Shares): Figures {
  const { topHookBehind = 0, topHookHeight = 460 } = coupler;
  if (behind === 0) return coupler;
  return { ...coupler, topHookBehind: topHookBehind + behind, topHookHeight: topHookHeight + topHookAbove };
}

/** A figure of a case's tractor, nothing where it is not said. */
export function figure({ tractor }: BalanceCase, key: string): number {
  return tractor[key] ?? 0;
}

/** The case with some figures of its tractor put in the place of its own. */
export function withTractor(one: BalanceCase, tractor: Figures): BalanceCase {
  return { ...one, tractor: { ...one.tractor, ...tractor } };
}

/** The setup document of a case. */
export function balanceDocument(one: BalanceCase, spoken?: Spoken): SetupDocument {
  const { lift, tractor, loader, weighedWithLoader, rule } = one;
  const edits: Edit[] = [
    { path: 'tractor.loader', value: loader },
    { path: 'tractor.weighedWithLoader', value: weighedWithLoader },
    { path: 'rules.steeringShare', value: rule },
  ];
  return withEdits(documentOf({ ...lift, tractor: { ...lift.tractor, ...tractor } }, spoken), edits);
}

/** What a scale, a tape or a guess leaves open, either way, by field [mm, kg]. */
const tolerances: Readonly<Record<string, number>> = {
  'tractor.wheelbase': 8,
  'tractor.mass': 15,
  'tractor.frontAxleMass': 10,
  'tractor.driverMass': 8,
  'tractor.driverAhead': 40,
  'tractor.frontWeightMass': 4,
  'tractor.frontWeightAhead': 25,
  'tractor.wheelWeightMass': 5,
  'tractor.tyreLiquidMass': 20,
  'tractor.loaderMass': 15,
  'tractor.loaderAhead': 50,
  'tractor.loaderLoad': 30,
  'tractor.loaderLoadAhead': 80,
  'tractor.frontAxleLimit': 10,
  'tractor.rearAxleLimit': 20,
  'tractor.totalLimit': 20,
};

/** Eight figures of what stands on the axles that were not read exactly. */
export const balanceTapePaths: fc.Arbitrary<readonly string[]> = fc.shuffledSubarray(Object.keys(tolerances), {
  minLength: 8,
  maxLength: 8,
});

/** Says the taped figures with their tolerance, or some times as much but no more than a fifth; the lift is taped besides. */
export function balanceTapes(paths: readonly string[], lift: Spoken, times = 1): Spoken {
  return (path, value) => {
    const tolerance = tolerances[path];
    if (tolerance === undefined || !paths.includes(path)) return lift(path, value);
    return value === 0 ? value : { value, plusMinus: Math.min(tolerance * times, Math.abs(value) / 5) };
  };
}
