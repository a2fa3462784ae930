import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import {
  evaluate,
  openWorkspace,
  stepsFor,
  type Formula,
  type Step,
  type Workspace,
} from '../../src/engine/formula/index.ts';
import { middle } from '../../src/engine/geometry/index.ts';
import { ratedLift } from '../../src/engine/lift/ratedLift.ts';
import { throughLift, type Course } from '../../src/engine/lift/throughLift.ts';
import type { Reading } from '../../src/engine/proof/index.ts';

/** Twice as many places as a margin is proven at, and the ends and middles of those pieces among them. */
const places = 97;

/** What a truth is looked at for; `closes` is over the stroke, `raiseCloses` over the raise [mm, deg, kg]. */
export type Seen =
  'closes' | 'raiseCloses' | 'force' | 'pitchLeast' | 'pitchGreatest' | 'clearance' | 'topLink' | 'tyreGap';

/** Works a truth out on plain numbers: every input at a point, the lift at many places. */
export type Look = (at: Reading) => ReadonlyMap<Seen, number>;

const degrees = 180 / Math.PI;

/** Opens what a question can be looked at for. */
export function openTruth(question: SetupQuestion): Look {
  const { structure } = question.lift;
  return structure.linkage ? throughTheLift(question) : fromRatings(question);
}

function fromRatings(question: SetupQuestion): Look {
  const { formula, spare } = ratedLift(question.lift.structure);
  const run = openPlain(question, formula, [spare]);
  return (at) => new Map([['force', leastOf(run(at, 0), spare)]]);
}

function throughTheLift(question: SetupQuestion): Look {
  const { structure } = question.lift;
  const along = (course: Course) => throughLift(structure, course);
  const [stroke, raise, carry] = [along('stroke'), along('raise'), along('carry')];
  const { supply, pitch, tyreGap, closes } = stroke.steps;
  const rises = [...(structure.atBalls ? [supply.ballsByArm] : []), ...(structure.at610 ? [supply.testByArm] : [])];
  const isRated = structure.arms && !structure.cylinder;
  const overStroke = openPlain(question, stroke.formula, [...(isRated ? rises : []), pitch, tyreGap, closes]);
  const overRaise = openPlain(question, raise.formula, [raise.steps.spare, raise.steps.closes]);
  const atCarry = openPlain(question, carry.formula, [carry.steps.clearance, carry.steps.workTopLink]);
  const leaf = (name: string, at: Reading): number => {
    const term = question.lift.leaves.exact.get(name);
    if (term === undefined) throw new Error(`no leaf ${name}`);
    return middle(term(at));
  };
  return (at) => {
    const whole = overStroke(at, 0);
    const torques = [
      ...(structure.atBalls ? [() => leaf('liftAtBalls', at) * greatestOf(whole, supply.ballsByArm)] : []),
      ...(structure.at610 ? [() => leaf('liftAt610', at) * greatestOf(whole, supply.testByArm)] : []),
    ];
    const torque = isRated ? Math.min(...torques.map((of) => of())) : 0;
    const seen = new Map<Seen, number>([
      ['closes', leastOf(whole, closes)],
      ['pitchLeast', leastOf(whole, pitch) * degrees],
      ['pitchGreatest', greatestOf(whole, pitch) * degrees],
      ['tyreGap', leastOf(whole, tyreGap)],
    ]);
    const raised = overRaise(at, torque);
    seen.set('raiseCloses', leastOf(raised, raise.steps.closes));
    seen.set('force', leastOf(raised, raise.steps.spare));
    const there = atCarry(at, torque);
    seen.set('clearance', leastOf(there, carry.steps.clearance));
    return seen.set('topLink', leastOf(there, carry.steps.workTopLink));
  };
}

/** Runs some results of a formula at a point of the inputs; the constant torque, itself worked out, is handed in. */
function openPlain(question: SetupQuestion, formula: Formula, results: readonly Step[]) {
  const steps = stepsFor(formula, results);
  const isLaned = formula.laned.includes(1);
  const space = openWorkspace(formula, isLaned ? places : 1);
  const read = new Set([...steps].filter((step) => formula.ops[step] === 1).map((step) => formula.detail[step]));
  const terms = formula.leaves.map((name, i) => (read.has(i) ? question.lift.leaves.exact.get(name) : undefined));
  return (at: Reading, constantTorque: number): Workspace => {
    const values = terms.map((term, i) => {
      if (formula.leaves[i] === 'constantTorque') return constantTorque;
      return term === undefined ? 0 : middle(term(at));
    });
    evaluate(space, steps, { leaf: (index) => values[index] as number, lane: (place) => place / (places - 1) });
    return space;
  };
}

function leastOf({ values }: Workspace, step: Step): number {
  return Math.min(...(values[step] as Float64Array));
}

function greatestOf({ values }: Workspace, step: Step): number {
  return Math.max(...(values[step] as Float64Array));
}
