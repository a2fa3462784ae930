import {
  evaluate,
  openWorkspace,
  stepsFor,
  valueAt,
  type Formula,
  type Step,
  type Workspace,
} from '../formula/index.ts';
import { middle } from '../geometry/index.ts';
import type { Arrow } from '../linkage/index.ts';
import type { Reading } from '../proof/index.ts';
import { holdsUpper, type LiftQuestion } from './question.ts';
import { stationCount, stationsOf } from './stations.ts';
import { throughLift, type LiftSteps } from './throughLift.ts';

/** A point of the side view: behind the rear axle, above the ground [mm, mm]. */
export type SidePoint = readonly [number, number];

/** Everything at one height of the lift, at the reported setting and the middle of every range [mm, deg, kg]. */
export interface Station {
  readonly ballHeight: number;
  readonly ball: SidePoint;
  /** Where the body that the top link holds sits: the balls, or hooks on the link ends. */
  readonly origin: SidePoint;
  readonly topEnd: SidePoint;
  readonly armEnd: SidePoint | null;
  readonly rodFoot: SidePoint | null;
  readonly pins: SidePoint;
  readonly mast: SidePoint;
  readonly centre: SidePoint;
  /** Pitch of the body that the top link holds, and of the implement; positive where the rear rises [deg]. */
  readonly framePitch: number;
  readonly pitch: number;
  readonly clearance: number | null;
  /** The mass that could sit in the load's place once the allowance is off, proven and estimated; null where nothing bounds it [kg]. */
  readonly proven: number | null;
  readonly estimated: number | null;
  /** Pull of the top link; null where nothing bounds it, with the links pointing straight up [kg]. */
  readonly topLinkForce: number | null;
  /** Push of the lower links upward, both sides together; the most that is told where nothing bounds it [kg]. */
  readonly lowerForceUp: number;
  /** Rise of the load's centre for a unit rise of the balls; null where the balls rise no more. */
  readonly loadRise: number | null;
  /** Where the links' lines meet ahead of the balls, from the side; null where they run side by side [mm]. */
  readonly convergence: number | null;
  readonly closes: boolean;
}

/** The lift seen once: drawings, plots, sheets and words all read this. */
export interface Sweep {
  readonly stations: readonly Station[];
  readonly lowerPivot: SidePoint;
  readonly topPivot: SidePoint;
  readonly armPivot: SidePoint | null;
  /** Length of the top link as set for work. */
  readonly topLink: number;
  /** Mass of the load: what the implement carries, or else the implement itself; null where it is not known [kg]. */
  readonly load: number | null;
  /** Ball heights that are asked of the lift; null where they are not given. */
  readonly pickUp: number | null;
  readonly work: number | null;
  readonly carry: number | null;
  /** Lowest ball height, going up, at which the load is more than the lift is proven, and estimated, to manage once the allowance is off; null where none is. */
  readonly stallProven: number | null;
  readonly stallEstimated: number | null;
  /** The ratings prove more somewhere than a constant torque through them would give: they contradict it. */
  readonly ratingsDisagree: boolean;
  /** Heights at which the linkage can't close; null where it closes all through. */
  readonly unreachable: { readonly low: number; readonly high: number } | null;
  /** Where the links' lines meet ahead of the balls, from above; null where they run side by side [mm]. */
  readonly convergencePlan: number | null;
}

const most = 1e6;
const rooms = new WeakMap<Formula, Workspace>();

/**
 * Computes the lift from its lowest ball height to its highest, evenly spaced, and at those that are asked of it.
 *
 * @param lift the lift of a setup [question]
 * @param at reads the reported setting [reading]
 * @returns the sweep, or null where the linkage is not known or holds no upper point [mm, deg, kg]
 */
export function sweepOf(lift: LiftQuestion, at: Reading): Sweep | null {
  const { structure, joint, leaves } = lift;
  if (!structure.linkage || !holdsUpper(lift)) return null;
  const { formula, steps } = throughLift(structure, 'stroke');
  const space = rooms.get(formula) ?? openWorkspace(formula, stationCount);
  rooms.set(formula, space);
  const values = formula.leaves.map((name) => middle((leaves.exact.get(name) ?? nothing)(at)));
  const { lanes, asked } = stationsOf(lift, at);
  evaluate(space, stepsFor(formula, wanted(steps)), {
    leaf: (index) => values[index] as number,
    lane: (place) => lanes[place] as number,
  });
  const known: Known = {
    load: joint.ledger.given('implement.mass'),
    rated: structure.cylinder || structure.atBalls || structure.at610,
    lowestPart: joint.ledger.given('implement.lowestBelow') && joint.ledger.given('implement.lowestBehind'),
  };
  const stations = Array.from({ length: stationCount }, (_, i) => stationAt(space, steps, i, known));
  const one = (step: Step): number => valueAt(space, step, 0);
  const load = known.load ? one(steps.load.mass) : null;
  return {
    stations,
    lowerPivot: pointAt(space, steps.links.pivot, 0),
    topPivot: pointAt(space, steps.topPivot, 0),
    armPivot: structure.arms ? [valueOf('liftArmPivotBehindAxle'), valueOf('liftArmPivotHeight')] : null,
    topLink: one(steps.workTopLink),
    load,
    ...asked,
    stallProven: load === null ? null : stallOf(stations, (station) => spareAt(station.proven, load)),
    stallEstimated: load === null ? null : stallOf(stations, (station) => spareAt(station.estimated, load)),
    ratingsDisagree: known.rated && disagrees(space, steps),
    unreachable: unreachableOf(stations),
    convergencePlan: bounded(one(steps.convergencePlan)),
  };
  function valueOf(name: string): number {
    return middle((leaves.exact.get(name) ?? nothing)(at));
  }
}

const nothing = (): { low: number; high: number } => ({ low: 0, high: 0 });

interface Known {
  readonly load: boolean;
  readonly rated: boolean;
  readonly lowestPart: boolean;
}

function wanted(steps: LiftSteps): Step[] {
  const points = [steps.place.ball, steps.body.origin, steps.body.upper, steps.pins, steps.mast, steps.centre];
  const arm = steps.arm === null ? [] : [steps.arm.end, steps.arm.rodFoot];
  return [
    ...[...points, ...arm, steps.links.pivot, steps.topPivot].flatMap((point) => [point.x, point.z]),
    steps.ballHeight,
    steps.workTopLink,
    steps.body.pitch,
    steps.pitch,
    steps.clearance,
    steps.supply.lowAtBalls,
    steps.supply.estimateAtBalls,
    steps.proven,
    steps.estimated,
    steps.load.mass,
    steps.load.rise,
    steps.topLinkForce,
    steps.lowerForceUp,
    steps.closesHere,
    steps.convergenceSide,
    steps.convergencePlan,
  ];
}

function pointAt(space: Workspace, point: Arrow, place: number): SidePoint {
  return [valueAt(space, point.x, place), valueAt(space, point.z, place)];
}

const degrees = (angle: number): number => (angle * 180) / Math.PI;

function stationAt(space: Workspace, steps: LiftSteps, place: number, known: Known): Station {
  const value = (step: Step): number => valueAt(space, step, place);
  const point = (arrow: Arrow): SidePoint => pointAt(space, arrow, place);
  const supply = (step: Step): number | null => (known.rated && known.load ? bounded(value(step)) : null);
  return {
    ballHeight: value(steps.ballHeight),
    ball: point(steps.place.ball),
    origin: point(steps.body.origin),
    topEnd: point(steps.body.upper),
    armEnd: steps.arm === null ? null : point(steps.arm.end),
    rodFoot: steps.arm === null ? null : point(steps.arm.rodFoot),
    pins: point(steps.pins),
    mast: point(steps.mast),
    centre: point(steps.centre),
    framePitch: degrees(value(steps.body.pitch)),
    pitch: degrees(value(steps.pitch)),
    clearance: known.lowestPart ? value(steps.clearance) : null,
    proven: supply(steps.proven),
    estimated: supply(steps.estimated),
    topLinkForce: bounded(value(steps.topLinkForce)),
    lowerForceUp: limited(value(steps.lowerForceUp)),
    loadRise: bounded(value(steps.load.rise)),
    convergence: bounded(value(steps.convergenceSide)),
    closes: value(steps.closesHere) >= 0,
  };
}

function bounded(value: number): number | null {
  return Math.abs(value) < most ? value : null;
}

function limited(value: number): number {
  return bounded(value) ?? (value < 0 ? -most : most);
}

/** What is left above the load. */
function spareAt(allowed: number | null, load: number): number {
  return allowed === null ? Infinity : allowed - load;
}

/** Where the spare falls below zero going up, on the straight line between two stations. */
function stallOf(stations: readonly Station[], spare: (station: Station) => number): number | null {
  const first = stations.findIndex((station) => spare(station) < 0);
  const here = stations[first];
  if (here === undefined) return null;
  const before = stations[first - 1];
  if (before === undefined) return here.ballHeight;
  const share = spare(before) / (spare(before) - spare(here));
  return before.ballHeight + share * (here.ballHeight - before.ballHeight);
}

/** How far an estimate may lie below what is proven before it counts as contradicted. */
const agreement = 0.99;

function disagrees(space: Workspace, { supply }: LiftSteps): boolean {
  return Array.from({ length: stationCount }, (_, i) => i).some(
    (i) => valueAt(space, supply.estimateAtBalls, i) < agreement * valueAt(space, supply.lowAtBalls, i),
  );
}

function unreachableOf(stations: readonly Station[]): { low: number; high: number } | null {
  const open = stations.filter((station) => !station.closes).map((station) => station.ballHeight);
  return open.length === 0 ? null : { low: Math.min(...open), high: Math.max(...open) };
}
