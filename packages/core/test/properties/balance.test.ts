import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BalanceSweep } from '../../src/engine/balance/index.ts';
import { exactly } from '../../src/engine/geometry/index.ts';
import { withEdits } from '../../src/records/index.ts';
import { tyreFluids, tyreLiquidMass, tyreSizes } from '../../src/tables/index.ts';
import { even } from '../even.ts';
import { balanceAt } from '../references/balanceAt.ts';
import { everything, hungAt, massOf, placedOn } from '../references/balancePlaced.ts';
import { questionOf } from '../references/engineAt.ts';
import { judgedBalance, sweepInMiddle, sweepOf, swept } from './balanceJudged.ts';
import { balanceCases, balanceDocument, figure, withTractor } from './generateBalance.ts';

/** Rounding in sums of thousands of kilograms. */
const rounding = 1e-7;

const put = ['driverMass', 'frontWeightMass', 'wheelWeightMass', 'tyreLiquidMass'] as const;
const nothingPut = Object.fromEntries(put.map((key) => [key, 0]));

type Pick = (station: BalanceSweep['stations'][number]) => number;

/** Compares a load of two sweeps at every height. */
function atEveryHeight(
  a: BalanceSweep,
  b: BalanceSweep,
  pick: Pick,
  compare: (one: number, other: number) => void,
): void {
  a.stations.forEach((station, i) => {
    const other = b.stations[i];
    if (other === undefined) throw new Error('fewer stations');
    compare(pick(station), pick(other));
  });
}

const ofFront: Pick = ({ front }) => front;
const ofRear: Pick = ({ rear }) => rear;

describe('what stands on the axles', () => {
  test('both axles together carry everything, and everything is the sum of its pieces', () => {
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const sweep = swept(one);
        const isTakenOff = one.weighedWithLoader && one.loader === 'absent';
        const sum =
          figure(one, 'mass') +
          figure(one, 'wheelWeightMass') +
          figure(one, 'tyreLiquidMass') +
          sweep.behind +
          sweep.fitted.reduce((all, { mass }) => all + mass, 0) -
          (isTakenOff ? figure(one, 'loaderMass') : 0);
        for (const { front, rear, total } of sweep.stations) {
          expect(Math.abs(front + rear - total)).toBeLessThan(rounding);
          expect(Math.abs(total - sum)).toBeLessThan(rounding);
        }
      }),
      { numRuns: 80 },
    );
  });

  test('what each piece brings to an axle by itself adds up to what all bring together', () => {
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const bare = swept(withTractor(one, nothingPut));
        const alone = put.map((key) => swept(withTractor(one, { ...nothingPut, [key]: figure(one, key) })));
        const together = swept(one);
        for (const pick of [ofFront, ofRear]) {
          bare.stations.forEach((station, i) => {
            const at = (sweep: BalanceSweep): number => pick(sweep.stations[i] ?? station);
            const brought = alone.reduce((sum, sweep) => sum + at(sweep) - pick(station), 0);
            expect(Math.abs(pick(station) + brought - at(together))).toBeLessThan(rounding);
          });
        }
      }),
      { numRuns: 40 },
    );
  });

  test('the see-saw balances about any point, each mass where the side view has it', () => {
    fc.assert(
      fc.property(balanceCases(), even(-4000, 4000), (one, about) => {
        const question = questionOf(balanceDocument(one));
        const { stations, wheelbase } = sweepInMiddle(question);
        const { steps, value } = balanceAt(question, 'stroke', [0], ({ lift }) => [lift.topLink]);
        const view = { ...one.lift.sideView, topLink: value(steps.lift.topLink) };
        for (const place of [0, 20, 40, 60]) {
          const { ballHeight = 0, front = NaN, rear = NaN } = stations[place] ?? {};
          const masses = everything(placedOn(one, hungAt(one, view, ballHeight)));
          const down = masses.reduce((sum, { mass, at: [x] }) => sum + mass * (x - about), 0);
          const up = front * (-wheelbase - about) + rear * -about;
          expect(Math.abs(down - up) / (massOf(masses) * wheelbase)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('wheel weights and liquid in the rear tyres never change the front axle: all of them stand on the rear one', () => {
    fc.assert(
      fc.property(
        balanceCases(),
        even(0, 600),
        fc.constantFrom('wheelWeightMass', 'tyreLiquidMass'),
        (one, more, key) => {
          const [before, after] = [swept(one), swept(withTractor(one, { [key]: figure(one, key) + more }))];
          atEveryHeight(before, after, ofFront, (a, b) => expect(b).toBe(a));
          atEveryHeight(before, after, ofRear, (a, b) => expect(Math.abs(b - a - more)).toBeLessThan(rounding));
          expect(after.frontFree).toBe(before.frontFree);
          expect(after.base - before.base).toBeCloseTo(more, 7);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('liquid by the size of the tyre: twice what one tyre takes, all of it on the rear axle, for every size and fluid', () => {
    const fills = fc.oneof(fc.constant(undefined), even(10, 100).map(Math.round));
    fc.assert(
      fc.property(
        balanceCases(),
        fc.constantFrom(...tyreSizes),
        fc.constantFrom(...tyreFluids),
        fills,
        (one, size, fluid, fill) => {
          const document = withEdits(balanceDocument(one), [{ path: 'tractor.tyreLiquidMass', value: undefined }]);
          const tyreLiquid = { size, fluid, ...(fill === undefined ? {} : { fill }) };
          const filled = withEdits(document, [{ path: 'tractor.tyreLiquid', value: tyreLiquid }]);
          const [before, after] = [sweepOf(document), sweepOf(filled)];
          const { low, high } =
            tyreLiquidMass(size, fluid, fill === undefined ? undefined : fill / 100) ?? exactly(NaN);
          atEveryHeight(before, after, ofFront, (a, b) => expect(b).toBe(a));
          atEveryHeight(before, after, ofRear, (a, b) => expect(Math.abs(b - a - (low + high))).toBeLessThan(rounding));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a heavier implement behind the rear axle never leaves more of anything on the front axle', () => {
    fc.assert(
      fc.property(balanceCases(), even(1, 2), (one, times) => {
        const heavier = { ...one.lift.implement, mass: (one.lift.implement['mass'] ?? 0) * times };
        const [before, after] = [swept(one), swept({ ...one, lift: { ...one.lift, implement: heavier } })];
        atEveryHeight(before, after, ofFront, (a, b) => expect(b).toBeLessThanOrEqual(a + rounding));
        // A share may rise where the front wheels are off the ground already: of more, less than nothing is a smaller part.
        const ofTotal: Pick = ({ front, total }) => Math.max(0, front) / total;
        atEveryHeight(before, after, ofTotal, (a, b) => expect(b).toBeLessThanOrEqual(a + 1e-12));
        expect(after.frontFree).toBe(before.frontFree);
      }),
      { numRuns: 60 },
    );
  });

  test('a driver or front weights never make the front axle lighter', () => {
    fc.assert(
      fc.property(balanceCases(), even(0, 120), fc.constantFrom('driverMass', 'frontWeightMass'), (one, more, key) => {
        const [before, after] = [swept(one), swept(withTractor(one, { [key]: figure(one, key) + more }))];
        atEveryHeight(before, after, ofFront, (a, b) => expect(b).toBeGreaterThanOrEqual(a - rounding));
        if (key === 'frontWeightMass') {
          atEveryHeight(before, after, ofRear, (a, b) => expect(b).toBeLessThanOrEqual(a + rounding));
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('what the axles may carry', () => {
  const kept = (limit: number, load: number): string => (load <= limit ? 'pass' : 'fail');

  test('the front axle and its tyres are held against what they carry with nothing hung behind, whatever hangs there', () => {
    const seen = { pass: 0, fail: 0 };
    const nearly = fc.oneof(even(-0.15, -0.001), even(0.001, 0.15));
    fc.assert(
      fc.property(balanceCases(), nearly, (one, over) => {
        const { frontFree } = swept(one);
        const limit = frontFree * (1 + over);
        const { finding } = judgedBalance(
          balanceDocument(withTractor(one, { frontAxleLimit: limit, frontTyreLimit: limit / 2 })),
        );
        const expected = kept(limit, frontFree);
        expect(finding('limit.frontAxle').status).toBe(expected);
        expect(finding('limit.frontTyres').status).toBe(expected);
        seen[expected as keyof typeof seen] += 1;
      }),
      { numRuns: 60 },
    );
    expect(Math.min(seen.pass, seen.fail)).toBeGreaterThan(10);
  });

  test('the whole mass, and the front weights on their bracket, fail exactly past what is permitted', () => {
    const nearly = fc.oneof(even(-0.15, -0.001), even(0.001, 0.15));
    fc.assert(
      fc.property(balanceCases(), nearly, nearly, even(20, 400), (one, over, overBracket, hung) => {
        const weighted = withTractor(one, { frontWeightMass: hung, frontBracketLimit: hung * (1 + overBracket) });
        const total = swept(weighted).stations[0]?.total ?? NaN;
        const { finding } = judgedBalance(balanceDocument(withTractor(weighted, { totalLimit: total * (1 + over) })));
        expect(finding('limit.totalMass').status).toBe(kept(total * (1 + over), total));
        expect(finding('limit.frontBracket').status).toBe(kept(hung * (1 + overBracket), hung));
      }),
      { numRuns: 60 },
    );
  });
});
