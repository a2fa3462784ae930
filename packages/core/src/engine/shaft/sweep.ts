import {
  evaluate,
  openWorkspace,
  stepsFor,
  valueAt,
  type Formula,
  type Step,
  type Workspace,
} from '../formula/index.ts';
import { middle, type Interval } from '../geometry/index.ts';
import type { Arrow } from '../linkage/index.ts';
import { stationCount, stationsOf, type Course, type SidePoint } from '../lift/index.ts';
import type { Reading } from '../proof/index.ts';
import { equivalentAngle, nonUniformity } from './joints.ts';
import { angleLimits, isPlaced, type ShaftQuestion } from './question.ts';
import { throughShaft, type ShaftSteps } from './shaftSteps.ts';

/** The drive shaft at one height of the lift, at the reported setting and the middle of every range [mm, deg]. */
export interface ShaftStation {
  readonly ballHeight: number;
  /** Cross centres of both joints, from the side. */
  readonly tractorCross: SidePoint;
  readonly implementCross: SidePoint;
  readonly stub: SidePoint;
  readonly input: SidePoint;
  /** Pitch of the input shaft, positive where its rear end is higher. */
  readonly slope: number;
  /** How far the joint at the implement stands to the right of that at the tractor, at its leftmost and its rightmost. */
  readonly leftmost: number;
  readonly rightmost: number;
  /** Distance between the cross centres at its shortest and longest over shift and sway. */
  readonly shortest: number;
  readonly longest: number;
  /** What the profiles overlap at the longest, and what is left at the shortest before the shaft bottoms; null without a shaft. */
  readonly overlap: number | null;
  readonly toBottom: number | null;
  /** How far each joint bends at most over shift and sway. */
  readonly tractorAngle: number;
  readonly implementAngle: number;
  /** Angle of one joint that would turn as unevenly as both together with the implement in the middle, and that unevenness [deg, share]. */
  readonly equivalentAngle: number;
  readonly unevenness: number;
}

/** The drive shaft seen once through the lift: drawings, plots, sheets and words all read this. */
export interface ShaftSweep {
  /** One for each station of the lift’s own sweep. */
  readonly stations: readonly ShaftStation[];
  readonly stubAside: number;
  /** The implement’s joint with the implement neither shifted nor swayed, to the right of the middle. */
  readonly inputAside: number;
  readonly shiftLeft: number;
  readonly shiftRight: number;
  readonly sway: number;
  /** Ball heights between which the drive turns; one height where it turns at work only. */
  readonly turnsFrom: number;
  readonly turnsTo: number;
  readonly closedLength: number | null;
  readonly closedOverlap: number | null;
  readonly guard: { readonly tube: number; readonly cone: number; readonly coneLength: number } | null;
  readonly window: {
    readonly width: number;
    readonly top: number;
    readonly bottom: number | null;
    readonly behind: number;
  } | null;
  /** What the chosen rules want [mm, deg]; the overlap is null where it is a share of a profile whose length is not known. */
  readonly limits: {
    readonly clearance: number;
    readonly overlap: number | null;
    readonly turning: { readonly tractor: number; readonly implement: number };
    readonly stop: { readonly tractor: number; readonly implement: number };
    /** How far a joint may bend anywhere: the angle to stop at, or, with a drive that is off when raised, where a joint may bind. */
    readonly raised: { readonly tractor: number; readonly implement: number };
  };
  /** The lowest ball heights, going up, above which a joint bends more than it may while turning, and at all; null where none does. */
  readonly aboveTurning: number | null;
  readonly aboveStop: number | null;
  /** Ball heights at which the distance is shortest and longest: where to measure. */
  readonly shortestAt: number;
  readonly longestAt: number;
}

const rooms = new WeakMap<Formula, Workspace>();
const degrees = (angle: number): number => (angle * 180) / Math.PI;

/**
 * Computes the drive shaft at the stations of the lift, from the lowest ball height to the highest.
 *
 * @param question the drive of a setup [question]
 * @param at reads the reported setting [reading]
 * @returns the sweep, or null where nothing is driven or stub and input are not placed [mm, deg]
 */
export function shaftSweepOf(question: ShaftQuestion, at: Reading): ShaftSweep | null {
  if (!isPlaced(question)) return null;
  const leaf = (name: string): number => middle((question.leaves.exact.get(name) ?? nothing)(at));
  const given = (path: string): number | null =>
    question.lift.joint.ledger.given(path) ? middle(question.lift.joint.ledger.term(path)(at)) : null;
  const { lanes } = stationsOf(question.lift, at);
  const { space, steps } = run(question, 'stroke', leaf, (place) => lanes[place] as number);
  const shaft = {
    closedLength: given('shaft.closedLength') === null ? null : leaf('closedLength'),
    closedOverlap: given('shaft.closedOverlap'),
  };
  const stations = Array.from({ length: stationCount }, (_, i) =>
    stationAt(space, steps, i, { ...shaft, yaw: leaf('inputYaw') }),
  );
  const extreme = (of: (station: ShaftStation) => number): number =>
    stations.reduce((best, station) => (of(station) < of(best) ? station : best)).ballHeight;
  const turning = angleLimitsOf(question, 'turning');
  const stop = angleLimitsOf(question, 'stop');
  const binds = question.lift.joint.ledger.term('shaft.bindAngle')(at).low;
  const raised = question.turnsWhileRaised ? stop : { tractor: binds, implement: binds };
  return {
    stations,
    stubAside: leaf('stubAside'),
    inputAside:
      leaf('stubAside') +
      (firstOf(stations).leftmost + firstOf(stations).rightmost + leaf('shiftLeft') - leaf('shiftRight')) / 2,
    shiftLeft: leaf('shiftLeft'),
    shiftRight: leaf('shiftRight'),
    sway: leaf('sidePlay'),
    ...turningHeights(question, leaf),
    ...shaft,
    guard: guardOf(given),
    window: windowOf(question, given, at),
    limits: { clearance: question.rules.clearance.value, overlap: overlapOf(question, given), turning, stop, raised },
    aboveTurning: aboveLimit(stations, turning),
    aboveStop: aboveLimit(stations, raised),
    shortestAt: extreme((station) => station.shortest),
    longestAt: extreme((station) => -station.longest),
  };
}

const nothing = (): Interval => ({ low: 0, high: 0 });
const firstOf = (stations: readonly ShaftStation[]): ShaftStation => stations[0] as ShaftStation;

function run(
  question: ShaftQuestion,
  course: Course,
  leaf: (name: string) => number,
  lane: (place: number) => number,
): { space: Workspace; steps: ShaftSteps } {
  const { formula, steps } = throughShaft(question.structure, course);
  const space = rooms.get(formula) ?? openWorkspace(formula, stationCount);
  rooms.set(formula, space);
  const values = formula.leaves.map(leaf);
  evaluate(space, stepsFor(formula, wanted(steps)), {
    leaf: (index) => values[index] as number,
    lane,
  });
  return { space, steps };
}

function wanted(steps: ShaftSteps): Step[] {
  const points = [steps.tractorCross, steps.implementCross, steps.stub, steps.input];
  return [
    ...points.flatMap(({ x, z }) => [x, z]),
    steps.lift.ballHeight,
    steps.leftmost,
    steps.rightmost,
    steps.shortest,
    steps.longest,
    steps.tractorAngle,
    steps.implementAngle,
    steps.slope,
  ];
}

interface Fixed {
  readonly closedLength: number | null;
  readonly closedOverlap: number | null;
  /** Turn of the input shaft to the right as it goes forward [deg]. */
  readonly yaw: number;
}

function stationAt(space: Workspace, steps: ShaftSteps, place: number, shaft: Fixed): ShaftStation {
  const value = (step: Step): number => valueAt(space, step, place);
  const point = (arrow: Arrow): SidePoint => [value(arrow.x), value(arrow.z)];
  const { closedLength, closedOverlap } = shaft;
  const [shortest, longest] = [value(steps.shortest), value(steps.longest)];
  const station = {
    ballHeight: value(steps.lift.ballHeight),
    tractorCross: point(steps.tractorCross),
    implementCross: point(steps.implementCross),
    stub: point(steps.stub),
    input: point(steps.input),
    slope: degrees(value(steps.slope)),
    leftmost: value(steps.leftmost),
    rightmost: value(steps.rightmost),
    shortest,
    longest,
    overlap: closedLength === null || closedOverlap === null ? null : closedOverlap - (longest - closedLength),
    toBottom: closedLength === null ? null : shortest - closedLength,
    tractorAngle: degrees(value(steps.tractorAngle)),
    implementAngle: degrees(value(steps.implementAngle)),
  };
  return { ...station, ...evennessOf(station, shaft.yaw) };
}

/** How unevenly both joints turn together with the implement in the middle of its swing, the planes of both joints apart by a twist. */
function evennessOf(
  station: Pick<ShaftStation, 'tractorCross' | 'implementCross' | 'leftmost' | 'rightmost' | 'slope'>,
  yawed: number,
): Pick<ShaftStation, 'equivalentAngle' | 'unevenness'> {
  const [x, z] = [
    station.implementCross[0] - station.tractorCross[0],
    station.implementCross[1] - station.tractorCross[1],
  ];
  const line: Vector = [x, (station.leftmost + station.rightmost) / 2, z];
  const slope = (station.slope * Math.PI) / 180;
  const yaw = (yawed * Math.PI) / 180;
  const input: Vector = [Math.cos(slope) * Math.cos(yaw), -Math.sin(yaw), Math.sin(slope) * Math.cos(yaw)];
  const stub: Vector = [1, 0, 0];
  const both = equivalentAngle(
    between(stub, line),
    between(line, input),
    between(cross(stub, line), cross(line, input)),
  );
  return { equivalentAngle: degrees(both), unevenness: nonUniformity(both) };
}

type Vector = readonly [number, number, number];

function cross([a, b, c]: Vector, [x, y, z]: Vector): Vector {
  return [b * z - c * y, c * x - a * z, a * y - b * x];
}

function between(a: Vector, b: Vector): number {
  const across = Math.hypot(...cross(a, b));
  return across === 0 ? 0 : Math.atan2(across, a[0] * b[0] + a[1] * b[1] + a[2] * b[2]);
}

function turningHeights(
  question: ShaftQuestion,
  leaf: (name: string) => number,
): Pick<ShaftSweep, 'turnsFrom' | 'turnsTo'> {
  const heights = (course: Course): number[] => {
    const { space, steps } = run(question, course, leaf, (place) => place / (stationCount - 1));
    return [0, stationCount - 1].map((place) => valueAt(space, steps.lift.ballHeight, place));
  };
  const all = [...heights('work'), ...(question.turnsWhileRaised ? heights('raise') : [])];
  return { turnsFrom: Math.min(...all), turnsTo: Math.max(...all) };
}

function guardOf(given: (path: string) => number | null): ShaftSweep['guard'] {
  const [tube, cone] = [given('shaft.guardTubeDiameter'), given('shaft.guardConeDiameter')];
  if (tube === null || cone === null) return null;
  return { tube, cone, coneLength: given('shaft.guardConeLength') ?? cone };
}

function windowOf(question: ShaftQuestion, given: (path: string) => number | null, at: Reading): ShaftSweep['window'] {
  const [width, top] = [given('coupler.windowWidth'), given('coupler.windowTop')];
  if (width === null || top === null) return null;
  const behind = middle(question.lift.joint.coupler('windowBehind')(at));
  return { width, top, bottom: given('coupler.windowBottom'), behind };
}

function overlapOf({ rules: { overlap } }: ShaftQuestion, given: (path: string) => number | null): number | null {
  if (overlap.kind === 'length') return overlap.figure.value;
  const profile = given('shaft.profileLength');
  return profile === null ? null : overlap.figure.value * profile;
}

function angleLimitsOf(
  question: ShaftQuestion,
  which: 'turning' | 'stop',
): { readonly tractor: number; readonly implement: number } {
  return { tractor: angleLimits(question, 'tractor')[which], implement: angleLimits(question, 'implement')[which] };
}

/** Where, going up from the lowest height at which both joints are within their limits, one first goes over: on the straight line between two stations. */
function aboveLimit(
  stations: readonly ShaftStation[],
  limits: { readonly tractor: number; readonly implement: number },
): number | null {
  const spare = (station: ShaftStation): number =>
    Math.min(limits.tractor - station.tractorAngle, limits.implement - station.implementAngle);
  const within = stations.findIndex((station) => spare(station) >= 0);
  const over = stations.findIndex((station, i) => i > within && spare(station) < 0);
  if (within < 0) return firstOf(stations).ballHeight;
  if (over < 0) return null;
  const [before, here] = [stations[over - 1] as ShaftStation, stations[over] as ShaftStation];
  const share = spare(before) / (spare(before) - spare(here));
  return before.ballHeight + share * (here.ballHeight - before.ballHeight);
}
