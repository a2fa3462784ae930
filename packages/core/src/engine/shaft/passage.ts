import { passageClearance } from '../../tables/index.ts';
import type { OutlineRecord } from '../../records/index.ts';
import { exactly, lesser } from '../geometry/index.ts';
import { knowsShaftWay } from '../joint/index.ts';
import type { Line, Reason } from '../findings/index.ts';
import { openRun, type Leaves } from '../lift/index.ts';
import type { Term } from '../proof/index.ts';
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
  const runs = everywhere(question).map((course) => {
    const { formula, room } = throughPassage(question.structure, surroundings, course);
    return { run: openRun(formula, leaves, [room], pieces), room };
  });
  const rooms = runs.map(({ run, room }) => run.least(room));
  const estimates = runs.map(({ run, room }) => run.leastEstimate(room));
  const reads = runs.map(({ run, room }) => run.reads(room));
  const wanted = exactly(passageClearance.value);
  return {
    id,
    kind: 'computed',
    check: {
      id,
      unit: 'mm',
      scale: 10,
      measure: (at) => ({ quantity: rooms.map((least) => least(at)).reduce(lesser), low: wanted, high: null }),
      estimate: (at) => Math.min(...estimates.map((estimate) => estimate(at))) - wanted.low,
      reads: (at) => reads.map((read) => read(at)),
    },
  };
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
