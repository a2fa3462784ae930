import { steeringRules, type SteeringRuleName } from '../../tables/index.ts';
import {
  evaluate,
  openWorkspace,
  stepsFor,
  valueAt,
  type Formula,
  type Step,
  type Workspace,
} from '../formula/index.ts';
import { exactly, middle, type Interval } from '../geometry/index.ts';
import { stationCount, stationsOf } from '../lift/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import { throughBalance, type BalanceSteps } from './balanceSteps.ts';
import { counterweightFor } from './counterweight.ts';
import { tyreRating, type Axle } from './leaves.ts';
import { overLift } from './lines.ts';
import { askedFirst, type BalanceQuestion } from './question.ts';
import { tippingAngles, type TippingAngles } from './slope.ts';

/** The axle loads at one height of the lift, at the reported setting and the middle of every range [mm, kg]; raw and signed. */
export interface BalanceStation {
  readonly ballHeight: number;
  readonly front: number;
  readonly rear: number;
  readonly total: number;
  /** What the front axle has to carry by the chosen rule. */
  readonly wanted: number;
  /** Centre of everything, ahead of the rear axle. */
  readonly ahead: number;
  /** Slopes at which it would tip at rest; null where a height or width is not known. */
  readonly tips: TippingAngles | null;
}

/** Something that stands on the tractor ahead of its rear axle. */
export interface FittedMass {
  readonly what: 'driver' | 'frontWeights' | 'loader' | 'loaderLoad';
  readonly mass: number;
  /** Ahead of the rear axle [mm]. */
  readonly ahead: number;
}

/** The axle loads seen once through the lift: drawings, plots, sheets and words all read this. */
export interface BalanceSweep {
  /** One for each station of the lift’s own sweep. */
  readonly stations: readonly BalanceStation[];
  readonly wheelbase: number;
  /** The tractor as weighed for the job, and its front axle then. */
  readonly base: number;
  readonly ownFront: number;
  readonly rule: SteeringRuleName;
  readonly share: number;
  /** Ball height at which the front axle carries least beyond what the rule wants, and what it carries there for certain. */
  readonly worst: { readonly ballHeight: number; readonly front: Interval; readonly wanted: number };
  /** The front wheels leave the ground somewhere. */
  readonly wheelsLift: boolean;
  /** The front axle with nothing hung behind. */
  readonly frontFree: number;
  /** What hangs behind, altogether. */
  readonly behind: number;
  readonly fitted: readonly FittedMass[];
  /** Front weights that would be needed altogether, where they would hang: at least, and certainly enough; null where none are. */
  readonly ballast: { readonly ahead: number; readonly least: number; readonly enough: number } | null;
  /**
   * What would have to hang at the lower hitch points, on top of what hangs there, for the rear axle to keep its share with the
   * loader as it is; null where nothing has to, or no loader is on [kg].
   */
  readonly counterweight: number | null;
  /** What is permitted on each axle, by plate and tyres, and altogether; null where nothing is known. */
  readonly permitted: { readonly front: number | null; readonly rear: number | null; readonly total: number | null };
}

const rooms = new WeakMap<Formula, Workspace>();

/**
 * Computes the axle loads at the stations of the lift, from the lowest ball height to the highest.
 *
 * @param question the axle loads of a setup [question]
 * @param at reads the reported setting [reading]
 * @returns the sweep, or null where the tractor is not weighed or the implement’s mass is not known [mm, kg, deg]
 */
export function balanceSweepOf(question: BalanceQuestion, at: Reading): BalanceSweep | null {
  const { ledger } = question.lift.joint;
  if (askedFirst(question) !== null || !ledger.given('implement.mass')) return null;
  const leaf = (name: string): number => middle((question.leaves.exact.get(name) ?? nothing)(at));
  const { formula, steps } = throughBalance(question.structure, 'stroke');
  const space = rooms.get(formula) ?? openWorkspace(formula, stationCount);
  rooms.set(formula, space);
  const values = formula.leaves.map(leaf);
  const { lanes } = stationsOf(question.lift, at);
  evaluate(space, stepsFor(formula, wanted(steps)), {
    leaf: (index) => values[index] as number,
    lane: (place) => lanes[place] as number,
  });
  const tall = tallOf(question, at);
  const stations = Array.from({ length: stationCount }, (_, i) => stationAt(space, steps, i, tall));
  const worst = stations.reduce((a, b) => (b.front - b.wanted < a.front - a.wanted ? b : a));
  const one = (step: Step): number => valueAt(space, step, 0);
  return {
    stations,
    wheelbase: leaf('wheelbase'),
    base: one(steps.base),
    ownFront: leaf('frontAxleMass'),
    rule: question.structure.rule,
    share: steeringRules(question.structure.rule).share.value,
    worst: {
      ballHeight: worst.ballHeight,
      front: overLift(question, (all) => all.front, 'least').bounds(at),
      wanted: worst.wanted,
    },
    wheelsLift: stations.some(({ front }) => front <= 0),
    frontFree: one(steps.frontFree),
    behind: one(steps.behind),
    fitted: fittedOn(question, leaf),
    ballast: ballastOf(question, at, leaf('ballastAhead')),
    counterweight: counterweightOf(question, space, steps),
    permitted: permittedOn(question, at),
  };
}

const nothing: Term = () => exactly(0);

function wanted(steps: BalanceSteps): Step[] {
  const { lift } = steps;
  return [
    lift.ballHeight,
    lift.centre.z,
    steps.wheelbase,
    steps.front,
    steps.rear,
    steps.total,
    steps.wanted,
    steps.base,
    steps.frontFree,
    steps.behind,
    lift.place.ball.x,
    lift.links.pivot.x,
    lift.links.length,
  ];
}

/** What tipping is worked out from beside the axle loads [mm, kg·mm]. */
interface Tall {
  readonly wheelbase: number;
  readonly rearTrack: number;
  readonly pivotHeight: number;
  /** Height at which everything but what hangs behind is taken to have its centre. */
  readonly centreHeight: number;
  readonly asideMoment: number;
}

function tallOf(question: BalanceQuestion, at: Reading): Tall | null {
  const { ledger, implement } = question.lift.joint;
  const read = (key: string): number => middle(ledger.term(`tractor.${key}`)(at));
  const needed = ['centreHeight', 'frontPivotHeight', 'rearTrack'];
  if (!question.structure.held || !needed.every((key) => ledger.given(`tractor.${key}`))) return null;
  return {
    wheelbase: read('wheelbase'),
    rearTrack: read('rearTrack'),
    pivotHeight: read('frontPivotHeight'),
    centreHeight: read('centreHeight'),
    asideMoment: Math.abs(middle(implement('mass')(at)) * middle(implement('centreAside')(at))),
  };
}

function stationAt(space: Workspace, steps: BalanceSteps, place: number, tall: Tall | null): BalanceStation {
  const value = (step: Step): number => valueAt(space, step, place);
  const [front, total, behind] = [value(steps.front), value(steps.total), value(steps.behind)];
  const ahead = (front * value(steps.wheelbase)) / total;
  const raised = (centreHeight: number): number =>
    ((total - behind) * centreHeight + behind * value(steps.lift.centre.z)) / total;
  return {
    ballHeight: value(steps.lift.ballHeight),
    front,
    rear: value(steps.rear),
    total,
    wanted: value(steps.wanted),
    ahead,
    tips:
      tall === null
        ? null
        : tippingAngles({ ...tall, ahead, height: raised(tall.centreHeight), aside: tall.asideMoment / total }),
  };
}

function fittedOn({ structure }: BalanceQuestion, leaf: (name: string) => number): FittedMass[] {
  const front = leaf('wheelbase');
  const isOn = structure.loader !== 'absent';
  const all: readonly FittedMass[] = [
    { what: 'driver', mass: leaf('driverMass'), ahead: leaf('driverAhead') },
    { what: 'frontWeights', mass: leaf('frontWeightMass'), ahead: front + leaf('frontWeightAhead') },
    ...(isOn && !structure.weighedWithLoader
      ? [{ what: 'loader' as const, mass: leaf('loaderMass'), ahead: front + leaf('loaderAhead') }]
      : []),
    ...(structure.loader === 'loaded'
      ? [{ what: 'loaderLoad' as const, mass: leaf('loaderLoad'), ahead: front + leaf('loaderLoadAhead') }]
      : []),
  ];
  return all.filter(({ mass }) => mass > 0);
}

function ballastOf(question: BalanceQuestion, at: Reading, ahead: number): BalanceSweep['ballast'] {
  const { low, high } = overLift(question, (steps) => steps.ballast, 'greatest').bounds(at);
  return high <= 0 ? null : { ahead, least: Math.max(0, low), enough: high };
}

/** At the links' ends where they are at each height; where nothing is held, links level as for all that hangs there. */
function counterweightOf({ structure }: BalanceQuestion, space: Workspace, steps: BalanceSteps): number | null {
  if (structure.loader === 'absent') return null;
  const { place: at, links } = steps.lift;
  const places = Array.from({ length: stationCount }, (_, place) => {
    const value = (step: Step): number => valueAt(space, step, place);
    const behind = structure.held ? value(at.ball.x) : value(links.pivot.x) + value(links.length);
    return { wheelbase: value(steps.wheelbase), front: value(steps.front), rear: value(steps.rear), behind };
  });
  return counterweightFor(places);
}

/** The least of plate and tyres governs. */
function permittedOn({ lift: { joint } }: BalanceQuestion, at: Reading): BalanceSweep['permitted'] {
  const plate = (key: string): number | null =>
    joint.ledger.given(`tractor.${key}`) ? joint.tractor(key)(at).low : null;
  const onAxle = (axle: Axle): number | null => {
    const rated = tyreRating(joint, axle);
    return leastOf(plate(`${axle}AxleLimit`), rated === null ? null : rated(at).low);
  };
  return { front: onAxle('front'), rear: onAxle('rear'), total: plate('totalLimit') };
}

function leastOf(a: number | null, b: number | null): number | null {
  if (a === null || b === null) return a ?? b;
  return Math.min(a, b);
}
