import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceSweepOf } from '../../src/engine/balance/index.ts';
import type { CheckId, Finding } from '../../src/engine/findings/index.ts';
import { withEdits, type Edit } from '../../src/records/index.ts';
import { loadIndexMass } from '../../src/tables/index.ts';
import { even } from '../even.ts';
import { middleReading } from '../references/balanceAt.ts';
import { questionOf } from '../references/engineAt.ts';
import { judgedBalance, sweepInMiddle } from './balanceJudged.ts';
import { balanceCases, balanceDocument, type BalanceCase } from './generateBalance.ts';

const left = (path: string): Edit => ({ path, value: undefined });
const unknown = (path: string): Edit => ({ path, value: { unknown: true } });

const judged = (one: BalanceCase, edits: readonly Edit[]) => judgedBalance(withEdits(balanceDocument(one), edits));

const askedFirst = ['tractor.wheelbase', 'tractor.mass', 'tractor.frontAxleMass'] as const;
const limits: readonly (readonly [CheckId, string, string])[] = [
  ['limit.frontAxle', 'tractor.frontAxleLimit', 'plate'],
  ['limit.rearAxle', 'tractor.rearAxleLimit', 'plate'],
  ['limit.totalMass', 'tractor.totalLimit', 'plate'],
  ['limit.frontTyres', 'tractor.frontTyreLimit', 'tyreRating'],
  ['limit.rearTyres', 'tractor.rearTyreLimit', 'tyreRating'],
  ['limit.frontBracket', 'tractor.frontBracketLimit', 'bracketLimit'],
];

const asksFor = ({ asks }: Finding): string[] => asks.map(({ path }) => path);

describe('a tractor that was not weighed', () => {
  for (const path of askedFirst) {
    test(`without ${path} no share is told: it is asked for, and nothing is checked against a limit`, () => {
      fc.assert(
        fc.property(balanceCases(), fc.constantFrom(left, unknown), (one, without) => {
          const { finding, question } = judged(one, [without(path)]);
          const share = finding('balance.frontShare');
          expect(share.status).toBe('undecided');
          expect(asksFor(share)).toEqual([path]);
          expect(share.core).toBe(true);
          expect(share.margin).toBeNull();
          const rear = finding('balance.rearShare');
          expect(rear.status).toBe(one.loader === 'absent' ? 'notNeeded' : 'undecided');
          expect(asksFor(rear)).toEqual(one.loader === 'absent' ? [] : [path]);
          for (const id of ['limit.frontOfTotal', ...limits.slice(0, 5).map(([limit]) => limit)] as const) {
            expect(finding(id).status, id).toBe('notChecked');
            expect(finding(id).reason, id).toBe('axleMasses');
          }
          expect(balanceSweepOf(question.balance, middleReading(question))).toBeNull();
        }),
        { numRuns: 15 },
      );
    });
  }

  test('of several that are missing the first is asked for', () => {
    fc.assert(
      fc.property(balanceCases(), fc.subarray([...askedFirst], { minLength: 2 }), (one, missing) => {
        expect(asksFor(judged(one, missing.map(left)).finding('balance.frontShare'))).toEqual([missing[0]]);
      }),
      { numRuns: 15 },
    );
  });
});

describe('limits without data', () => {
  for (const [id, path, needs] of limits) {
    test(`${id} is not checked without ${path}: it needs ${needs}, whatever else is known`, () => {
      fc.assert(
        fc.property(balanceCases(), fc.constantFrom(left, unknown), (one, without) => {
          const { finding } = judged(one, [without(path)]);
          expect(finding(id)).toMatchObject({ status: 'notChecked', reason: needs, core: false, margin: null });
          for (const [other] of limits.filter(([limit]) => limit !== id)) {
            expect(finding(other).status, other).toMatch(/^(pass|fail|undecided)$/);
          }
        }),
        { numRuns: 8 },
      );
    });
  }

  test('without front weights the bracket has nothing to hold', () => {
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const bracket = judged(one, [left('tractor.frontWeightMass')]).finding('limit.frontBracket');
        expect(bracket).toMatchObject({ status: 'notNeeded', reason: 'noFrontWeights' });
      }),
      { numRuns: 8 },
    );
  });

  test('a load index stands in for a tyre rating: twice what one tyre carries, the rating itself before it', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(balanceCases(), even(60, 150).map(Math.round), even(60, 150).map(Math.round), (one, front, rear) => {
        const indexed: Edit[] = [
          { path: 'tractor.frontTyreIndex', value: front },
          { path: 'tractor.rearTyreIndex', value: rear },
        ];
        const bare = [left('tractor.frontTyreLimit'), left('tractor.rearTyreLimit')];
        const { finding, question } = judged(one, [...bare, ...indexed]);
        const { frontFree } = sweepInMiddle(question);
        const permitted = 2 * (loadIndexMass(front) ?? NaN);
        const tyres = finding('limit.frontTyres');
        expect(tyres.band).toEqual({ low: null, high: permitted });
        expect(tyres.status).toBe(frontFree <= permitted ? 'pass' : 'fail');
        expect(finding('limit.rearTyres').band).toEqual({ low: null, high: 2 * (loadIndexMass(rear) ?? NaN) });
        seen.add(tyres.status);
        const rated = judged(one, indexed).finding('limit.rearTyres').band?.high;
        expect(rated).toBeCloseTo(2 * (one.tractor['rearTyreLimit'] ?? NaN), 9);
      }),
      { numRuns: 25 },
    );
    expect(seen.size).toBe(2);
  });
});

describe('the loader', () => {
  test('absent, the rear share is not needed; on, it is told', () => {
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const rear = judged(one, []).finding('balance.rearShare');
        if (one.loader === 'absent')
          expect(rear).toMatchObject({ status: 'notNeeded', reason: 'noLoader', margin: null });
        else expect(rear.margin).not.toBeNull();
      }),
      { numRuns: 20 },
    );
  });

  test('unsaid, it is on and empty if it was weighed with the tractor, else it is not there', () => {
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const said = (loader: BalanceCase['loader']) => judged({ ...one, loader }, []);
        const stated = said(one.weighedWithLoader ? 'empty' : 'absent');
        const { finding } = judged(one, [left('tractor.loader')]);
        for (const id of ['balance.frontShare', 'balance.rearShare', 'limit.rearAxle'] as const) {
          expect(finding(id)).toEqual(stated.finding(id));
        }
      }),
      { numRuns: 20 },
    );
  });

  test('on the tractor but not weighed, it passes only what it does with as much, as far ahead, as is accepted', () => {
    const loader = (mass: unknown, ahead: unknown): Edit[] => [
      { path: 'tractor.loaderMass', value: mass },
      { path: 'tractor.loaderAhead', value: ahead },
    ];
    const seen = new Set<string>();
    fc.assert(
      fc.property(balanceCases(), (on) => {
        const one: BalanceCase = { ...on, loader: 'empty', weighedWithLoader: false };
        const [open, worst] = [judged(one, loader(undefined, undefined)), judged(one, loader(4000, 2500))];
        for (const id of ['balance.rearShare', 'limit.frontAxle', 'limit.totalMass'] as const) {
          if (open.finding(id).status === 'pass') expect(worst.finding(id).status, id).toBe('pass');
          seen.add(open.finding(id).status);
        }
      }),
      { numRuns: 20 },
    );
    expect(seen.has('undecided')).toBe(true);
  });
});

describe('an implement that was not weighed', () => {
  const told: readonly CheckId[] = ['balance.frontShare', 'limit.frontOfTotal', 'limit.rearAxle', 'limit.totalMass'];

  test('never passes: what it leaves in front is undecided unless it fails with next to nothing behind', () => {
    let open = 0;
    fc.assert(
      fc.property(balanceCases(), fc.constantFrom(left, unknown), (one, without) => {
        const { finding, question } = judged(one, [without('implement.mass')]);
        for (const id of told) expect(finding(id).status, id).not.toBe('pass');
        const { status, margin } = finding('balance.frontShare');
        open += status === 'undecided' ? 1 : 0;
        // Only what weighs as little as is accepted can tell that it fails whatever it weighs.
        const least = judged(one, [{ path: 'implement.mass', value: 5 }]).finding('balance.frontShare');
        if (status === 'fail') expect(least.status).toBe('fail');
        expect(margin?.low ?? null).toBeNull();
        expect(balanceSweepOf(question.balance, middleReading(question))).toBeNull();
      }),
      { numRuns: 40 },
    );
    expect(open).toBeGreaterThan(30);
  });

  test('with its mass but not its place, it passes only if it does as far behind as is accepted', () => {
    const placedAt = (value: unknown): Edit => ({ path: 'implement.centreBehind', value });
    const seen = new Set<string>();
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const { status } = judged(one, [placedAt(undefined)]).finding('balance.frontShare');
        const farthest = judged(one, [placedAt(4000)]).finding('balance.frontShare').status;
        const nearest = judged(one, [placedAt(-500)]).finding('balance.frontShare').status;
        if (status === 'pass') expect(farthest).toBe('pass');
        if (status === 'fail') expect(nearest).toBe('fail');
        seen.add(status);
      }),
      { numRuns: 40 },
    );
    expect(seen.has('undecided')).toBe(true);
  });
});

test('what may be on a tractor and is not said is not counted: no driver, weights or liquid', () => {
  const keys = ['driverMass', 'frontWeightMass', 'wheelWeightMass', 'tyreLiquidMass'];
  fc.assert(
    fc.property(balanceCases(), (one) => {
      const none = { ...one, tractor: { ...one.tractor, ...Object.fromEntries(keys.map((key) => [key, 0])) } };
      const unsaid = questionOf(
        withEdits(
          balanceDocument(one),
          keys.map((key) => left(`tractor.${key}`)),
        ),
      );
      expect(sweepInMiddle(unsaid).stations).toEqual(sweepInMiddle(questionOf(balanceDocument(none))).stations);
    }),
    { numRuns: 20 },
  );
});
