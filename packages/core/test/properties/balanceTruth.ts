import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import { throughBalance, type BalanceSteps } from '../../src/engine/balance/balanceSteps.ts';
import { overLift } from '../../src/engine/balance/lines.ts';
import type { CheckId } from '../../src/engine/findings/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import type { Course } from '../../src/engine/lift/throughLift.ts';
import type { Reading } from '../../src/engine/proof/index.ts';
import { middleOfAll } from './boxes.ts';
import { openPlain } from './plainRun.ts';

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
export function openBalanceTruth(question: SetupQuestion, places?: number): (at: Reading) => Truth {
  const { structure, leaves } = question.balance;
  const { lift, held } = structure;
  const alsoRaised: readonly Course[] = held && lift.carriesApart ? ['raise'] : [];
  const courses = (['stroke', ...alsoRaised] as const).map((course) => {
    const { formula, steps } = throughBalance(structure, course);
    const results = [...all.map((what) => steps[what]), ...(held ? [steps.lift.closes] : [])];
    return { steps, plain: openPlain(formula, results, (name) => leaves.exact.get(name), places) };
  });
  for (const { plain } of courses) plain.run(middleOfAll(question));
  return (at) => {
    for (const { plain } of courses) plain.run(at);
    const least = (of: Told): number => Math.min(...courses.map(({ steps, plain }) => plain.least(steps[of])));
    const greatest = (of: Told): number => Math.max(...courses.map(({ steps, plain }) => plain.greatest(steps[of])));
    const seen = all.map((what) => [what, told[what] === 'least' ? least(what) : greatest(what)] as const);
    const closes = held ? Math.min(...courses.map(({ steps, plain }) => plain.least(steps.lift.closes))) : 1;
    return { ...(Object.fromEntries(seen) as Record<Told, number>), closes };
  };
}
