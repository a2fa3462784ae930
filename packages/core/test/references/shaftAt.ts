import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import { evaluate, openWorkspace, stepsFor, valueAt, type Formula, type Step } from '../../src/engine/formula/index.ts';
import { exactly, middle } from '../../src/engine/geometry/index.ts';
import type { Entry } from '../../src/engine/inputs/index.ts';
import type { Reading, Term } from '../../src/engine/proof/index.ts';
import { throughPassage } from '../../src/engine/shaft/passageSteps.ts';
import { throughShaft, type ShaftSteps } from '../../src/engine/shaft/shaftSteps.ts';
import type { Course } from '../../src/engine/lift/throughLift.ts';
import type { Beside } from '../properties/generateShaft.ts';
import { drawbarLeaves } from '../properties/generateShaftDocument.ts';
import type { Kind } from './surroundings3d.ts';

/** Reads steps of a formula at its places. */
export type Value = (step: Step, place?: number) => number;

/** Every input at the middle of its range, whenever it is first read. */
export function middlesOf({ ledger }: SetupQuestion): Reading {
  return (index) => {
    const { range } = ledger.entries[index] as Entry;
    return exactly(middle(range));
  };
}

/** Runs some steps of a formula at places from 0 to 1, every leaf at the middle of what it reads. */
export function run(
  formula: Formula,
  results: readonly Step[],
  places: readonly number[],
  leaf: (name: string) => number,
): Value {
  const wanted = stepsFor(formula, results);
  const read = new Set([...wanted].filter((step) => formula.ops[step] === 1).map((step) => formula.detail[step]));
  const values = formula.leaves.map((name, i) => (read.has(i) ? leaf(name) : 0));
  const space = openWorkspace(formula, places.length);
  evaluate(space, wanted, {
    leaf: (index) => values[index] as number,
    lane: (place) => places[place] as number,
  });
  return (step, place = 0) => valueAt(space, step, place);
}

/** The leaves of a drive read at a point or at the middle of a box; some may be given by name. */
export function leavesAt(
  question: SetupQuestion,
  at: Reading,
  besides: ReadonlyMap<string, number | Term> = new Map(),
): (name: string) => number {
  return (name) => {
    const given = besides.get(name) ?? question.shaft.leaves.exact.get(name);
    if (given === undefined) throw new Error(`no leaf ${name}`);
    return typeof given === 'number' ? given : middle(given(at));
  };
}

/** The engine's drive at places along a course, every input at the middle of its range. */
export function driveAt(
  question: SetupQuestion,
  course: Course,
  places: readonly number[],
): { steps: ShaftSteps; value: Value } {
  const { formula, steps } = throughShaft(question.shaft.structure, course);
  const { tractorCross, implementCross, stub, input } = steps;
  const results = [
    ...[tractorCross, implementCross, stub, input].flatMap(({ x, z }) => [x, z]),
    ...[steps.leftmost, steps.rightmost, steps.shortest, steps.longest],
    ...[steps.tractorAngle, steps.implementAngle, steps.slope, steps.lift.ballHeight],
  ];
  return { steps, value: run(formula, results, places, leavesAt(question, middlesOf(question))) };
}

/** Leaves that take everything of a kind out of the guard's way. */
const away: Readonly<Record<Kind, Readonly<Record<string, number>>>> = {
  topLink: { topLinkRadius: -9000 },
  lowerLinks: { lowerLinkThickness: -18000 },
  window: { windowWidth: 18000, windowTop: 9000, windowBottom: -9000 },
  drawbar: { 'drawbar0.left': 9000, 'drawbar0.right': 9000 },
};

const kinds = Object.keys(away) as Kind[];

/** The engine's room between the guard and things of one kind at places along the stroke, every input at the middle of its range. */
export function roomsAt(question: SetupQuestion, beside: Beside, kind: Kind, places: readonly number[]): number[] {
  const { drawbar } = beside;
  const { formula, room } = throughPassage(
    question.shaft.structure,
    {
      window: question.shaft.structure.lift.held === 'byFrame',
      windowBottom: beside.windowBottom !== null,
      drawbars: drawbar === null ? [] : [4],
    },
    'stroke',
  );
  const named = Object.entries(beside).filter((entry): entry is [string, number] => typeof entry[1] === 'number');
  const others = kinds.filter((one) => one !== kind).flatMap((one) => Object.entries(away[one]));
  const leaves = leavesAt(question, middlesOf(question), new Map([...named, ...drawbarLeaves(drawbar), ...others]));
  const value = run(formula, [room], places, leaves);
  return places.map((_, i) => value(room, i));
}
