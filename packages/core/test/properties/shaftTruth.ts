import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import {
  evaluate,
  openWorkspace,
  stepsFor,
  type Formula,
  type Step,
  type Workspace,
} from '../../src/engine/formula/index.ts';
import { exactly, middle } from '../../src/engine/geometry/index.ts';
import type { Course } from '../../src/engine/lift/throughLift.ts';
import type { Reading, Term } from '../../src/engine/proof/index.ts';
import { throughPassage } from '../../src/engine/shaft/passageSteps.ts';
import { throughShaft, type ShaftSteps } from '../../src/engine/shaft/shaftSteps.ts';
import type { Beside } from './generateShaft.ts';
import { drawbarLeaves } from './generateShaftDocument.ts';

/** What a truth of the drive is looked at for, by the check that bounds it; `closes` is over the whole lift. */
export type SeenOfShaft =
  | 'closes'
  | 'shaft.bottoming'
  | 'shaft.overlap'
  | 'shaft.apart'
  | 'shaft.tractorJoint'
  | 'shaft.implementJoint'
  | 'shaft.tractorJointRaised'
  | 'shaft.implementJointRaised'
  | 'shaft.passage';

/** Works a truth out on plain numbers: every input at a point, the lift at many places. */
export type LookAtShaft = (at: Reading) => ReadonlyMap<SeenOfShaft, number>;

/** Twice as many places as a margin is proven at, and the ends and middles of those pieces among them. */
const places = 97;
const degrees = 180 / Math.PI;

/** Leaves of the passage that a drive itself does not read. */
function passageTerms({ ledger, joint }: SetupQuestion, { drawbar }: Beside): [string, Term][] {
  const terms = (keys: readonly string[], of: (key: string) => Term): [string, Term][] =>
    keys.map((key) => [key, of(key)]);
  return [
    ...terms(['guardTubeDiameter', 'guardConeDiameter', 'guardConeLength'], (key) => ledger.later(`shaft.${key}`)),
    ...terms(['windowWidth', 'windowTop', 'windowBottom', 'windowBehind'], joint.coupler),
    ...terms(['topLinkRadius'], joint.tractor),
    ...drawbarLeaves(drawbar).map(([name, value]): [string, Term] => [name, () => exactly(value)]),
  ];
}

/** Runs some results of a formula at a point of the inputs. */
function openPlain(question: SetupQuestion, besides: Beside, formula: Formula, results: readonly Step[]) {
  const steps = stepsFor(formula, results);
  const space = openWorkspace(formula, formula.laned.includes(1) ? places : 1);
  const read = new Set([...steps].filter((step) => formula.ops[step] === 1).map((step) => formula.detail[step]));
  const beside = new Map(passageTerms(question, besides));
  const terms = formula.leaves.map((name, i) => {
    if (!read.has(i)) return null;
    const term = question.shaft.leaves.exact.get(name) ?? beside.get(name);
    if (term === undefined) throw new Error(`no leaf ${name}`);
    return term;
  });
  return (at: Reading): Workspace => {
    const values = terms.map((term) => (term === null ? 0 : middle(term(at))));
    evaluate(space, steps, { leaf: (index) => values[index] as number, lane: (place) => place / (places - 1) });
    return space;
  };
}

const least = ({ values }: Workspace, step: Step): number => Math.min(...(values[step] as Float64Array));
const greatest = ({ values }: Workspace, step: Step): number => Math.max(...(values[step] as Float64Array));

/** Extremes of a drive over some courses together. */
interface Over {
  readonly shortest: number;
  readonly longest: number;
  readonly tractorAngle: number;
  readonly implementAngle: number;
  readonly closes: number;
}

function openOver(question: SetupQuestion, beside: Beside, courses: readonly Course[]): (at: Reading) => Over {
  const runs = courses.map((course) => {
    const { formula, steps } = throughShaft(question.shaft.structure, course);
    const results = [steps.shortest, steps.longest, steps.tractorAngle, steps.implementAngle, steps.lift.closes];
    return { plain: openPlain(question, beside, formula, results), steps };
  });
  return (at) => {
    const seen = runs.map(({ plain, steps }) => ({ space: plain(at), steps }));
    const low = (of: (steps: ShaftSteps) => Step): number =>
      Math.min(...seen.map(({ space, steps }) => least(space, of(steps))));
    const high = (of: (steps: ShaftSteps) => Step): number =>
      Math.max(...seen.map(({ space, steps }) => greatest(space, of(steps))));
    return {
      shortest: low((steps) => steps.shortest),
      longest: high((steps) => steps.longest),
      tractorAngle: high((steps) => steps.tractorAngle) * degrees,
      implementAngle: high((steps) => steps.implementAngle) * degrees,
      closes: low((steps) => steps.lift.closes),
    };
  };
}

/** Opens what the drive of a question can be looked at for; the passage only where it is computed. */
export function openShaftTruth(question: SetupQuestion, beside: Beside): LookAtShaft {
  const { structure, turnsWhileRaised, leaves } = question.shaft;
  const turning = openOver(question, beside, turnsWhileRaised ? ['work', 'raise'] : ['work']);
  const everywhere = openOver(question, beside, structure.lift.carriesApart ? ['stroke', 'raise'] : ['stroke']);
  const room = openRoom(question, beside);
  const leaf = (name: string, at: Reading): number => middle((leaves.exact.get(name) as Term)(at));
  return (at) => {
    const [whole, part] = [everywhere(at), turning(at)];
    const [closed, overlap] = [leaf('closedLength', at), leaf('closedOverlap', at)];
    return new Map<SeenOfShaft, number>([
      ['closes', Math.min(whole.closes, part.closes)],
      ['shaft.bottoming', whole.shortest - closed],
      ['shaft.overlap', overlap - (part.longest - closed)],
      ['shaft.apart', overlap - (whole.longest - closed)],
      ['shaft.tractorJoint', part.tractorAngle],
      ['shaft.implementJoint', part.implementAngle],
      ['shaft.tractorJointRaised', whole.tractorAngle],
      ['shaft.implementJointRaised', whole.implementAngle],
      ...(room === null ? [] : [['shaft.passage', room(at)] as const]),
    ]);
  };
}

function openRoom(question: SetupQuestion, beside: Beside): ((at: Reading) => number) | null {
  if (!question.checks.some(({ id }) => id === 'shaft.passage')) return null;
  const { formula, room } = throughPassage(
    question.shaft.structure,
    {
      window: question.shaft.structure.lift.held === 'byFrame',
      windowBottom: question.ledger.given('coupler.windowBottom'),
      drawbars: beside.drawbar === null ? [] : [4],
    },
    'stroke',
  );
  const plain = openPlain(question, beside, formula, [room]);
  return (at) => least(plain(at), room);
}
