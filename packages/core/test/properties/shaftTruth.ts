import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import { exactly, middle } from '../../src/engine/geometry/index.ts';
import type { Course } from '../../src/engine/lift/throughLift.ts';
import type { Reading, Term } from '../../src/engine/proof/index.ts';
import { throughPassage } from '../../src/engine/shaft/passageSteps.ts';
import { throughShaft, type ShaftSteps } from '../../src/engine/shaft/shaftSteps.ts';
import type { OutlineRecord } from '../../src/records/index.ts';
import { openPlain, type PlainRun } from './plainRun.ts';

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

/** Where a corner of a drawn outline, or a side of it, truly lies [mm], from where it was drawn and how far it may be off. */
export type TrueCorner = (drawn: number, plusMinusMm: number) => Term;

const degrees = 180 / Math.PI;

/** Everywhere the lift goes, and where the drive turns. */
function coursesOf({ shaft }: SetupQuestion): { everywhere: readonly Course[]; turning: readonly Course[] } {
  return {
    everywhere: shaft.structure.lift.carriesApart ? ['stroke', 'raise'] : ['stroke'],
    turning: shaft.turnsWhileRaised ? ['work', 'raise'] : ['work'],
  };
}

/** Extremes of a drive over some courses together. */
interface Over {
  readonly shortest: number;
  readonly longest: number;
  readonly tractorAngle: number;
  readonly implementAngle: number;
  readonly closes: number;
}

/** The drive along one course, as it was last run. */
interface Along {
  readonly plain: PlainRun;
  readonly steps: ShaftSteps;
}

function openAlong({ shaft }: SetupQuestion, course: Course, places: number | undefined): Along {
  const { formula, steps } = throughShaft(shaft.structure, course);
  const results = [steps.shortest, steps.longest, steps.tractorAngle, steps.implementAngle, steps.lift.closes];
  return { plain: openPlain(formula, results, (name) => shaft.leaves.exact.get(name), places), steps };
}

function extremes(runs: readonly Along[]): Over {
  const low = (of: (steps: ShaftSteps) => number): number =>
    Math.min(...runs.map(({ plain, steps }) => plain.least(of(steps))));
  const high = (of: (steps: ShaftSteps) => number): number =>
    Math.max(...runs.map(({ plain, steps }) => plain.greatest(of(steps))));
  return {
    shortest: low((steps) => steps.shortest),
    longest: high((steps) => steps.longest),
    tractorAngle: high((steps) => steps.tractorAngle) * degrees,
    implementAngle: high((steps) => steps.implementAngle) * degrees,
    closes: low((steps) => steps.lift.closes),
  };
}

/** Where drawn corners truly lie, and at how many places of the lift a truth is looked at. */
export interface LookingAtShaft {
  readonly corner?: TrueCorner;
  readonly places?: number;
}

/** Opens what the drive of a question can be looked at for; the passage only where it is computed. */
export function openShaftTruth(
  question: SetupQuestion,
  { corner = asDrawn, places }: LookingAtShaft = {},
): LookAtShaft {
  const { everywhere, turning } = coursesOf(question);
  const courses = new Map(
    [...everywhere, ...turning].map((course) => [course, openAlong(question, course, places)] as const),
  );
  const along = (wanted: readonly Course[]): Along[] => wanted.map((course) => courses.get(course) as Along);
  const room = openRoom(question, everywhere, { corner, places });
  const leaf = (name: string, at: Reading): number => middle((question.shaft.leaves.exact.get(name) as Term)(at));
  return (at) => {
    for (const { plain } of courses.values()) plain.run(at);
    const [whole, part] = [extremes(along(everywhere)), extremes(along(turning))];
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

const asDrawn: TrueCorner = (drawn) => () => exactly(drawn);

function openRoom(
  question: SetupQuestion,
  courses: readonly Course[],
  { corner, places }: { readonly corner: TrueCorner; readonly places: number | undefined },
): ((at: Reading) => number) | null {
  if (!question.checks.some(({ id }) => id === 'shaft.passage')) return null;
  const { structure, leaves } = question.shaft;
  const drawbars = (question.joint.setup.tractor.outlines ?? []).filter(
    ({ part, side }) => part === 'drawbar' && side !== undefined,
  );
  const surroundings = {
    window: structure.lift.held === 'byFrame',
    windowBottom: question.ledger.given('coupler.windowBottom'),
    drawbars: drawbars.map(({ side }) => side?.length ?? 0),
  };
  const besides = new Map([...passageTerms(question), ...drawbars.flatMap((one, i) => drawbarTerms(one, i, corner))]);
  const runs = courses.map((course) => {
    const { formula, room } = throughPassage(structure, surroundings, course);
    const termOf = (name: string): Term | undefined => leaves.exact.get(name) ?? besides.get(name);
    return { plain: openPlain(formula, [room], termOf, places), room };
  });
  return (at) => {
    for (const { plain } of runs) plain.run(at);
    return Math.min(...runs.map(({ plain, room }) => plain.least(room)));
  };
}

/** Leaves of the passage that a drive itself does not read. */
function passageTerms({ ledger, joint }: SetupQuestion): [string, Term][] {
  const terms = (keys: readonly string[], of: (key: string) => Term): [string, Term][] =>
    keys.map((key) => [key, of(key)]);
  return [
    ...terms(['guardTubeDiameter', 'guardConeDiameter', 'guardConeLength'], (key) => ledger.later(`shaft.${key}`)),
    ...terms(['windowWidth', 'windowTop', 'windowBottom', 'windowBehind'], joint.coupler),
    ...terms(['topLinkRadius'], joint.tractor),
  ];
}

/** A drawbar that is not drawn from behind reaches to both sides, farther than anything here. */
const farAside = 5000;

function drawbarTerms({ side, rear, plusMinusMm = 0 }: OutlineRecord<string>, i: number, corner: TrueCorner) {
  const ys = rear?.map(([y]) => y) ?? [-farAside, farAside];
  return [
    [`drawbar${i}.left`, corner(Math.min(...ys), plusMinusMm)],
    [`drawbar${i}.right`, corner(Math.max(...ys), plusMinusMm)],
    ...(side ?? []).flatMap(([x, z], k): [string, Term][] => [
      [`drawbar${i}.${k}.x`, corner(x, plusMinusMm)],
      [`drawbar${i}.${k}.z`, corner(z, plusMinusMm)],
    ]),
  ] as [string, Term][];
}
