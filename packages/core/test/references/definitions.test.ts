import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/engine/formula/index.ts';
import type { LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { withEdits } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { documentOf, liftCases, unknownTo, type Held, type LiftCase } from '../properties/generateLift.ts';
import { evaluated, questionOf, spaced, type Evaluated } from './engineAt.ts';
import { ballAt, cross, placed, upperAt, type Point, type SideView } from './sideView.ts';
import { weightsAt } from './weights.ts';

const lanes = spaced(9);
const pitches = even(-3, 3);
const held = (...kinds: Held[]): fc.Arbitrary<Held> => fc.constantFrom(...kinds);
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

function wanted({ ballHeight, topLink, workHeight, body, pins, mast, pitch, centre, total, clearance }: LiftSteps) {
  const points = [pins, mast, centre, body.origin].flatMap(({ x, z }): Step[] => [x, z]);
  return [...points, ballHeight, topLink, workHeight, body.pitch, pitch, total, clearance];
}

const figure = (of: Readonly<Record<string, number>>, key: string): number => of[key] ?? 0;

function viewOf(one: LiftCase, of: Evaluated): SideView {
  return { ...one.sideView, topLink: of.value(of.steps.topLink) };
}

/** The body that the top link holds at one height, by halving. */
function solvedAt(view: SideView, height: number) {
  const ball = ballAt(view, height);
  const body = ball === null ? null : upperAt(view, ball);
  if (ball === null || body === null) throw new Error('does not close');
  return { ball, body };
}

const isFramed = ({ held: how }: LiftCase): boolean => how === 'uFrame' || how === 'triangle';

/** Implement lower pins from the brief’s frames: in a frame’s hooks, else where the body sits. */
function pinsOf(one: LiftCase, origin: Point, pitch: number): Point {
  const hooks = { x: figure(one.coupler, 'hookBehind'), z: figure(one.coupler, 'hookRise') };
  return isFramed(one) ? placed(origin, hooks, pitch) : origin;
}

describe('the working attitude fixes the top link', () => {
  for (const [title, kinds] of [
    ['on the balls and in a frame', ['bareBalls', 'uFrame', 'triangle', 'clawEnds']],
    ['on hooks that turn with the links', ['hookEnds', 'bar']],
  ] as const) {
    test(`${title}: at work the pins are at their working height and the implement stands as set`, () => {
      fc.assert(
        fc.property(liftCases(held(...kinds)), pitches, (one, workPitch) => {
          const of = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted, { workPitch });
          const { body } = solvedAt(viewOf(one, of), of.value(of.steps.workHeight));
          expect(body.pitch).toBeCloseTo(radians(workPitch), 9);
          const pins = pinsOf(one, body.origin, body.pitch);
          expect(Math.abs(pins.z - figure(one.implement, 'workPinHeight'))).toBeLessThan(0.1);
        }),
        { numRuns: 60 },
      );
    });
  }

  test('in a coupler whose top hook does not suit the mast, the implement turns until its upper pin meets the hook', () => {
    const hook = fc.record({
      topHookBehind: even(-60, 90),
      topHookHeight: even(380, 640),
    });
    let turned = 0;
    fc.assert(
      fc.property(liftCases(held('uFrame')), hook, pitches, (one, topHook, workPitch) => {
        const of = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted, { workPitch, ...topHook });
        const { value, steps } = of;
        const view = viewOf(one, of);
        const e = figure(one.implement, 'mastSetback');
        const h = figure(one.implement, 'mastHeight');
        const delta = Math.atan2(topHook.topHookHeight, topHook.topHookBehind) - Math.atan2(h, e);
        expect(solvedAt(view, value(steps.workHeight)).body.pitch + delta).toBeCloseTo(radians(workPitch), 9);
        lanes.forEach((_, i) => {
          const { body } = solvedAt(view, value(steps.ballHeight, i));
          expect(value(steps.pitch, i)).toBeCloseTo(body.pitch + delta, 9);
          const pins = pinsOf(one, body.origin, body.pitch);
          const upper = { x: value(steps.mast.x, i) - pins.x, z: value(steps.mast.z, i) - pins.z };
          const toHook = placed({ x: 0, z: 0 }, { x: topHook.topHookBehind, z: topHook.topHookHeight }, body.pitch);
          expect(Math.hypot(upper.x, upper.z)).toBeCloseTo(Math.hypot(e, h), 8);
          expect(cross(upper, toHook) / Math.hypot(toHook.x, toHook.z)).toBeCloseTo(0, 7);
          expect(upper.x * toHook.x + upper.z * toHook.z).toBeGreaterThan(0);
          if (Math.abs(delta) > 0.02) turned += 1;
        });
      }),
      { numRuns: 60 },
    );
    expect(turned).toBeGreaterThan(100);
  });
});

describe('where things are through the lift, from the frames of the brief', () => {
  test('pins, pitch, clearance and the centre of all that is carried', () => {
    fc.assert(
      fc.property(liftCases(), pitches, (one, workPitch) => {
        const of = evaluated(questionOf(documentOf(one)), 'stroke', lanes, wanted, { workPitch });
        const { value, steps } = of;
        const view = viewOf(one, of);
        lanes.forEach((_, i) => {
          const height = value(steps.ballHeight, i);
          const { body } = solvedAt(view, height);
          const pins = pinsOf(one, body.origin, body.pitch);
          expect(value(steps.pins.x, i)).toBeCloseTo(pins.x, 7);
          expect(value(steps.pins.z, i)).toBeCloseTo(pins.z, 7);
          expect(value(steps.pitch, i)).toBeCloseTo(body.pitch, 9);
          const lowest = { x: figure(one.implement, 'lowestBehind'), z: -figure(one.implement, 'lowestBelow') };
          expect(value(steps.clearance, i)).toBeCloseTo(placed(pins, lowest, body.pitch).z, 7);
          const { onBody, onLinks } = weightsAt(one, view, height);
          const all = [...onBody, ...onLinks];
          const total = all.reduce((sum, { mass }) => sum + mass, 0);
          expect(value(steps.total)).toBeCloseTo(total, 9);
          const mean = (along: (at: Point) => number): number =>
            all.reduce((sum, { mass, at }) => sum + mass * along(at), 0) / total;
          expect(value(steps.centre.x, i)).toBeCloseTo(
            mean(({ x }) => x),
            7,
          );
          expect(value(steps.centre.z, i)).toBeCloseTo(
            mean(({ z }) => z),
            7,
          );
        });
      }),
      { numRuns: 80 },
    );
  });
});

describe('how far the lift goes', () => {
  test('with the angles of the arms known, its ends are where the arms stand at those angles', () => {
    fc.assert(
      fc.property(liftCases(), (one) => {
        const edits = unknownTo('ballHeights', one);
        const question = questionOf(withEdits(documentOf(one), edits));
        const { steps, value } = evaluated(question, 'stroke', [0, 1], ({ arm, ballHeight }) => {
          if (arm === null) throw new Error('no arms');
          return [arm.angle, ballHeight];
        });
        const { arm } = steps;
        if (arm === null) throw new Error('no arms');
        const angles = ['tractor.liftArmLowest', 'tractor.liftArmHighest'].map(
          (path) => edits.find((edit) => edit.path === path)?.value,
        );
        expect([0, 1].map((i) => (value(arm.angle, i) * 180) / Math.PI)).toEqual(
          angles.map((angle) => expect.closeTo(angle as number, 9) as number),
        );
        expect(value(steps.ballHeight, 1)).toBeGreaterThan(value(steps.ballHeight, 0));
      }),
      { numRuns: 60 },
    );
  });

  test('the raise goes from the parked pins, or the lowest height, to where it is carried, or the highest', () => {
    let parked = 0;
    fc.assert(
      fc.property(liftCases(), even(-0.3, 0.6), even(0, 0.7), (one, from, to) => {
        const { pivot, link } = one.sideView;
        const parkedPinHeight = pivot.z + from * link;
        const carryHeight = Math.max(pivot.z + from * link, pivot.z + to * link) + 60;
        const question = questionOf(documentOf(one));
        const given = { parkedPinHeight, carryHeight };
        const { steps, value } = evaluated(question, 'raise', [0, 1], ({ ballHeight }) => [ballHeight], given);
        const lowest = figure(one.tractor, 'ballHeightLow');
        const highest = figure(one.tractor, 'ballHeightHigh');
        expect(value(steps.ballHeight, 1)).toBeCloseTo(Math.min(highest, carryHeight), 9);
        const start = value(steps.ballHeight, 0);
        const ball = ballAt(one.sideView, start);
        if (ball === null) throw new Error('does not close');
        const hooks = { x: figure(one.coupler, 'hookBehind'), z: figure(one.coupler, 'hookRise') };
        const hasHooks = one.held !== 'bareBalls' && one.held !== 'clawEnds';
        const rides = one.held === 'hookEnds' || one.held === 'bar';
        const pins = hasHooks ? placed(ball.at, hooks, rides ? ball.angle : 0) : ball.at;
        if (start === lowest || start === Math.min(highest, carryHeight)) return;
        expect(pins.z).toBeCloseTo(parkedPinHeight, 6);
        parked += 1;
      }),
      { numRuns: 80 },
    );
    expect(parked).toBeGreaterThan(20);
  });
});

describe('the gap between link and tyre', () => {
  const samples = 4000;

  /** The link walked from pivot to ball: least gap to the tyre’s inner wall over all of it that lies beside the tyre. */
  function walkedGap(one: LiftCase, spread: number, angle: number): number {
    const { tractor, sideView } = one;
    const radius = figure(tractor, 'tyreRadius');
    const halfPivot = figure(tractor, 'lowerLinkPivotSpan') / 2;
    const room = figure(tractor, 'tyreInnerSpan') / 2;
    const beside = figure(tractor, 'lowerLinkThickness') / 2 + figure(tractor, 'sidePlay');
    let least = Infinity;
    for (let i = 0; i <= samples; i += 1) {
      const at = placed(sideView.pivot, { x: (sideView.link * i) / samples, z: 0 }, angle);
      if (Math.hypot(at.x, at.z - radius) > radius) continue;
      least = Math.min(least, room - (halfPivot + (spread / 2 - halfPivot) * (i / samples)) - beside);
    }
    return least;
  }

  test('a walk along the link never comes nearer to the tyre, and comes as near', () => {
    let near = 0;
    fc.assert(
      fc.property(liftCases(held('bareBalls')), (one) => {
        const { steps, value } = evaluated(questionOf(documentOf(one)), 'stroke', lanes, (all) => [
          all.tyreGap,
          all.ballHeight,
        ]);
        const { sideView, implement, tractor } = one;
        const radius = figure(tractor, 'tyreRadius');
        const starts = Math.hypot(sideView.pivot.x, sideView.pivot.z - radius) <= radius;
        lanes.forEach((_, i) => {
          const ball = ballAt(sideView, value(steps.ballHeight, i));
          if (ball === null) throw new Error('does not close');
          const walked = walkedGap(one, figure(implement, 'shoulderSpan') + 35, ball.angle);
          expect(value(steps.tyreGap, i)).toBeLessThanOrEqual(walked + 1e-9);
          if (!starts || walked === Infinity) return;
          expect(value(steps.tyreGap, i)).toBeGreaterThan(walked - 0.1);
          near += 1;
        });
      }),
      { numRuns: 60 },
    );
    expect(near).toBeGreaterThan(200);
  });
});
