import { passageClearance } from '../../tables/index.ts';
import type { OutlineRecord } from '../../records/index.ts';
import { exactly, lesser, type Interval } from '../geometry/index.ts';
import { knowsShaftWay } from '../joint/index.ts';
import type { Line, Reason } from '../findings/index.ts';
import type { Step } from '../formula/index.ts';
import { openRun, type Bounds, type Leaves, type Run } from '../lift/index.ts';
import { nearlyZero, withCare, type Reading, type Term } from '../proof/index.ts';
import { throughPassage, type Surroundings } from './passageSteps.ts';
import { everywhere, isPlaced, type ShaftQuestion } from './question.ts';

const id = 'shaft.passage';

/** Pieces that the lift is cut into here: the room changes slowly and takes much to bound. */
const pieces = 12;

/** The guard’s way past top link, lower links and drawbar, and through the opening of a coupler, all through the lift. */
export function passageLine(question: ShaftQuestion): Line<Reason> {
  const { ledger } = question.lift.joint;
  if (!isPlaced(question)) return { id, kind: 'notChecked', needs: 'linkage' };
  if (!['guardTubeDiameter', 'guardConeDiameter'].every((key) => ledger.given(`shaft.${key}`)))
    return { id, kind: 'notChecked', needs: 'guard' };
  if (question.structure.lift.held === 'byFrame' && !knowsShaftWay(ledger))
    return { id, kind: 'notChecked', needs: 'window' };
  const drawbars = drawbarsOf(question);
  const surroundings: Surroundings = {
    window: question.structure.lift.held === 'byFrame',
    windowBottom: ledger.given('coupler.windowBottom'),
    drawbars: drawbars.map(({ side }) => side?.length ?? 0),
  };
  const leaves = passageLeaves(question, drawbars);
  const ways = everywhere(question).map((course): Way => {
    const { formula, rooms, room } = throughPassage(question.structure, surroundings, course);
    return { run: openRun(formula, leaves, [room, ...rooms], pieces), rooms, room };
  });
  const bounds = ways.map(roomAlong);
  const estimates = ways.map(({ run, room }) => run.leastEstimate(room));
  const reads = ways.map(({ run, room }) => run.reads(room));
  const wanted = exactly(passageClearance.value);
  return {
    id,
    kind: 'computed',
    check: {
      id,
      unit: 'mm',
      scale: 10,
      measure: (at) => ({ quantity: bounds.map((least) => least(at, wanted)).reduce(lesser), low: wanted, high: null }),
      estimate: (at) => Math.min(...estimates.map((estimate) => estimate(at))) - wanted.low,
      reads: (at) => reads.map((read) => read(at)),
    },
  };
}

/** The way of the guard along one course: the room beside each thing, and the least of them. */
interface Way {
  readonly run: Run;
  readonly rooms: readonly Step[];
  readonly room: Step;
}

/**
 * The least room along a course. Beside most things there is so much that first bounds show it: only those that could govern
 * are bounded with care. Each by itself gives the nearer end; the farther one is that of all together, since what gives room
 * beside one thing may take it beside another.
 */
function roomAlong({ run, rooms, room }: Way): (at: Reading, goal: Interval) => Interval {
  const beside = rooms.map((one) => run.least(one));
  const together = run.least(room);
  return (at, goal) => {
    if (at.care === 'fails') return together(at, goal);
    if (at.care === 'passes') return clearOf(beside, at, goal) ?? together(at, goal);
    const first = beside.map((least) => least(withCare(at, 'rough')));
    const rough = first.reduce(lesser);
    if (at.care === 'rough') return innermost(rough, together(at));
    const closer = beside.map((least, i) => {
      const known = first[i] as Interval;
      return known.low < rough.high ? least(at) : known;
    });
    return innermost(closer.reduce(lesser), together(at));
  };
}

/** The room that is certain beside each, or null where some is not shown to be enough by itself. */
function clearOf(beside: readonly Bounds[], at: Reading, goal: Interval): Interval | null {
  let low = Infinity;
  for (const least of beside) {
    low = Math.min(low, least(at, goal).low);
    if (low < goal.high - nearlyZero) return null;
  }
  return { low, high: Infinity };
}

function innermost(a: Interval, b: Interval): Interval {
  return { low: Math.max(a.low, b.low), high: Math.min(a.high, b.high) };
}

type Drawn = OutlineRecord<string>;

function drawbarsOf({ lift: { joint } }: ShaftQuestion): readonly Drawn[] {
  return (joint.setup.tractor.outlines ?? []).filter(({ part, side }) => part === 'drawbar' && side !== undefined);
}

function passageLeaves({ leaves, lift: { joint } }: ShaftQuestion, drawbars: readonly Drawn[]): Leaves {
  const { ledger, coupler, tractor } = joint;
  const shaft = (key: string): Term => ledger.later(`shaft.${key}`);
  const own: [string, Term][] = [
    ['guardTubeDiameter', shaft('guardTubeDiameter')],
    ['guardConeDiameter', shaft('guardConeDiameter')],
    ['guardConeLength', shaft('guardConeLength')],
    ['windowWidth', coupler('windowWidth')],
    ['windowTop', coupler('windowTop')],
    ['windowBottom', coupler('windowBottom')],
    ['windowBehind', coupler('windowBehind')],
    ['topLinkRadius', tractor('topLinkRadius')],
    ...drawbars.flatMap(drawbarLeaves),
  ];
  return { exact: new Map([...leaves.exact, ...own]), quick: new Map([...leaves.quick, ...own]) };
}

/** A drawbar that is not drawn from behind is taken to reach to both sides. */
function drawbarLeaves({ side, rear, plusMinusMm }: Drawn, i: number): [string, Term][] {
  const slack = plusMinusMm ?? 0;
  const about =
    (value: number): Term =>
    () => ({ low: value - slack, high: value + slack });
  const ys = rear?.map(([y]) => y) ?? [-farAside, farAside];
  return [
    [`drawbar${i}.left`, about(Math.min(...ys))],
    [`drawbar${i}.right`, about(Math.max(...ys))],
    ...(side ?? []).flatMap(([x, z], corner): [string, Term][] => [
      [`drawbar${i}.${corner}.x`, about(x)],
      [`drawbar${i}.${corner}.z`, about(z)],
    ]),
  ];
}

/** Farther aside than anything here goes [mm]. */
const farAside = 5000;
