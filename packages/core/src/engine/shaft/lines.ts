import type { Step } from '../formula/index.ts';
import { add, exactly, scale, subtract, type Interval } from '../geometry/index.ts';
import {
  checkIds,
  type CheckId,
  type Line,
  type NamedCheck,
  type Need,
  type NotNeeded,
  type Reason,
} from '../findings/index.ts';
import { overCourses, type Course, type Over } from '../lift/index.ts';
import type { Measured, Reading, Term } from '../proof/index.ts';
import { passageLine } from './passage.ts';
import { angleLimits, askedFirst, everywhere, type JointEnd, type ShaftQuestion } from './question.ts';
import { directionLine, limiterLine, powerLine, seriesLine, shieldsLine, speedLine, splinesLine } from './rating.ts';
import { throughShaft, type ShaftSteps } from './shaftSteps.ts';

/** The checks of a drive, in the order in which they are told. */
const lineIds = checkIds.filter((id) => id.startsWith('shaft.') || ['limit.shields', 'limit.limiter'].includes(id));

/**
 * Every check of the drive with what becomes of it; always the same ids in the same order.
 *
 * @param question the drive of a setup [question]
 * @returns one line for each check [lines]
 * @source our own definitions, docs/method/shaft.md
 */
export function shaftLines(question: ShaftQuestion): Line<Reason>[] {
  if (question.driven === false) return lineIds.map((id) => notNeeded(id, 'notDriven'));
  if (question.driven === null) return notSaid();
  return [
    splinesLine(question),
    speedLine(question),
    directionLine(question),
    powerLine(question),
    seriesLine(question),
    ...lengthLines(question),
    passageLine(question),
    shieldsLine(question),
    limiterLine(question),
  ];
}

/** Nobody said whether a shaft drives it: that is asked once, and the rest waits for it. */
function notSaid(): Line<Reason>[] {
  const [first, ...others] = lineIds;
  return [
    { id: first as CheckId, kind: 'ask', ask: 'implement.driven' },
    ...others.map((id) => notChecked(id, 'driven')),
  ];
}

/** The checks that `ruledLines` gives. */
const ruledIds = lineIds.slice(lineIds.indexOf('shaft.bottoming'), lineIds.indexOf('shaft.passage'));

const notNeeded = (id: CheckId, reason: NotNeeded): Line<Reason> => ({ id, kind: 'notNeeded', reason });
const notChecked = (id: CheckId, needs: Need): Line<Reason> => ({ id, kind: 'notChecked', needs });
const computed = (check: NamedCheck): Line<Reason> => ({ id: check.id, kind: 'computed', check });

/** Lengths and angles are computed once both ends are placed; until then the first figure that is missing is asked for. */
function lengthLines(question: ShaftQuestion): Line<Reason>[] {
  const ask = askedFirst(question);
  return ask === null ? ruledLines(question) : ruledIds.map((id) => ({ id, kind: 'ask', ask }));
}

/**
 * The checks that lengths, angles and the chosen rules decide.
 *
 * @param question the drive of a setup whose ends are placed [question]
 * @returns their lines [lines]
 */
export function ruledLines(question: ShaftQuestion): Line<Reason>[] {
  return [
    computed(bottoming(question)),
    computed(overlapWhileTurning(question)),
    computed(neverApart(question)),
    computed(bend(question, 'shaft.tractorJoint', 'tractor')),
    computed(bend(question, 'shaft.implementJoint', 'implement')),
    computed(bendRaised(question, 'shaft.tractorJointRaised', 'tractor')),
    computed(bendRaised(question, 'shaft.implementJointRaised', 'implement')),
  ];
}

/** The courses at which the drive turns. */
function turning({ turnsWhileRaised }: ShaftQuestion): readonly Course[] {
  return turnsWhileRaised ? ['work', 'raise'] : ['work'];
}

function over(
  question: ShaftQuestion,
  courses: readonly Course[],
  pick: (steps: ShaftSteps) => Step,
  sense: 'least' | 'greatest',
): Over {
  const along = courses.map((course) => {
    const { formula, steps } = throughShaft(question.structure, course);
    return { formula, result: pick(steps) };
  });
  return overCourses(question.leaves, along, sense);
}

const middle = ({ low, high }: Interval): number => (low + high) / 2;

/** D at its shortest, anywhere the lift goes [mm]. */
export function shortestAnywhere(question: ShaftQuestion): Over {
  return over(question, everywhere(question), (steps) => steps.shortest, 'least');
}

/** D at its longest while the drive turns [mm]. */
export function longestWhileTurning(question: ShaftQuestion): Over {
  return over(question, turning(question), (steps) => steps.longest, 'greatest');
}

/** At its shortest anywhere, the distance leaves the clearance over the closed length. */
function bottoming(question: ShaftQuestion): NamedCheck {
  const shortest = shortestAnywhere(question);
  const closed = term(question, 'closedLength');
  const clearance = question.rules.clearance.value;
  return {
    id: 'shaft.bottoming',
    unit: 'mm',
    scale: 10,
    measure: (at) => {
      const length = closed(at);
      const quantity = subtract(shortest.bounds(at, add(length, exactly(clearance))), length);
      return { quantity, low: exactly(clearance), high: null };
    },
    estimate: (at) => shortest.estimate(at) - middle(closed(at)) - clearance,
    reads: (at) => [shortest.reads(at), closed(at)],
  };
}

/** What the profiles still overlap at the longest distance: Oc − (D − Lc). */
function overlapAt(question: ShaftQuestion, longest: Over): Over {
  const [closed, overlap] = [term(question, 'closedLength'), term(question, 'closedOverlap')];
  return {
    bounds: (at, goal) => {
      const reached = add(overlap(at), closed(at));
      return subtract(reached, longest.bounds(at, goal === undefined ? goal : subtract(reached, goal)));
    },
    estimate: (at) => middle(overlap(at)) + middle(closed(at)) - longest.estimate(at),
    reads: (at) => [longest.reads(at), closed(at), overlap(at)],
  };
}

function overlapWhileTurning(question: ShaftQuestion): NamedCheck {
  const left = overlapAt(question, longestWhileTurning(question));
  const wanted = wantedOverlap(question);
  return {
    id: 'shaft.overlap',
    unit: 'mm',
    scale: 10,
    measure: (at) => ({ quantity: left.bounds(at, wanted(at)), low: wanted(at), high: null }),
    estimate: (at) => left.estimate(at) - middle(wanted(at)),
    reads: (at) => [left.reads(at), wanted(at)],
  };
}

/** The overlap that the rules want while turning: a length, or a share of the profile's free length. */
function wantedOverlap({ rules: { overlap }, lift }: ShaftQuestion): Term {
  if (overlap.kind === 'length') return () => exactly(overlap.figure.value);
  const profile = lift.joint.ledger.later('shaft.profileLength');
  return (at) => scale(profile(at), overlap.figure.value);
}

function neverApart(question: ShaftQuestion): NamedCheck {
  const left = overlapAt(
    question,
    over(question, everywhere(question), (steps) => steps.longest, 'greatest'),
  );
  return {
    id: 'shaft.apart',
    unit: 'mm',
    scale: 10,
    measure: (at) => ({ quantity: left.bounds(at, exactly(0)), low: exactly(0), high: null }),
    estimate: left.estimate,
    reads: left.reads,
  };
}

const angleOf =
  (end: JointEnd) =>
  (steps: ShaftSteps): Step =>
    end === 'tractor' ? steps.tractorAngle : steps.implementAngle;

const degrees = (angle: Interval): Interval => scale(angle, 180 / Math.PI);

/** A joint's bend over some courses, against a limit [deg]. */
function bendOver(
  question: ShaftQuestion,
  id: CheckId,
  end: JointEnd,
  courses: readonly Course[],
  limit: Term,
): NamedCheck {
  const bent = over(question, courses, angleOf(end), 'greatest');
  const measure = (at: Reading): Measured => {
    const high = limit(at);
    return { quantity: degrees(bent.bounds(at, scale(high, Math.PI / 180))), low: null, high };
  };
  return {
    id,
    unit: 'deg',
    scale: 3,
    measure,
    estimate: (at) => middle(limit(at)) - (bent.estimate(at) * 180) / Math.PI,
    reads: (at) => [bent.reads(at), limit(at)],
  };
}

function bend(question: ShaftQuestion, id: CheckId, end: JointEnd): NamedCheck {
  const most = exactly(angleLimits(question, end).turning);
  return bendOver(question, id, end, turning(question), () => most);
}

/** Raised, a drive that may be left on must stay under the angle to stop it at; one that is off only must not bind. */
function bendRaised(question: ShaftQuestion, id: CheckId, end: JointEnd): NamedCheck {
  const stop = exactly(angleLimits(question, end).stop);
  const limit: Term = question.turnsWhileRaised ? () => stop : question.lift.joint.ledger.later('shaft.bindAngle');
  return bendOver(question, id, end, everywhere(question), limit);
}

function term({ leaves }: ShaftQuestion, name: string): Term {
  const found = leaves.exact.get(name);
  if (found === undefined) throw new Error(`invariant: no leaf ${name}`);
  return found;
}
