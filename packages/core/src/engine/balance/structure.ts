import type { SteeringRuleName } from '../../tables/index.ts';
import type { LoaderState } from '../../records/index.ts';
import { holdsUpper, type LiftQuestion, type Structure } from '../lift/index.ts';

/** What decides how the formula of the axle loads is written, apart from any figure. */
export interface BalanceStructure {
  readonly lift: Structure;
  /** A top link holds what is carried: its attitude follows from the linkage; else it is taken to stand level, links level. */
  readonly held: boolean;
  readonly loader: LoaderState;
  readonly weighedWithLoader: boolean;
  readonly rule: SteeringRuleName;
}

/** The structure of the axle loads. A loader that was weighed with the tractor is on it, unless said otherwise. */
export function structureOf(lift: LiftQuestion, rule: SteeringRuleName): BalanceStructure {
  const { tractor } = lift.joint.setup;
  const weighedWithLoader = tractor.weighedWithLoader ?? false;
  return {
    lift: lift.structure,
    held: holdsUpper(lift),
    loader: tractor.loader ?? (weighedWithLoader ? 'empty' : 'absent'),
    weighedWithLoader,
    rule,
  };
}
