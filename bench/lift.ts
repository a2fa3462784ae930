// Speeds of the lift and the drive: numeric margins at 41 heights, closures against a constraint solver, answers to uncertain setups.
import { make_gcs_wrapper, type SketchPrimitive } from '@salusoft89/planegcs';
import { assess } from '../packages/core/src/engine/assess/index.ts';
import { judgeSetup, prepareSetup } from '../packages/core/src/engine/assess/index.ts';
import { evaluate, openWorkspace, stepsFor, valueAt } from '../packages/core/src/engine/formula/index.ts';
import { middle, type Interval } from '../packages/core/src/engine/geometry/index.ts';
import { openRun } from '../packages/core/src/engine/lift/index.ts';
import { throughShaft } from '../packages/core/src/engine/shaft/shaftSteps.ts';
import { throughLift } from '../packages/core/src/engine/lift/throughLift.ts';
import { withEdits, type Setup, type SetupDocument } from '../packages/core/src/records/index.ts';
import { anew, microseconds, read, type Timing } from './timing.ts';

const heights = 41;

/** Setups read beforehand, one after the other. */
function readAnew(document: SetupDocument, count: number): () => Setup {
  const made = Array.from({ length: count }, anew(document, read));
  let next = 0;
  return () => made[next++ % count] as Setup;
}

/** Every numeric margin of one exact setup at 41 heights for one top-link setting: no sentences, no scene. */
function marginsAtHeights(document: SetupDocument): { run: () => void; closures: () => SketchPrimitive[][] } {
  const { lift, ledger } = prepareSetup(read(document));
  const { formula, steps } = throughLift(lift.structure, 'stroke');
  const at = (index: number) => ledger.entries[index]?.range ?? { low: 0, high: 0 };
  const values = formula.leaves.map((name) =>
    middle((lift.leaves.quick.get(name) ?? (() => ({ low: 0, high: 0 })))(at)),
  );
  const margins = [steps.spare, steps.closes, steps.tyreGap, steps.clearance, steps.pitch, steps.lowerForceUp];
  const space = openWorkspace(formula, heights);
  const wanted = stepsFor(formula, [...margins, steps.topLink, steps.body.upper.x, steps.body.upper.z]);
  const given = {
    leaf: (index: number): number => values[index] as number,
    lane: (place: number): number => place / (heights - 1),
  };
  return {
    run: () => evaluate(space, wanted, given),
    closures: () => {
      const value = (step: number, place: number): number => valueAt(space, step, place);
      return Array.from({ length: heights }, (_, i) =>
        fourBar(
          [value(steps.topPivot.x, i), value(steps.topPivot.z, i)],
          [value(steps.body.origin.x, i), value(steps.body.origin.z, i)],
          [value(steps.body.upper.x, i) + 8, value(steps.body.upper.z, i) - 8],
          value(steps.topLink, i),
          middle((lift.leaves.exact.get('upperAbove') ?? (() => ({ low: 0, high: 0 })))(at)),
        ),
      );
    },
  };
}

type Pair = readonly [number, number];

/** The upper point of a body on its top link, as a sketch for the solver, begun a little off. */
function fourBar(pivot: Pair, origin: Pair, near: Pair, topLink: number, mast: number): SketchPrimitive[] {
  const point = (id: string, [x, y]: Pair, fixed: boolean): SketchPrimitive => ({ id, type: 'point', x, y, fixed });
  const apart = (id: string, p1_id: string, distance: number): SketchPrimitive => ({
    id,
    type: 'p2p_distance',
    p1_id,
    p2_id: '3',
    distance,
  });
  return [
    point('1', pivot, true),
    point('2', origin, true),
    point('3', near, false),
    apart('4', '1', topLink),
    apart('5', '2', mast),
  ];
}

/** The same upper points by a general-purpose constraint solver [µs for all heights]. */
async function solverTime(sketches: readonly SketchPrimitive[][]): Promise<number> {
  const solver = await make_gcs_wrapper();
  return microseconds(() => {
    for (const sketch of sketches) {
      solver.clear_data();
      solver.push_primitives_and_params(sketch);
      solver.solve();
    }
  }, 3);
}

const uncertainPaths = [
  'implement.mastHeight',
  'implement.mastSetback',
  'implement.shoulderSpan',
  'implement.mass',
  'implement.centreBehind',
  'implement.centreAbove',
  'tractor.lowerLinkLength',
  'tractor.topLinkPivotHeight',
  'tractor.topLinkPivotBehindAxle',
  'tractor.lowerLinkPivotHeight',
];

/** The setup with ten inputs read by tape: each shifted a little and known to ±1.5 (±15 where it was balanced). */
function tenUncertain(exact: SetupDocument, seed: number): SetupDocument {
  const copy = structuredClone(exact) as Record<string, Record<string, unknown>>;
  uncertainPaths.forEach((path, i) => {
    const [machine, key] = path.split('.') as [string, string];
    const value = Number(copy[machine]?.[key] ?? 0);
    const wide = key.startsWith('centre') || key === 'mass';
    const shift = Math.sin(seed * 12.9898 + i * 78.233) * (wide ? 40 : 8);
    (copy[machine] as Record<string, unknown>)[key] = { value: value + shift, plusMinus: wide ? 15 : 1.5 };
  });
  return copy;
}

const undriven = (document: SetupDocument): SetupDocument =>
  withEdits(document, [
    { path: 'shaft', value: undefined },
    { path: 'implement.driven', value: false },
  ]);

/** Times of the lift for one exact setup with linkage, arms and ratings, its drive left off. */
export async function liftTimings(driven: SetupDocument): Promise<Timing[]> {
  const exact = undriven(driven);
  const margins = marginsAtHeights(exact);
  const sweep = microseconds(margins.run, 400);
  const solver = await solverTime(margins.closures());
  const full = microseconds(
    anew(exact, (one) => assess(one)),
    4,
  );
  const setup = readAnew(exact, 60);
  const verdicts = microseconds(() => judgeSetup(setup(), { thresholds: false }), 4);
  for (let seed = 60; seed < 80; seed += 1) judgeSetup(read(tenUncertain(exact, seed)), { thresholds: false });
  const times = Array.from({ length: 60 }, (_, seed) => {
    const one = read(tenUncertain(exact, seed));
    const start = performance.now();
    judgeSetup(one, { thresholds: false });
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const quantile = (share: number): number => times[Math.round(share * (times.length - 1))] as number;
  return [
    { name: 'all numeric margins of one exact setup at 41 heights', value: sweep, unit: 'µs' },
    { name: 'constraint solver, the upper point alone at 41 heights', value: solver, unit: 'µs' },
    { name: 'verdict of an exact setup, proven', value: verdicts / 1000, unit: 'ms' },
    { name: 'full answer to an exact setup', value: full / 1000, unit: 'ms' },
    { name: 'ten uncertain inputs, median', value: quantile(0.5), unit: 'ms' },
    { name: 'ten uncertain inputs, nine of ten', value: quantile(0.9), unit: 'ms' },
    { name: 'ten uncertain inputs, worst', value: quantile(1), unit: 'ms' },
  ];
}

/** The drive shaft bounded over the whole lift: how the time grows with the pieces that the lift is cut into. */
function boundsByPieces(document: SetupDocument): Timing[] {
  const { shaft, ledger } = prepareSetup(read(document));
  const { formula, steps } = throughShaft(shaft.structure, 'stroke');
  const nudge = { by: 0 };
  const at = (index: number): Interval => {
    const { low, high } = ledger.entries[index]?.range ?? { low: 0, high: 0 };
    return { low: low + nudge.by, high: high + nudge.by };
  };
  return [12, 24, 48].map((pieces) => {
    const greatest = openRun(formula, shaft.leaves, [steps.implementAngle], pieces).greatest(steps.implementAngle);
    const value = microseconds(() => {
      // A box that was seen before is remembered: each one is a little different.
      nudge.by = (nudge.by + 1e-9) % 1e-6;
      greatest(at);
    }, 4);
    return { name: `rear joint bounded over ${pieces} pieces of the lift`, value, unit: 'µs' };
  });
}

/** Times of a setup with a drive, shift and sway. */
export function driveTimings(driven: SetupDocument): Timing[] {
  const setup = readAnew(driven, 30);
  const verdict = microseconds(() => judgeSetup(setup(), { thresholds: false }), 2);
  const full = microseconds(
    anew(driven, (one) => assess(one)),
    2,
  );
  return [
    { name: 'verdict of a setup with a drive, shift and sway', value: verdict / 1000, unit: 'ms' },
    { name: 'full answer to a setup with a drive, shift and sway', value: full / 1000, unit: 'ms' },
    ...boundsByPieces(driven),
  ];
}
