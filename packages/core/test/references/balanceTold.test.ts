import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceSweepOf, type BalanceStation, type BalanceSweep } from '../../src/engine/balance/index.ts';
import { withEdits, type Edit } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { balanceCases, balanceDocument, type BalanceCase } from '../properties/generateBalance.ts';
import { balanceAt, middleReading } from './balanceAt.ts';
import { reactionsOf, tipsOnStop, tipsSideways, tipsUphill, type PointMass } from './balanceBody.ts';
import { everything, hungAt, massOf, placedOn, supportsOf } from './balancePlaced.ts';
import { questionOf, spaced } from './engineAt.ts';
import { ballAt, type SideView } from './sideView.ts';

/** Of what everything weighs. */
const digits = 1e-9;

/** What the sweep says of a case, and the top link that it stands on. */
function sweptOf(one: BalanceCase, edits: readonly Edit[] = []): { sweep: BalanceSweep; view: SideView } {
  const question = questionOf(withEdits(balanceDocument(one), edits));
  const sweep = balanceSweepOf(question.balance, middleReading(question));
  const { steps, value } = balanceAt(question, 'stroke', [0], ({ lift }) => [lift.topLink]);
  if (sweep === null) throw new Error('no sweep');
  return { sweep, view: { ...one.lift.sideView, topLink: value(steps.lift.topLink) } };
}

/** The front axle at one height, from the rest of one rigid body. */
const frontAt = (one: BalanceCase, view: SideView, height: number): number =>
  reactionsOf(everything(placedOn(one, hungAt(one, view, height))), supportsOf(one)).front;

/** The least front axle load of a stroke: many heights, then ever closer about the least of them. */
function leastFront(one: BalanceCase, view: SideView, [low, high]: readonly [number, number]): number {
  const at = (height: number): number => frontAt(one, view, height);
  const heights = spaced(61).map((share) => low + share * (high - low));
  const best = heights.reduce((a, b) => (at(b) < at(a) ? b : a));
  let reach = (high - low) / 60;
  let [from, to] = [Math.max(low, best - reach), Math.min(high, best + reach)];
  for (reach = to - from; reach > 1e-6; reach = to - from) {
    const [a, b] = [from + reach / 3, to - reach / 3];
    if (at(a) < at(b)) to = b;
    else from = a;
  }
  return Math.min(at(from), at(to), at(best));
}

/** What would have to hang at the ball ends for the rear axle to carry a fifth of everything, from two trials. */
function weightAtBalls(one: BalanceCase, view: SideView, height: number): number {
  const ball = ballAt(view, height);
  if (ball === null) throw new Error('does not close');
  const spareWith = (mass: number): number => {
    const all = everything(placedOn(one, [...hungAt(one, view, height), { mass, at: [ball.at.x, 0, ball.at.z] }]));
    const { left, right } = reactionsOf(all, supportsOf(one));
    return left + right - 0.2 * massOf(all);
  };
  const [none, some] = [spareWith(0), spareWith(1000)];
  return (1000 * none) / (none - some);
}

describe('the axle loads as they are told', () => {
  test('every station of the sweep, its worst place, and what is proven there, 60 setups', () => {
    const slack: number[] = [];
    let lifting = 0;
    fc.assert(
      fc.property(balanceCases(), fc.oneof(fc.constant(1), even(0.3, 0.9)), (one, stop) => {
        const { ballHeightLow: low = NaN, ballHeightHigh: high = NaN } = one.lift.tractor;
        const ends = [low, low + stop * (high - low)] as const;
        const stopped = stop < 1 ? [{ path: 'tractor.liftStopHeight', value: ends[1] }] : [];
        const { sweep, view } = sweptOf(one, stopped);
        const { stations, worst, wheelsLift } = sweep;
        expect(stations[0]?.ballHeight).toBeCloseTo(ends[0], 9);
        expect(stations.at(-1)?.ballHeight).toBeCloseTo(ends[1], 9);
        const fronts = stations.map(({ ballHeight }) => frontAt(one, view, ballHeight));
        const least = Math.min(...fronts);
        stations.forEach(({ front, rear, total, ahead }, i) => {
          expect(Math.abs(front - (fronts[i] as number)) / total).toBeLessThan(digits);
          expect(Math.abs(ahead * total - front * sweep.wheelbase) / (total * sweep.wheelbase)).toBeLessThan(digits);
          expect(Math.abs(front + rear - total) / total).toBeLessThan(digits);
        });
        expect(wheelsLift).toBe(least <= 0);
        lifting += wheelsLift ? 1 : 0;
        const { total } = stations[0] as BalanceStation;
        expect(frontAt(one, view, worst.ballHeight) - least).toBeLessThan(digits * total);
        const truth = leastFront(one, view, ends);
        expect(worst.front.low).toBeLessThanOrEqual(truth + digits * total);
        expect(worst.front.high).toBeGreaterThanOrEqual(truth - digits * total);
        slack.push((worst.front.high - worst.front.low) / total);
      }),
      { numRuns: 60 },
    );
    console.log(
      `least front load with exact figures: proven within ${Math.max(...slack).toExponential(1)} of the mass`,
    );
    expect(lifting).toBeGreaterThan(0);
    expect(lifting).toBeLessThan(60);
    expect(Math.max(...slack)).toBeLessThan(1e-3);
  });

  test('every mass that is on, at its own place, 60 setups', () => {
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const { sweep } = sweptOf(one);
        const { loader, loaderLoad, driver, frontWeights } = placedOn(one, []);
        const put = { driver, frontWeights, loader: one.weighedWithLoader ? [] : loader, loaderLoad };
        const expected = Object.entries(put).flatMap(([what, masses]) =>
          masses.filter(({ mass }) => mass > 0).map(({ mass, at }) => ({ what, mass, ahead: -at[0] })),
        );
        expect(sweep.fitted).toEqual(expected);
      }),
      { numRuns: 60 },
    );
  });

  test('the counterweight that a loader wants at the ball ends: trials of one rigid body at every height, 60 setups', () => {
    let wanting = 0;
    fc.assert(
      fc.property(balanceCases(), even(0.3, 1.3), (one, share) => {
        const loaderLoad = Math.min(3900, share * (one.tractor['mass'] ?? 0));
        const light = { ...one.lift.implement, mass: (one.lift.implement['mass'] ?? 0) / 10 };
        const loaded: BalanceCase = {
          ...one,
          lift: { ...one.lift, implement: light },
          tractor: { ...one.tractor, loaderLoadAhead: 1500, loaderLoad },
        };
        const { sweep, view } = sweptOf(loaded);
        const most = Math.max(...sweep.stations.map(({ ballHeight }) => weightAtBalls(loaded, view, ballHeight)));
        if (one.loader === 'absent' || most <= 0) {
          expect(sweep.counterweight).toBeNull();
          return;
        }
        wanting += 1;
        expect(Math.abs((sweep.counterweight ?? NaN) - most) / sweep.base).toBeLessThan(digits);
      }),
      { numRuns: 60 },
    );
    console.log(`counterweight: ${wanting} of 60 want one`);
    expect(wanting).toBeGreaterThan(5);
  });

  test('slopes that it tips on: gravity turned until a support carries nothing, 60 setups at three heights', () => {
    let standing = 0;
    let worst = 0;
    const close = (ours: number, theirs: number, what: string): void => {
      expect(Math.abs(ours - theirs), `${what}: ${ours} where turned gravity says ${theirs}`).toBeLessThan(1e-9);
      worst = Math.max(worst, Math.abs(ours - theirs));
    };
    fc.assert(
      fc.property(balanceCases(), (one) => {
        const { sweep, view } = sweptOf(one);
        const on = supportsOf(one);
        for (const place of [0, 30, 60]) {
          const { tips, ballHeight, front } = sweep.stations[place] as BalanceStation;
          if (tips === null) throw new Error('no slopes');
          const all = everything(placedOn(one, hungAt(one, view, ballHeight), one.tractor['centreHeight']));
          const sides = ['left', 'right'] as const;
          const sideways = Math.min(...sides.map((side) => tipsSideways(all, on, side)));
          close(tips.sideways, sideways, 'sideways');
          close(tips.sidewaysOnStop, Math.min(...sides.map((side) => tipsOnStop(all, on, side))), 'on its stop');
          close(tips.uphill, tipsUphill(all, on), 'uphill');
          if (front <= 0 || sideways <= 0) continue;
          standing += 1;
          for (const share of [0, 0.5, 0.999]) expect(holdsOnSlope(all, on, share * sideways)).toBe(true);
          expect(holdsOnSlope(all, on, 1.001 * sideways)).toBe(false);
        }
      }),
      { numRuns: 60 },
    );
    console.log(`tipping slopes: worst ${worst.toExponential(1)}°; ${standing} of 180 stand on the level`);
    expect(standing).toBeGreaterThan(60);
  });

  test('turned gravity finds the slope of a block worked by hand', () => {
    const on = { wheelbase: 2000, rearTrack: 1200, pivotHeight: 0 };
    const block: PointMass[] = [
      { mass: 300, at: [-700, 0, 500] },
      { mass: 300, at: [-900, 0, 900] },
    ];
    // Pivot on the ground: the line from the lower tyre to it passes (2000 − 800)/2000 of half the track away.
    const side = (Math.atan2(600 * 0.6, 700) * 180) / Math.PI;
    expect(tipsSideways(block, on, 'left')).toBeCloseTo(side, 9);
    expect(tipsUphill(block, on)).toBeCloseTo((Math.atan2(800, 700) * 180) / Math.PI, 9);
    expect(tipsOnStop(block, on, 'right')).toBeCloseTo((Math.atan2(600, 700) * 180) / Math.PI, 9);
    const { left, right, front } = reactionsOf(block, on);
    expect([left, right, front].map((load) => Math.round(load * 1e9) / 1e9)).toEqual([180, 180, 240]);
  });
});

/** Falling to either side by an angle, every support carries something. */
function holdsOnSlope(masses: readonly PointMass[], on: Parameters<typeof reactionsOf>[1], angle: number): boolean {
  const radians = (angle * Math.PI) / 180;
  return [-1, 1].every((side) => {
    const down = [0, side * Math.sin(radians), -Math.cos(radians)] as const;
    return Object.values(reactionsOf(masses, on, down)).every((load) => load > 0);
  });
}
