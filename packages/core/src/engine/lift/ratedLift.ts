import { openFormula, type Formula, type Step } from '../formula/index.ts';
import { planeOf, type Plane } from '../linkage/index.ts';
import { lineInInverse, noBound, testDistance } from './supply.ts';
import type { Structure } from './structure.ts';
import { suppliedBetween } from './spare.ts';

/** The lift from its ratings alone, where the linkage is not known. */
export interface RatedLift {
  readonly formula: Formula;
  /** Horizontal distance from the ball ends back to the centre of all that is carried [mm]. */
  readonly behind: Step;
  readonly total: Step;
  readonly low: Step;
  readonly high: Step;
  readonly spare: Step;
}

const known = new Map<string, RatedLift>();

/** The formula for which ratings there are; it holds at the top-link setting of the lift test. */
export function ratedLift(structure: Structure): RatedLift {
  const key = `${structure.atBalls} ${structure.at610} ${structure.alone}`;
  const made = known.get(key) ?? write(structure);
  known.set(key, made);
  return made;
}

function write(structure: Structure): RatedLift {
  const writer = openFormula();
  const p = planeOf(writer);
  const { behind, total } = loadLevel(p, structure);
  const supply = structure.atBalls ? betweenRatings(p, behind) : behindOnly(p, behind);
  const supplied = suppliedBetween(p, supply.low, supply.high);
  const spare = p.subtract(p.multiply(p.leaf('allowance'), supplied), total);
  return { formula: writer.finish(), behind, total, ...supply, spare };
}

/** The load with everything standing level: its mass, and how far behind the ball ends its centre lies. */
function loadLevel(p: Plane, { alone }: Structure): { behind: Step; total: Step } {
  if (alone) return { total: p.leaf('mass'), behind: p.leaf('centreBehind') };
  const hooks = p.leaf('hookBehind');
  const parts: readonly (readonly [Step, Step])[] = [
    [p.leaf('mass'), p.add(hooks, p.leaf('centreBehind'))],
    [p.leaf('carriedMass'), p.add(hooks, p.leaf('carriedBehind'))],
    [p.leaf('couplerMass'), p.leaf('couplerCentreBehind')],
    [p.leaf('hungMass'), p.leaf('hungBehind')],
  ];
  const sum = (steps: readonly Step[]): Step => steps.reduce((a, b) => p.add(a, b));
  const total = sum(parts.map(([mass]) => mass));
  return { total, behind: p.divide(sum(parts.map(([mass, at]) => p.multiply(mass, at))), total) };
}

/**
 * Both ratings: up to the test distance the line in 1/F is proven and nothing bounds it from above; beyond it, the line is
 * the most and the lever rule F610·610/d the least.
 */
function betweenRatings(p: Plane, behind: Step): { low: Step; high: Step } {
  const most = p.constant(testDistance);
  const near = lineInInverse(p, p.lesser(behind, most));
  const low = p.multiply(near, p.divide(most, p.greater(most, behind)));
  const short = p.greater(p.constant(0), p.subtract(most, behind));
  return { low, high: p.add(lineInInverse(p, behind), p.scaled(short, noBound)) };
}

/** Only the rating behind the balls: it holds up to its distance on a linkage that tilts the tail up, and by the lever rule beyond. */
function behindOnly(p: Plane, behind: Step): { low: Step; high: Step } {
  const most = p.constant(testDistance);
  const low = p.multiply(p.leaf('liftAt610'), p.divide(most, p.greater(most, behind)));
  return { low, high: p.constant(noBound) };
}
