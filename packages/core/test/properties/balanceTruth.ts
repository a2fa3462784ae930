import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import { throughBalance, type BalanceSteps } from '../../src/engine/balance/balanceSteps.ts';
import { overLift } from '../../src/engine/balance/lines.ts';
import type { CheckId } from '../../src/engine/findings/index.ts';
import { evaluate, openWorkspace, stepsFor, type Step } from '../../src/engine/formula/index.ts';
import { middle, type Interval } from '../../src/engine/geometry/index.ts';
import type { Course } from '../../src/engine/lift/throughLift.ts';
import type { Reading } from '../../src/engine/proof/index.ts';
import { middleReading } from '../references/balanceAt.ts';

/** What is told of the axle loads over the whole lift: a result, and whether its least or its greatest counts [kg]. */
export const told = {
  front: 'least',
  rear: 'greatest',
  total: 'greatest',
  frontFree: 'greatest',
  spare: 'least',
  spareOfTotal: 'least',
  rearSpare: 'least',
  ballast: 'greatest',
} as const satisfies Partial<Record<keyof BalanceSteps, 'least' | 'greatest'>>;

/** One of `told`. */
export type Told = keyof typeof told;

/** Twice as many places as a margin is proven at, and the ends and middles of those pieces among them. */
const places = 97;

/** What is told of one truth, every input at a point; `closes` is what is left before a loop of the linkage can’t be. */
export type Truth = Readonly<Record<Told | 'closes', number>>;

const all = Object.keys(told) as readonly Told[];

/** The check that tells it, where one does. */
const checkOf: Readonly<Partial<Record<Told, CheckId>>> = {
  rear: 'limit.rearAxle',
  total: 'limit.totalMass',
  frontFree: 'limit.frontAxle',
  spare: 'balance.frontShare',
  spareOfTotal: 'limit.frontOfTotal',
  rearSpare: 'balance.rearShare',
};

/** The bounds of everything that is told over a box, as its check has them. */
export function boundsOf({ balance, checks }: SetupQuestion, at: Reading): ReadonlyMap<Told, Interval> {
  const bound = (what: Told): Interval => {
    const check = checks.find(({ id }) => id === checkOf[what]);
    return check?.measure(at).quantity ?? overLift(balance, (steps) => steps[what], told[what]).bounds(at);
  };
  return new Map(all.map((what) => [what, bound(what)]));
}

/** Opens the truth of a question, and every input that it reads: many places along every course, on plain numbers. */
export function openBalanceTruth(question: SetupQuestion): (at: Reading) => Truth {
  const { balance } = question;
  const { lift, held } = balance.structure;
  const alsoRaised: readonly Course[] = held && lift.carriesApart ? ['raise'] : [];
  const courses = (['stroke', ...alsoRaised] as const).map((course) => {
    const { formula, steps } = throughBalance(balance.structure, course);
    const results = [...all.map((what) => steps[what]), ...(held ? [steps.lift.closes] : [])];
    const wanted = stepsFor(formula, results);
    const read = new Set([...wanted].filter((step) => formula.ops[step] === 1).map((step) => formula.detail[step]));
    const terms = formula.leaves.map((name, leaf) => (read.has(leaf) ? balance.leaves.exact.get(name) : undefined));
    for (const term of terms) term?.(middleReading(question));
    return { steps, wanted, terms, space: openWorkspace(formula, formula.laned.includes(1) ? places : 1) };
  });
  return (at) => {
    for (const { space, wanted, terms } of courses) {
      const values = terms.map((term) => (term === undefined ? 0 : middle(term(at))));
      evaluate(space, wanted, { leaf: (leaf) => values[leaf] as number, lane: (place) => place / (places - 1) });
    }
    const extreme = (of: (steps: BalanceSteps) => Step, sense: 'least' | 'greatest'): number => {
      const pick = sense === 'least' ? Math.min : Math.max;
      return pick(...courses.map(({ steps, space }) => pick(...(space.values[of(steps)] as Float64Array))));
    };
    const seen = all.map((what) => [what, extreme((steps) => steps[what], told[what])] as const);
    const closes = held ? extreme((steps) => steps.lift.closes, 'least') : 1;
    return { ...(Object.fromEntries(seen) as Record<Told, number>), closes };
  };
}
