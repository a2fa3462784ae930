import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { Step } from '../../src/engine/formula/index.ts';
import { exactly, middle } from '../../src/engine/geometry/index.ts';
import { ratedLift } from '../../src/engine/lift/ratedLift.ts';
import { basisOf } from '../../src/engine/lift/question.ts';
import { throughLift, type Course, type LiftSteps } from '../../src/engine/lift/throughLift.ts';
import type { Reading, Term } from '../../src/engine/proof/index.ts';
import { openPlain, type PlainRun } from './plainRun.ts';

/**
 * What a truth is looked at for [mm, deg, kg]; `closes` is over the stroke, `raiseCloses` over the raise, and
 * `carryCloses` at the carrying height.
 */
export type Seen =
  | 'closes'
  | 'raiseCloses'
  | 'carryCloses'
  | 'force'
  | 'pitchLeast'
  | 'pitchGreatest'
  | 'clearance'
  | 'topLink'
  | 'tyreGap'
  | 'workHeight'
  | 'lowest'
  | 'highest'
  | 'pinsLowest'
  | 'lowerForceUp'
  | 'lowerForce';

/** Works a truth out on plain numbers: every input at a point, the lift at many places. */
export type Look = (at: Reading) => ReadonlyMap<Seen, number>;

const degrees = 180 / Math.PI;

/** What is looked at together, since it is run together. */
interface Part {
  readonly seen: readonly Seen[];
  readonly open: () => (at: Reading) => readonly (readonly [Seen, number])[];
}

/** What of a truth is looked at, and at how many places of the lift. */
export interface Looking {
  readonly wanted?: readonly Seen[];
  readonly places?: number;
}

/** Opens what a question can be looked at for: everything, or only the force where no linkage is known, unless it is said. */
export function openTruth(question: SetupQuestion, { wanted, places }: Looking = {}): Look {
  const isKnown = question.lift.structure.linkage;
  const isWanted = (what: Seen): boolean => wanted?.includes(what) ?? (isKnown || what === 'force');
  const opened = partsOf(question, places)
    .filter(({ seen }) => seen.some(isWanted))
    .map(({ open }) => open());
  return (at) => new Map(opened.flatMap((look) => look(at)));
}

function partsOf(question: SetupQuestion, places: number | undefined): readonly Part[] {
  const { lift } = question;
  const { structure, leaves } = lift;
  const torque = constantTorque(question, places);
  const open = (course: Course, pick: (steps: LiftSteps) => readonly Step[]) => {
    const { formula, steps } = throughLift(structure, course);
    const termOf = (name: string): Term | undefined =>
      name === 'constantTorque' ? torque.term : leaves.exact.get(name);
    const plain = openPlain(formula, pick(steps), termOf, places);
    return { plain, steps };
  };
  const basis = basisOf(lift);
  const isThrough = basis === 'linkage' || basis === 'cylinder';
  return [
    { seen: ['closes', 'pitchLeast', 'pitchGreatest', 'tyreGap'], open: () => overStroke(open) },
    {
      seen: ['raiseCloses', 'lowerForceUp', 'lowerForce', ...(isThrough ? (['force'] as const) : [])],
      open: () => overRaise(open, isThrough ? torque.run : null),
    },
    ...(basis === 'ratings' ? [{ seen: ['force'], open: () => byRatings(question) } as const] : []),
    { seen: ['carryCloses', 'clearance', 'topLink', 'workHeight', 'lowest', 'highest'], open: () => atCarry(open) },
    { seen: ['pinsLowest'], open: () => atBottom(open) },
  ];
}

type Open = (
  course: Course,
  pick: (steps: LiftSteps) => readonly Step[],
) => { readonly plain: PlainRun; readonly steps: LiftSteps };

function overStroke(open: Open): ReturnType<Part['open']> {
  const { plain, steps } = open('stroke', ({ pitch, tyreGap, closes }) => [pitch, tyreGap, closes]);
  return (at) => {
    plain.run(at);
    return [
      ['closes', plain.least(steps.closes)],
      ['pitchLeast', plain.least(steps.pitch) * degrees],
      ['pitchGreatest', plain.greatest(steps.pitch) * degrees],
      ['tyreGap', plain.least(steps.tyreGap)],
    ];
  };
}

/** Over the raise; the force only where the torque behind it is worked out before. */
function overRaise(open: Open, before: ((at: Reading) => void) | null): ReturnType<Part['open']> {
  const { plain, steps } = open('raise', ({ closes, lowerForceUp, lowerForce, spare }) => [
    ...[closes, lowerForceUp, lowerForce],
    ...(before === null ? [] : [spare]),
  ]);
  return (at) => {
    before?.(at);
    plain.run(at);
    return [
      ['raiseCloses', plain.least(steps.closes)],
      ['lowerForceUp', plain.least(steps.lowerForceUp)],
      ['lowerForce', plain.greatest(steps.lowerForce)],
      ...(before === null ? [] : [['force', plain.least(steps.spare)] as const]),
    ];
  };
}

function byRatings({ lift }: SetupQuestion): ReturnType<Part['open']> {
  const { formula, spare } = ratedLift(lift.structure);
  const plain = openPlain(formula, [spare], (name) => lift.leaves.exact.get(name));
  return (at) => {
    plain.run(at);
    return [['force', plain.least(spare)]];
  };
}

function atCarry(open: Open): ReturnType<Part['open']> {
  const { plain, steps } = open('carry', ({ clearance, workTopLink, workHeight, lowest, highest, closes }) => [
    ...[clearance, workTopLink, workHeight],
    ...[lowest, highest, closes],
  ]);
  return (at) => {
    plain.run(at);
    return [
      ['carryCloses', plain.least(steps.closes)],
      ['clearance', plain.least(steps.clearance)],
      ['topLink', plain.least(steps.workTopLink)],
      ['workHeight', plain.least(steps.workHeight)],
      ['lowest', plain.least(steps.lowest)],
      ['highest', plain.least(steps.highest)],
    ];
  };
}

function atBottom(open: Open): ReturnType<Part['open']> {
  const { plain, steps } = open('bottom', ({ pins }) => [pins.z]);
  return (at) => {
    plain.run(at);
    return [['pinsLowest', plain.least(steps.pins.z)]];
  };
}

/** The torque that the ratings suggest, itself worked out from the greatest rise of each test point over all of the lift. */
function constantTorque(question: SetupQuestion, places: number | undefined) {
  const { structure, leaves } = question.lift;
  const isRated = structure.arms && !structure.cylinder;
  const { formula, steps } = throughLift(structure, 'rated');
  const rated = [
    ...(isRated && structure.atBalls ? [['liftAtBalls', steps.supply.ballsByArm] as const] : []),
    ...(isRated && structure.at610 ? [['liftAt610', steps.supply.testByArm] as const] : []),
  ];
  const plain = openPlain(
    formula,
    rated.map(([, rise]) => rise),
    (name) => leaves.exact.get(name),
    places,
  );
  const leaf = (name: string, at: Reading): number => {
    const term = leaves.exact.get(name);
    if (term === undefined) throw new Error(`no leaf ${name}`);
    return middle(term(at));
  };
  let torque = 0;
  return {
    run: (at: Reading): void => {
      if (rated.length === 0) return;
      plain.run(at);
      torque = Math.min(...rated.map(([rating, rise]) => leaf(rating, at) * plain.greatest(rise)));
    },
    term: () => exactly(torque),
  };
}
