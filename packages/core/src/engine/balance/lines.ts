import type { Step } from '../formula/index.ts';
import { exactly } from '../geometry/index.ts';
import type { CheckId, Line, NamedCheck, Need, Reason } from '../findings/index.ts';
import { overCourses, type Over } from '../lift/index.ts';
import type { Measured, Reading, Term } from '../proof/index.ts';
import { throughBalance, type BalanceSteps } from './balanceSteps.ts';
import { tyreRating, type Axle } from './leaves.ts';
import { askedFirst, everywhere, type BalanceQuestion } from './question.ts';

/**
 * Every check of the axle loads with what becomes of it; always the same ids in the same order.
 *
 * @param question the axle loads of a setup [question]
 * @returns one line for each check [lines]
 * @source our own definitions, docs/method/balance.md
 */
export function balanceLines(question: BalanceQuestion): Line<Reason>[] {
  return [
    frontShareLine(question),
    rearShareLine(question),
    frontOfTotalLine(question),
    axleLine(question, 'limit.frontAxle', 'tractor.frontAxleLimit', (steps) => steps.frontFree),
    axleLine(question, 'limit.rearAxle', 'tractor.rearAxleLimit', (steps) => steps.rear),
    axleLine(question, 'limit.totalMass', 'tractor.totalLimit', (steps) => steps.total),
    tyreLine(question, 'limit.frontTyres', 'front', (steps) => steps.frontFree),
    tyreLine(question, 'limit.rearTyres', 'rear', (steps) => steps.rear),
    bracketLine(question),
  ];
}

const computed = (check: NamedCheck): Line<Reason> => ({ id: check.id, kind: 'computed', check });
const notChecked = (id: CheckId, needs: Need): Line<Reason> => ({ id, kind: 'notChecked', needs });

/**
 * A result over everywhere the lift goes.
 *
 * @param question the axle loads of a setup [question]
 * @param pick which result [step]
 * @param sense its least or its greatest [name]
 * @returns its bounds, a quick estimate and what it reads [kg]
 */
export function overLift(
  question: BalanceQuestion,
  pick: (steps: BalanceSteps) => Step,
  sense: 'least' | 'greatest',
): Over {
  const along = everywhere(question).map((course) => {
    const { formula, steps } = throughBalance(question.structure, course);
    return { formula, result: pick(steps) };
  });
  return overCourses(question.leaves, along, sense);
}

const shape = { unit: 'kg', scale: 25 } as const;

/** A check that a share is kept everywhere the lift goes; until the tractor is weighed, its first figure is asked for. */
function shareLine(question: BalanceQuestion, id: CheckId, pick: (steps: BalanceSteps) => Step): Line<Reason> {
  const ask = askedFirst(question);
  if (ask !== null) return { id, kind: 'ask', ask };
  const { bounds, estimate, reads } = overLift(question, pick, 'least');
  const low = exactly(0);
  const measure = (at: Reading): Measured => ({ quantity: bounds(at, low), low, high: null });
  return computed({ id, ...shape, measure, estimate, reads });
}

/** The front axle keeps the share that the chosen rule wants, wherever the lift is. */
function frontShareLine(question: BalanceQuestion): Line<Reason> {
  return shareLine(question, 'balance.frontShare', (steps) => steps.spare);
}

/** With a loader on, the rear axle keeps its share too. */
function rearShareLine(question: BalanceQuestion): Line<Reason> {
  const id = 'balance.rearShare';
  if (question.structure.loader === 'absent') return { id, kind: 'notNeeded', reason: 'noLoader' };
  return shareLine(question, id, (steps) => steps.rearSpare);
}

/** Some rules take the share of everything that is carried: told beside the verdict, never part of it. */
function frontOfTotalLine(question: BalanceQuestion): Line<Reason> {
  const id = 'limit.frontOfTotal';
  if (askedFirst(question) !== null) return notChecked(id, 'axleMasses');
  return shareLine(question, id, (steps) => steps.spareOfTotal);
}

/** A load against what is permitted. */
function mostLine(
  question: BalanceQuestion,
  id: CheckId,
  pick: (steps: BalanceSteps) => Step,
  permitted: Term,
): Line<Reason> {
  if (askedFirst(question) !== null) return notChecked(id, 'axleMasses');
  const { bounds, estimate, reads } = overLift(question, pick, 'greatest');
  return computed({
    id,
    ...shape,
    measure: (at) => ({ quantity: bounds(at, permitted(at)), low: null, high: permitted(at) }),
    estimate: (at) => permitted(at).low - estimate(at),
    reads: (at) => [reads(at), permitted(at)],
  });
}

/** The front axle carries most with nothing hung behind, so that is what it is held against. */
function axleLine(
  question: BalanceQuestion,
  id: CheckId,
  path: string,
  pick: (steps: BalanceSteps) => Step,
): Line<Reason> {
  const { ledger } = question.lift.joint;
  if (!ledger.given(path)) return notChecked(id, 'plate');
  return mostLine(question, id, pick, ledger.later(path));
}

function tyreLine(
  question: BalanceQuestion,
  id: CheckId,
  axle: Axle,
  pick: (steps: BalanceSteps) => Step,
): Line<Reason> {
  const rating = tyreRating(question.lift.joint, axle);
  return rating === null ? notChecked(id, 'tyreRating') : mostLine(question, id, pick, rating);
}

/** Front weights against what their bracket holds. */
function bracketLine({ lift: { joint } }: BalanceQuestion): Line<Reason> {
  const id = 'limit.frontBracket';
  if (!joint.ledger.given('tractor.frontWeightMass')) return { id, kind: 'notNeeded', reason: 'noFrontWeights' };
  if (!joint.ledger.given('tractor.frontBracketLimit')) return notChecked(id, 'bracketLimit');
  const [hung, most] = [joint.tractor('frontWeightMass'), joint.tractor('frontBracketLimit')];
  return computed({ id, ...shape, measure: (at) => ({ quantity: hung(at), low: null, high: most(at) }) });
}
