import { prepareSetup, type SetupQuestion } from '../../src/engine/assess/index.ts';
import { evaluate, openWorkspace, stepsFor, valueAt, type Step } from '../../src/engine/formula/index.ts';
import { middle } from '../../src/engine/geometry/index.ts';
import { throughLift, type Course, type LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { reader, type Reading } from '../../src/engine/proof/index.ts';
import { readSetup, type SetupDocument } from '../../src/records/index.ts';

/** The inputs and checks of a document; throws where it can't be read. */
export function questionOf(document: SetupDocument): SetupQuestion {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return prepareSetup(reading.setup);
}

/** The middle of every range of a question. */
export function middles({ ledger, lift }: SetupQuestion): Reading {
  for (const term of lift.leaves.exact.values()) term((index) => ledger.entries[index]?.range ?? { low: 0, high: 0 });
  return reader(ledger.entries.map(({ range }) => ({ low: middle(range), high: middle(range) })));
}

/** Reads a result at places along a course; leaves may be given other values than the setup's. */
export interface Evaluated {
  readonly steps: LiftSteps;
  readonly value: (step: Step, place?: number) => number;
}

/** Runs the engine's formula on plain numbers at places from 0 to 1 along a course. */
export function evaluated(
  question: SetupQuestion,
  course: Course,
  places: readonly number[],
  pick: (steps: LiftSteps) => readonly Step[],
  instead: Readonly<Record<string, number>> = {},
): Evaluated {
  const { formula, steps } = throughLift(question.lift.structure, course);
  const at = middles(question);
  const wanted = stepsFor(formula, pick(steps));
  const values = formula.leaves.map((name, leaf) => {
    const isRead = wanted.some((step) => formula.ops[step] === 1 && formula.detail[step] === leaf);
    const term = question.lift.leaves.exact.get(name);
    return instead[name] ?? (isRead && term !== undefined ? middle(term(at)) : 0);
  });
  const space = openWorkspace(formula, places.length);
  evaluate(space, wanted, {
    leaf: (index) => values[index] as number,
    lane: (place) => places[place] as number,
  });
  return { steps, value: (step, place = 0) => valueAt(space, step, place) };
}

/** Evenly spaced places from 0 to 1. */
export function spaced(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i / (count - 1));
}
