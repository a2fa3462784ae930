import type { Step } from '../formula/index.ts';
import { exactly, greater, lesser, middle, scale, subtract, type Interval } from '../geometry/index.ts';
import type { CheckId, Line, NamedCheck, Need, NotNeeded, Reason } from '../findings/index.ts';
import { marginOf, withCare, type Measured, type Reading, type Term } from '../proof/index.ts';
import { contactLine } from './contact.ts';
import { levelWithin } from './leaves.ts';
import { liftLimits } from './limits.ts';
import { basisOf, holdsUpper, type LiftQuestion } from './question.ts';
import { ratedLift } from './ratedLift.ts';
import { openRun, roughFirst, withFirst, type Run } from './run.ts';

import { throughLift, type Course, type LiftSteps } from './throughLift.ts';

/**
 * Every check through the lift with what becomes of it; always the same ids in the same order.
 *
 * @param lift the lift of a setup [question]
 * @returns one line for each check [lines]
 * @source our own definitions, docs/method/linkage.md and docs/method/lift.md
 */
export function liftLines(lift: LiftQuestion): Line<Reason>[] {
  return [
    topLinkLine(lift),
    pickUpLine(lift),
    workHeightLine(lift),
    attitudeLine(lift),
    tyreLine(lift),
    contactLine(lift),
    linkageLine(lift),
    liftHeightLine(lift),
    forceLine(lift),
    clearanceLine(lift),
    hooksLine(lift),
    couplerLoadLine(lift),
    pinLoadLine(lift),
  ];
}

const computed = (check: NamedCheck): Line<Reason> => ({ id: check.id, kind: 'computed', check });
const notNeeded = (id: CheckId, reason: NotNeeded): Line<Reason> => ({ id, kind: 'notNeeded', reason });
const notChecked = (id: CheckId, needs: Need): Line<Reason> => ({ id, kind: 'notChecked', needs });

/** A formula of the question along a course, opened for some of its steps. */
function run(lift: LiftQuestion, course: Course, pick: (steps: LiftSteps) => readonly Step[]) {
  const { formula, steps } = throughLift(lift.structure, course);
  return { steps, run: openRun(formula, lift.leaves, pick(steps)) };
}

type Shape = Pick<NamedCheck, 'id' | 'unit' | 'scale'>;

/** A check that the least of one result over its course is not below a number. */
function atLeast(wanted: number, shape: Shape, over: Run, result: Step): NamedCheck {
  const least = over.least(result);
  const estimate = over.leastEstimate(result);
  const low = exactly(wanted);
  return {
    ...shape,
    measure: (at) => ({ quantity: least(at, low), low, high: null }),
    estimate: (at) => estimate(at) - wanted,
    reads: over.reads(result),
  };
}

/** A check that a result at one place lies between two terms. */
function between(shape: Shape, over: Run, result: Step, low: Term, high: Term): NamedCheck {
  const value = over.least(result);
  const estimate = over.leastEstimate(result);
  const point = (term: Term, at: Reading): Interval => exactly(middle(term(at)));
  return {
    ...shape,
    measure: (at) => roughFirst(at, (read) => ({ quantity: value(read), low: low(read), high: high(read) })),
    estimate: (at) => marginOf({ quantity: exactly(estimate(at)), low: point(low, at), high: point(high, at) }).low,
    reads: (at) => [over.reads(result)(at), low(at), high(at)],
  };
}

/** The length that makes the implement stand level at work, within what may be set, against what the top link reaches. */
function topLinkLine(lift: LiftQuestion): Line<Reason> {
  const id = 'front.topLink';
  if (!holdsUpper(lift)) return notNeeded(id, 'noUpperPin');
  const { steps, run: over } = run(lift, 'carry', (all) => [all.workTopLink]);
  const { lowest, highest } = lift.joint.ledger.adjuster('tractor.topLinkLength');
  return computed(between({ id, unit: 'mm', scale: 10 }, over, steps.workTopLink, lowest, highest));
}

/** The hooks, or the balls, must come down below the parked pins. */
function pickUpLine(lift: LiftQuestion): Line<Reason> {
  const id = 'pickUp.height';
  const term = (name: string): Term => lift.leaves.exact.get(name) as Term;
  const wanted: Term = (at) => subtract(term('parkedPinHeight')(at), term('seatDepth')(at));
  if (!lift.structure.linkage || !holdsUpper(lift)) {
    const lowest: Term = (at) => {
      const ball = term('ballHeightLow')(at);
      return { low: ball.low + term('hookRise')(at).low, high: ball.high + term('hookRise')(at).high };
    };
    const measure = (at: Reading): Measured => ({
      quantity: subtract(wanted(at), lowest(at)),
      low: exactly(0),
      high: null,
    });
    return computed({ id, unit: 'mm', scale: 20, measure });
  }
  const { steps, run: over } = run(lift, 'bottom', (all) => [all.pins.z]);
  const lowest = over.least(steps.pins.z);
  const estimate = over.leastEstimate(steps.pins.z);
  return computed({
    id,
    unit: 'mm',
    scale: 20,
    measure: (at) =>
      roughFirst(at, (read) => ({ quantity: subtract(wanted(read), lowest(read)), low: exactly(0), high: null })),
    estimate: (at) => middle(wanted(at)) - estimate(at),
    reads: (at) => [over.reads(steps.pins.z)(at), wanted(at)],
  });
}

function workHeightLine(lift: LiftQuestion): Line<Reason> {
  const id = 'work.height';
  if (!lift.structure.workGiven) return notNeeded(id, 'noWorkHeight');
  const { steps, run: over } = run(lift, 'carry', (all) => [all.workHeight, all.lowest, all.highest]);
  const low = over.least(steps.lowest);
  const high = over.least(steps.highest);
  return computed(between({ id, unit: 'mm', scale: 20 }, over, steps.workHeight, low, high));
}

/** How the implement is set to stand at work: a setting, held within what may be set. */
function attitudeLine(lift: LiftQuestion): Line<Reason> {
  const id = 'work.attitude';
  if (!holdsUpper(lift)) return notNeeded(id, 'noUpperPin');
  const pitch = lift.leaves.exact.get('workPitch') as Term;
  const [low, high] = [exactly(-levelWithin), exactly(levelWithin)];
  return computed({ id, unit: 'deg', scale: 10, measure: (at) => ({ quantity: pitch(at), low, high }) });
}

/** Outer face of the lower links against the tyres, all through the lift, pushed over by all their side play. */
function tyreLine(lift: LiftQuestion): Line<Reason> {
  const id = 'contact.tyre';
  const { ledger } = lift.joint;
  if (!ledger.given('tractor.tyreInnerSpan') || !ledger.given('tractor.tyreRadius')) return notChecked(id, 'tyres');
  const { steps, run: over } = run(lift, 'stroke', (all) => [all.tyreGap]);
  return computed(atLeast(liftLimits.tyreGap, { id, unit: 'mm', scale: 5 }, over, steps.tyreGap));
}

function linkageLine(lift: LiftQuestion): Line<Reason> {
  const id = 'lift.linkage';
  if (!holdsUpper(lift)) return notNeeded(id, 'noUpperPin');
  if (!lift.structure.linkage) return notChecked(id, 'linkage');
  if (!lift.structure.heights) return notChecked(id, 'heights');
  const { steps, run: over } = run(lift, 'stroke', (all) => [all.closes]);
  return computed(atLeast(0, { id, unit: 'mm', scale: 10 }, over, steps.closes));
}

/** The balls must come up to the height at which it is carried, or the lift stop if that is lower. */
function liftHeightLine(lift: LiftQuestion): Line<Reason> {
  const id = 'lift.height';
  if (!lift.joint.ledger.given('implement.carryHeight')) return notNeeded(id, 'noCarryHeight');
  const { steps, run: over } = run(lift, 'carry', (all) => [all.highest]);
  const wanted = lift.leaves.exact.get('carryHeight') as Term;
  const highest = over.least(steps.highest);
  const estimate = over.leastEstimate(steps.highest);
  return computed({
    id,
    unit: 'mm',
    scale: 20,
    measure: (at) => ({ quantity: highest(at, wanted(at)), low: wanted(at), high: null }),
    estimate: (at) => estimate(at) - middle(wanted(at)),
    reads: (at) => [over.reads(steps.highest)(at), wanted(at)],
  });
}

/** What the lift has to spare from pick-up to carrying height, at the centre of all that is carried. */
function forceLine(lift: LiftQuestion): Line<Reason> {
  const id = 'lift.force';
  const shape = { id, unit: 'kg', scale: 25 } as const;
  const { structure } = lift;
  const basis = basisOf(lift);
  if (basis === 'cylinder' || basis === 'linkage') {
    const spare = (of: LiftQuestion): NamedCheck => {
      const { steps, run: over } = run(of, 'raise', (all) => [all.spare]);
      return atLeast(0, shape, over, steps.spare);
    };
    const [closely, roughly] = [spare(lift), spare(withRoughTorque(lift))];
    return computed({ ...closely, measure: (at) => withFirst(roughly.measure, closely.measure, at) });
  }
  if (basis === 'none') return { id, kind: 'ask', ask: 'tractor.liftAt610' };
  const { formula, spare } = ratedLift(structure);
  return computed(atLeast(0, shape, openRun(formula, lift.leaves, [spare]), spare));
}

/** The torque behind the supply takes as much to bound as all the rest: first bounds of it mostly show enough. */
function withRoughTorque(lift: LiftQuestion): LiftQuestion {
  const torque = lift.leaves.exact.get('constantTorque') as Term;
  const rough: Term = (at) => torque(withCare(at, 'rough'));
  return { ...lift, leaves: { ...lift.leaves, exact: new Map([...lift.leaves.exact, ['constantTorque', rough]]) } };
}

function clearanceLine(lift: LiftQuestion): Line<Reason> {
  const id = 'limit.clearance';
  const { ledger } = lift.joint;
  if (!ledger.given('implement.lowestBelow') || !ledger.given('implement.lowestBehind'))
    return notChecked(id, 'lowestPart');
  if (!lift.structure.linkage) return notChecked(id, 'linkage');
  const { steps, run: over } = run(lift, 'carry', (all) => [all.clearance]);
  const wanted = lift.leaves.exact.get('clearanceWanted') as Term;
  const clearance = over.least(steps.clearance);
  const estimate = over.leastEstimate(steps.clearance);
  return computed({
    id,
    unit: 'mm',
    scale: 20,
    measure: (at) => ({ quantity: clearance(at, wanted(at)), low: wanted(at), high: null }),
    estimate: (at) => estimate(at) - middle(wanted(at)),
    reads: (at) => [over.reads(steps.clearance)(at), wanted(at)],
  });
}

/** The load must press the lower pins down into open hooks: what rises out of them may unhook. */
function hooksLine(lift: LiftQuestion): Line<Reason> {
  const id = 'limit.hooks';
  const { joint, structure } = lift;
  if (joint.hold === 'bareBalls') return notNeeded(id, 'pinned');
  if (['twoPointsAndWheels', 'floatingTopLink'].includes(joint.setup.implement.mounting ?? ''))
    return { id, kind: 'settled', status: 'fail', reason: 'twoPointsAndWheels' };
  if (structure.held === 'byFrame') return { id, kind: 'settled', status: 'pass', reason: null };
  if (!structure.linkage) return notChecked(id, 'linkage');
  if (!joint.ledger.given('implement.mass')) return notChecked(id, 'load');
  const { steps, run: over } = run(lift, 'raise', (all) => [all.lowerForceUp]);
  return computed(atLeast(0, { id, unit: 'kg', scale: 25 }, over, steps.lowerForceUp));
}

/** The implement and what it carries against the rated load of the coupler. */
function couplerLoadLine({ joint, leaves }: LiftQuestion): Line<Reason> {
  const id = 'limit.couplerLoad';
  if (joint.hold === 'bareBalls') return notNeeded(id, 'noCoupler');
  if (!joint.ledger.given('coupler.ratedLoad')) return notChecked(id, 'ratedLoad');
  if (!joint.ledger.given('implement.mass')) return notChecked(id, 'load');
  const term = (name: string): Term => leaves.exact.get(name) as Term;
  const carried: Term = (at) => {
    const [mass, material] = [term('mass')(at), term('carriedMass')(at)];
    return { low: mass.low + material.low, high: mass.high + material.high };
  };
  const rated = joint.coupler('ratedLoad');
  return computed({
    id,
    unit: 'kg',
    scale: 25,
    measure: (at) => ({ quantity: carried(at), low: null, high: rated(at) }),
  });
}

/** The greatest force on one lower pin through the lift, shared by how far the load lies to one side, against its rating. */
function pinLoadLine(lift: LiftQuestion): Line<Reason> {
  const id = 'limit.pinLoad';
  const { joint, structure } = lift;
  const path = `${joint.frontLower.path}.lowerPinRatedLoad`;
  if (!joint.ledger.given(path)) return notChecked(id, 'pinLoad');
  if (!structure.linkage) return notChecked(id, 'linkage');
  if (!joint.ledger.given('implement.mass')) return notChecked(id, 'load');
  const { steps, run: over } = run(lift, 'raise', (all) => [all.lowerForce]);
  const both = over.greatest(steps.lowerForce);
  const rated = joint.ledger.later(path);
  const aside = joint.implement('centreAside');
  const halfSpan = lift.leaves.exact.get('halfBallSpan') as Term;
  const most: Term = (at) => {
    const [force, to, half] = [both(at), aside(at), halfSpan(at)];
    const lean: Interval = greater(to, scale(to, -1));
    const share = { low: 0.5 + lean.low / (2 * half.high), high: 0.5 + lean.high / (2 * half.low) };
    return { low: force.low * lesser(share, exactly(1)).low, high: force.high * share.high };
  };
  return computed({
    id,
    unit: 'kg',
    scale: 25,
    measure: (at) => ({ quantity: most(at), low: null, high: rated(at) }),
    reads: (at) => [over.reads(steps.lowerForce)(at), rated(at), aside(at), halfSpan(at)],
  });
}
