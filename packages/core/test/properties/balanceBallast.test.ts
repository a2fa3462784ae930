import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { BalanceSteps } from '../../src/engine/balance/balanceSteps.ts';
import type { CheckId } from '../../src/engine/findings/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import { steeringRuleNames, steeringRules, type SteeringRuleName } from '../../src/tables/index.ts';
import { answer, finding } from '../asked.ts';
import { even } from '../even.ts';
import { balanceAt, middleReading } from '../references/balanceAt.ts';
import { questionOf, spaced } from '../references/engineAt.ts';
import { judgedBalance, swept } from './balanceJudged.ts';
import { balanceCases, balanceDocument, figure, withTractor, type BalanceCase } from './generateBalance.ts';

/** What a check comes to with everything in the middle of its range. */
function inMiddle(question: SetupQuestion, id: CheckId): Interval {
  const check = question.checks.find((one) => one.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check.measure(middleReading(question)).quantity;
}

/** Loads of a case at places along its stroke, with every figure exact, apart from the bounds. */
function loadsAlong(one: BalanceCase, places: readonly number[]) {
  const pick = ({ front, wanted, ballast }: BalanceSteps) => [front, wanted, ballast];
  const { steps, value } = balanceAt(questionOf(balanceDocument(one)), 'stroke', places, pick);
  return places.map((place, i) => ({
    place,
    front: value(steps.front, i),
    wanted: value(steps.wanted, i),
    ballast: value(steps.ballast, i),
  }));
}

/** Front weights that the rule wants, and where: many heights, then ever closer about the worst of them. */
function wantedOf(one: BalanceCase): { readonly ballast: number; readonly place: number } {
  let [from, to] = [0, 1];
  for (let round = 0; ; round += 1) {
    const places = spaced(61).map((share) => from + share * (to - from));
    const worst = loadsAlong(one, places).reduce((a, b) => (b.ballast > a.ballast ? b : a));
    if (round === 3) return worst;
    const step = (to - from) / 60;
    [from, to] = [Math.max(0, worst.place - step), Math.min(1, worst.place + step)];
  }
}

/** What is left beyond the rule at the worst height. */
function leastSpare(one: BalanceCase): number {
  const [there] = loadsAlong(one, [wantedOf(one).place]);
  return (there?.front ?? NaN) - (there?.wanted ?? NaN);
}

const ruled = (rule: SteeringRuleName): fc.Arbitrary<BalanceCase> => balanceCases().map((one) => ({ ...one, rule }));

describe('front weights that a rule wants', () => {
  for (const rule of steeringRuleNames) {
    test(`${rule}: hung on, they leave the front axle just what is wanted at the worst height, and enough at all others`, () => {
      let [needed, slack] = [0, 0];
      fc.assert(
        fc.property(ruled(rule), (one) => {
          const { ballast: mass, place } = wantedOf(one);
          if (mass <= 0 || mass > 3000) return;
          needed += 1;
          const weighted = withTractor(one, { frontWeightMass: mass });
          const { stations, base, frontFree, ballast } = swept(weighted);
          const [there] = loadsAlong(weighted, [place]);
          const total = stations[0]?.total ?? NaN;
          const just =
            steeringRules(rule).share.value * { ofTractor: base, ofTotal: total, halfOfFront: frontFree }[rule];
          expect(Math.abs((there?.front ?? NaN) - just)).toBeLessThan(1e-6);
          expect(there?.wanted).toBeCloseTo(just, 9);
          for (const { front, wanted } of stations) expect(front - wanted).toBeGreaterThan(-1e-6);
          // What is asked for replaces what hangs there: it does not change with it.
          expect(Math.abs(wantedOf(weighted).ballast - mass)).toBeLessThan(1e-6);
          slack = Math.max(slack, ((ballast?.enough ?? NaN) - (ballast?.least ?? NaN)) / figure(one, 'mass'));
          expect(ballast?.least ?? NaN).toBeLessThanOrEqual(mass + 1e-6);
          expect(ballast?.enough ?? NaN).toBeGreaterThanOrEqual(mass - 1e-6);
        }),
        { numRuns: 100 },
      );
      console.log(`${rule}: ${needed} of 100 want front weights, told within ${slack.toExponential(1)} of the tractor`);
      expect(needed).toBeGreaterThan(20);
      expect(slack).toBeLessThan(1e-3);
    });

    test(`${rule}: so many weights of one mass meet it, and one less does not`, () => {
      let counted = 0;
      fc.assert(
        fc.property(ruled(rule), even(8, 60), (one, weight) => {
          const count = Math.ceil(wantedOf(one).ballast / weight);
          if (count <= 0 || count * weight > 3000) return;
          counted += 1;
          const withWeights = (weights: number): BalanceCase => withTractor(one, { frontWeightMass: weights * weight });
          expect(leastSpare(withWeights(count))).toBeGreaterThanOrEqual(-1e-9);
          expect(leastSpare(withWeights(count - 1))).toBeLessThan(0);
          expect(judgedBalance(balanceDocument(withWeights(count))).finding('balance.frontShare').status).toBe('pass');
        }),
        { numRuns: 60 },
      );
      expect(counted).toBeGreaterThan(15);
    });
  }

  test('none are told where the rule is met with none, and the rule is met where none are told', () => {
    let [none, some] = [0, 0];
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const { ballast } = swept(one);
        const bare = inMiddle(
          questionOf(balanceDocument(withTractor(one, { frontWeightMass: 0 }))),
          'balance.frontShare',
        );
        if (ballast === null) {
          none += 1;
          expect(bare.low).toBeGreaterThanOrEqual(-1e-3 * figure(one, 'mass'));
          expect(bare.high).toBeGreaterThanOrEqual(0);
        } else {
          some += 1;
          expect(bare.low).toBeLessThan(0);
          if (ballast.least > 0) expect(bare.high).toBeLessThan(1e-3 * figure(one, 'mass'));
        }
      }),
      { numRuns: 100 },
    );
    expect(Math.min(none, some)).toBeGreaterThan(20);
  });
});

test('through the whole answer: front weights that are told to be enough make a failing share pass by itself', () => {
  let cured = 0;
  fc.assert(
    fc.property(balanceCases(), (one) => {
      const before = answer(balanceDocument(one), { full: true });
      const enough = before.balance?.ballast?.enough ?? Infinity;
      if (!['fail', 'cured'].includes(finding(before, 'balance.frontShare').status) || enough > 3000) return;
      cured += 1;
      expect(enough).toBeGreaterThan(figure(one, 'frontWeightMass'));
      const weighted = balanceDocument(withTractor(one, { frontWeightMass: enough }));
      expect(judgedBalance(weighted).finding('balance.frontShare').status).toBe('pass');
      // Another check may want another attitude at work: then it is told which, and only then is the share not kept.
      const { status, conflictsWith } = finding(answer(weighted), 'balance.frontShare');
      expect(status === 'pass').toBe(conflictsWith.length === 0);
    }),
    { numRuns: 30 },
  );
  expect(cured).toBeGreaterThan(3);
});
