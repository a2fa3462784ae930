import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import type { LiftSteps } from '../../src/engine/lift/throughLift.ts';
import type { Step } from '../../src/engine/formula/index.ts';
import { documentOf, liftCases } from '../properties/generateLift.ts';
import { evaluated, questionOf, spaced, type Evaluated } from './engineAt.ts';
import { apart, armEndAt, ballAt, cross, minus, slopeAt, upperAt, type SideView } from './sideView.ts';
import { weightsAt } from './weights.ts';

const heights = 9;
const lanes = spaced(heights);
/** Step of the central differences in ball height [mm]. */
const step = 0.4;

/** Everything a linkage is compared by. */
function wanted({ place, body, arm, topLink, ballHeight, load, supply }: LiftSteps): Step[] {
  if (arm === null) throw new Error('no arms');
  return [
    ...[place.ball, place.ballSpeed, body.origin, body.originSpeed, body.upper, arm.end, arm.rodFoot].flatMap(
      ({ x, z }) => [x, z],
    ),
    ...[place.spin, body.pitch, body.spin, body.closes, arm.angle, arm.spin, arm.closes],
    ...[topLink, ballHeight, load.rise, supply.testRise],
  ];
}

/** The linkage with the top link that the engine itself works out for work, so that both close the same loops. */
function withTopLink(view: SideView, of: Evaluated): SideView {
  return { ...view, topLink: of.value(of.steps.topLink) };
}

describe('closed form against halving on the distance equations', () => {
  test('ball, body and lift arm stand where the equations put them, to a millionth of a millimetre', () => {
    let compared = 0;
    let worst = 0;
    fc.assert(
      fc.property(liftCases(), (one) => {
        const of = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted);
        const view = withTopLink(one.sideView, of);
        const { place, body, arm, ballHeight } = of.steps;
        for (let i = 0; i < heights; i += 1) {
          const ball = ballAt(view, of.value(ballHeight, i));
          const held = ball === null ? null : upperAt(view, ball);
          const lifted = ball === null ? null : armEndAt(view, ball);
          if (ball === null || held === null || lifted === null || arm === null) throw new Error('does not close');
          const pairs: readonly (readonly [{ x: Step; z: Step }, { x: number; z: number }])[] = [
            [place.ball, ball.at],
            [body.origin, held.origin],
            [body.upper, held.upper],
            [arm.end, lifted.end],
            [arm.rodFoot, lifted.foot],
          ];
          for (const [step, point] of pairs) {
            const miss = apart({ x: of.value(step.x, i), z: of.value(step.z, i) }, point);
            worst = Math.max(worst, miss);
            expect(miss).toBeLessThan(1e-6);
          }
          expect(Math.abs(of.value(body.pitch, i) - held.pitch)).toBeLessThan(1e-9);
          expect(Math.abs(of.value(arm.angle, i) - lifted.angle)).toBeLessThan(1e-9);
          compared += 1;
        }
      }),
      { numRuns: 150 },
    );
    console.log(`closed form against halving: worst ${worst.toExponential(1)} mm over ${compared} places`);
    expect(compared).toBe(150 * heights);
  });

  test('the sides of the loops are the ones that the brief names by cross products', () => {
    fc.assert(
      fc.property(liftCases(), (one) => {
        const of = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted);
        const { pivot, topPivot } = one.sideView;
        const at = ({ x, z }: { x: Step; z: Step }, i: number) => ({ x: of.value(x, i), z: of.value(z, i) });
        for (let i = 0; i < heights; i += 1) {
          const { body, arm } = of.steps;
          if (arm === null) throw new Error('no arms');
          const [origin, upper] = [at(body.origin, i), at(body.upper, i)];
          expect(cross(minus(topPivot, origin), minus(upper, origin))).toBeLessThan(0);
          expect(cross(minus(at(arm.end, i), pivot), minus(at(arm.rodFoot, i), pivot))).toBeLessThan(0);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('spins, speeds and rises are the slopes of the solved positions', () => {
    let worst = 0;
    const close = (ours: number, theirs: number, size: number): void => {
      worst = Math.max(worst, Math.abs(ours - theirs) / size);
      expect(Math.abs(ours - theirs) / size).toBeLessThan(1e-8);
    };
    fc.assert(
      fc.property(liftCases(), (one) => {
        const document = documentOf(one);
        const of = evaluated(questionOf(document), 'stroke', lanes, wanted);
        const view = withTopLink(one.sideView, of);
        const { place, body, arm, ballHeight } = of.steps;
        if (arm === null) throw new Error('no arms');
        const solved = (height: number) => {
          const ball = ballAt(view, height);
          const held = ball === null ? null : upperAt(view, ball);
          const lifted = ball === null ? null : armEndAt(view, ball);
          if (ball === null || held === null || lifted === null) throw new Error('does not close');
          return { ball, held, lifted };
        };
        for (let i = 0; i < heights; i += 1) {
          const height = of.value(ballHeight, i);
          const slope = (of_: (at: ReturnType<typeof solved>) => number): number =>
            slopeAt((at) => of_(solved(at)), height, step);
          close(
            of.value(place.spin, i),
            slope(({ ball }) => ball.angle),
            1e-3,
          );
          close(
            of.value(place.ballSpeed.x, i),
            slope(({ ball }) => ball.at.x),
            1,
          );
          close(
            of.value(body.originSpeed.x, i),
            slope(({ held }) => held.origin.x),
            1,
          );
          close(
            of.value(body.originSpeed.z, i),
            slope(({ held }) => held.origin.z),
            1,
          );
          close(
            of.value(body.spin, i),
            slope(({ held }) => held.pitch),
            1e-3,
          );
          close(
            of.value(arm.spin, i),
            slope(({ lifted }) => lifted.angle),
            1e-3,
          );
          const loadHeight = (at: number): number => weightsAt(one, view, at).load.at.z;
          close(of.value(of.steps.load.rise, i), slopeAt(loadHeight, height, step), 1);
        }
      }),
      { numRuns: 80 },
    );
    console.log(`slopes against central differences: worst ${worst.toExponential(1)} of full size`);
  });
});

/** How much of the reach is left before two rods are straight or folded, as a share of what they span. */
const shares = [1e-2, 1e-4, 1e-6, 1e-9, 1e-12] as const;

/** The two lengths of the second rod at which it is almost straight with the first, and almost folded on it. */
function almost(span: number, first: number, share: number): number[] {
  const [shortest, longest] = [Math.abs(span - first), span + first];
  const left = share * (longest - shortest);
  return [shortest + left, longest - left];
}

describe('near toggle, where a last digit of a sine moves an angle by its root, the loops still close', () => {
  test.each(shares)('with %d of the reach left, to a billionth of a millimetre', (share) => {
    let worst = 0;
    let compared = 0;
    const small = (miss: number): void => {
      worst = Math.max(worst, Math.abs(miss));
      compared += 1;
      expect(Math.abs(miss)).toBeLessThan(1e-9);
    };
    fc.assert(
      fc.property(liftCases(), (one) => {
        const question = questionOf(carryingApart(documentOf(one)));
        const { pivot, topPivot, upper, arm: rods } = one.sideView;
        const ball = ballAt(one.sideView, pivot.z);
        const level = ball === null ? null : upperAt(one.sideView, ball);
        const lifted = ball === null ? null : armEndAt(one.sideView, ball);
        if (level === null || lifted === null) throw new Error('does not close');
        const aside = one.tractor['liftRodAside'] ?? 0;
        const [mast, hang] = [Math.hypot(upper.x, upper.z), apart(lifted.foot, rods.pivot)];
        const topLinks = almost(apart(level.origin, topPivot), mast, share);
        const rodLengths = almost(hang, rods.length, share);
        topLinks.forEach((topLink, i) => {
          const rod = rodLengths[i] as number;
          const of = evaluated(question, 'carry', [0], wanted, {
            carryHeight: pivot.z,
            topLinkWhileCarrying: topLink,
            liftRodLength: Math.hypot(rod, aside),
          });
          const { body, arm } = of.steps;
          const at = ({ x, z }: { x: Step; z: Step }) => ({ x: of.value(x), z: of.value(z) });
          if (arm === null) throw new Error('no arms');
          small(apart(at(body.upper), at(body.origin)) - mast);
          small(apart(at(body.upper), topPivot) - topLink);
          small(apart(at(arm.end), rods.pivot) - rods.length);
          small(apart(at(arm.end), at(arm.rodFoot)) - rod);
          expect(of.value(body.closes)).toBeGreaterThan(-1e-9);
          expect(of.value(body.closes)).toBeLessThan(share * 3000 + 1e-9);
        });
      }),
      { numRuns: 60 },
    );
    console.log(`closure with ${share} of the reach left: worst ${worst.toExponential(1)} mm in ${compared} rods`);
  });
});

function carryingApart(document: SetupDocument): SetupDocument {
  return withEdits(document, [{ path: 'tractor.topLinkLength.adjustable.setting', value: 'perPosition' }]);
}
