import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import { throughBalance, type BalanceSteps } from '../../src/engine/balance/balanceSteps.ts';
import { evaluate, openWorkspace, stepsFor, valueAt, type Step } from '../../src/engine/formula/index.ts';
import { exactly, middle } from '../../src/engine/geometry/index.ts';
import type { Course } from '../../src/engine/lift/throughLift.ts';
import type { Reading } from '../../src/engine/proof/index.ts';

/** Reads the middle of every range, of those too that are opened only when they are first read. */
export function middleReading({ ledger }: SetupQuestion): Reading {
  return (index) => exactly(middle(ledger.entries[index]?.range ?? exactly(0)));
}

/** Runs the engine’s axle loads on plain numbers at places from 0 to 1 along a course; leaves may be given other values. */
export function balanceAt(
  question: SetupQuestion,
  course: Course,
  places: readonly number[],
  pick: (steps: BalanceSteps) => readonly Step[],
  instead: Readonly<Record<string, number>> = {},
): { readonly steps: BalanceSteps; readonly value: (step: Step, place?: number) => number } {
  const { structure, leaves } = question.balance;
  const { formula, steps } = throughBalance(structure, course);
  const wanted = stepsFor(formula, pick(steps));
  const at = middleReading(question);
  const values = formula.leaves.map((name, leaf) => {
    const isRead = wanted.some((step) => formula.ops[step] === 1 && formula.detail[step] === leaf);
    const term = leaves.exact.get(name);
    return instead[name] ?? (isRead && term !== undefined ? middle(term(at)) : 0);
  });
  const space = openWorkspace(formula, places.length);
  evaluate(space, wanted, {
    leaf: (index) => values[index] as number,
    lane: (place) => places[place] as number,
  });
  return { steps, value: (step, place = 0) => valueAt(space, step, place) };
}
